package loftcoil.runner.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import loftcoil.runner.look.Colours;
import org.jspecify.annotations.Nullable;

/** The page's own files. Only names on the list are ever looked up, so no path leads elsewhere. */
final class Assets {

    private static final String OWN = "/loftcoil/runner/page/";
    private static final String EDITOR = "/META-INF/resources/webjars/codemirror/5.65.20/";
    private static final String DRAWINGS = "/loftcoil/lessons/drawings/";

    private static final Map<String, String> TYPES = Map.of(
            "html", "text/html; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "css", "text/css; charset=utf-8",
            "svg", "image/svg+xml",
            "txt", "text/plain; charset=utf-8");

    private static final List<String> EDITOR_SCRIPTS = List.of(
            "lib/codemirror.js",
            "mode/clike/clike.js",
            "addon/hint/show-hint.js",
            "addon/edit/matchbrackets.js",
            "addon/edit/closebrackets.js");

    /** The style of the whole page, the later before the earlier where they differ; in one file, as each request takes its time. */
    private static final List<String> STYLES = List.of(
            EDITOR + "lib/codemirror.css",
            EDITOR + "addon/hint/show-hint.css",
            Colours.FOLDER + "colours.css",
            OWN + "base.css",
            OWN + "layout.css",
            OWN + "steps.css",
            OWN + "mend.css",
            OWN + "code.css",
            Colours.FOLDER + "drawing.css",
            OWN + "drawn.css",
            OWN + "refresher.css",
            OWN + "rebuild.css",
            OWN + "house.css",
            OWN + "designs.css",
            OWN + "buildsheet.css");

    /** The one script that is no module: it speaks to browsers that know none. */
    private static final String OLD_BROWSER = "oldbrowser.js";

    private static final String PRELOADS = "<!-- modules -->";

    /** Where each is that may be asked for, by its address; several are joined. */
    private final Map<String, List<String>> listed = new HashMap<>();

    /** Those that were asked for. */
    private final Map<String, File> files = new ConcurrentHashMap<>();

    private Assets() {}

    static Assets load() {
        Assets assets = new Assets();
        for (String name : names()) {
            assets.listed.put("/page/" + name, List.of(OWN + name));
        }
        for (String name : Colours.STYLES) {
            assets.listed.put("/page/" + name, List.of(Colours.FOLDER + name));
        }
        assets.listed.put("/page/all.css", STYLES);
        assets.listed.put(
                "/editor/all.js", EDITOR_SCRIPTS.stream().map(EDITOR::concat).toList());
        return assets;
    }

    private static List<String> names() {
        return new String(bytes(OWN + "files.txt"), StandardCharsets.UTF_8)
                .lines()
                .filter(name -> !name.isBlank())
                .toList();
    }

    /** The page itself, for a browser we know: it names every module, so that none waits for those that use it. */
    Reply page() {
        String preloads = names().stream()
                .filter(name -> name.endsWith(".js") && !name.equals(OLD_BROWSER))
                .map(name -> "<link rel=\"modulepreload\" href=\"/page/" + name + "\">")
                .collect(Collectors.joining("\n"));
        String page = new String(bytes(OWN + "page.html"), StandardCharsets.UTF_8).replace(PRELOADS, preloads);
        return new Reply(200, type("html"), page.getBytes(StandardCharsets.UTF_8), Map.of());
    }

    /** For a browser we do not know: says which address to use. */
    Reply closedDoor() {
        return new Reply(401, type("html"), bytes(OWN + "closed.html"), Map.of());
    }

    /** The file at that path; a short answer where the browser has it already. */
    Optional<Reply> find(String path, @Nullable String known) {
        List<String> resources = listed.getOrDefault(path, drawing(path));
        return resources.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        files.computeIfAbsent(path, any -> File.of(resources)).reply(known));
    }

    private static List<String> drawing(String path) {
        if (!path.matches("/drawings/[A-Za-z0-9_-]+\\.svg")) {
            return List.of();
        }
        String resource = DRAWINGS + path.substring("/drawings/".length());
        return Assets.class.getResource(resource) == null ? List.of() : List.of(resource);
    }

    private static String type(String ending) {
        return TYPES.getOrDefault(ending, "application/octet-stream");
    }

    private static byte[] bytes(String resource) {
        try (InputStream in = Assets.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException(resource + " is missing from the program");
            }
            return in.readAllBytes();
        } catch (IOException failure) {
            throw new UncheckedIOException(resource, failure);
        }
    }

    private static String fingerprint(byte[] bytes) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return HexFormat.of().formatHex(digest, 0, 12);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** A file of ours, held in memory. */
    private static final class File {

        private final String type;
        private final byte[] bytes;
        private final String tag;

        File(String type, byte[] bytes) {
            this.type = type;
            this.bytes = bytes;
            this.tag = "\"" + fingerprint(bytes) + "\"";
        }

        static File of(List<String> resources) {
            ByteArrayOutputStream joined = new ByteArrayOutputStream();
            for (String resource : resources) {
                joined.writeBytes(bytes(resource));
                if (resources.size() > 1) {
                    joined.write('\n');
                }
            }
            String name = resources.get(0);
            return new File(type(name.substring(name.lastIndexOf('.') + 1)), joined.toByteArray());
        }

        Reply reply(@Nullable String known) {
            Map<String, String> headers = Map.of("ETag", tag, "Cache-Control", "private, no-cache");
            return tag.equals(known)
                    ? new Reply(304, type, new byte[0], headers)
                    : new Reply(200, type, bytes, headers);
        }
    }
}

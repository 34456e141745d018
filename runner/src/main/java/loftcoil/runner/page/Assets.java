package loftcoil.runner.page;

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

    private static final List<String> EDITOR_FILES = List.of(
            "lib/codemirror.js",
            "lib/codemirror.css",
            "mode/clike/clike.js",
            "addon/hint/show-hint.js",
            "addon/hint/show-hint.css",
            "addon/edit/matchbrackets.js",
            "addon/edit/closebrackets.js");

    /** Where each is that may be asked for, by its address. */
    private final Map<String, String> listed = new HashMap<>();

    /** Those that were asked for. */
    private final Map<String, File> files = new ConcurrentHashMap<>();

    private Assets() {}

    static Assets load() {
        Assets assets = new Assets();
        String names = new String(bytes(OWN + "files.txt"), StandardCharsets.UTF_8);
        names.lines().filter(name -> !name.isBlank()).forEach(name -> assets.listed.put("/page/" + name, OWN + name));
        Colours.STYLES.forEach(name -> assets.listed.put("/page/" + name, Colours.FOLDER + name));
        EDITOR_FILES.forEach(name -> assets.listed.put("/editor/" + name, EDITOR + name));
        return assets;
    }

    /** The page itself, for a browser we know. */
    Reply page() {
        return new Reply(200, type("html"), bytes(OWN + "page.html"), Map.of());
    }

    /** For a browser we do not know: says which address to use. */
    Reply closedDoor() {
        return new Reply(401, type("html"), bytes(OWN + "closed.html"), Map.of());
    }

    /** The file at that path; a short answer where the browser has it already. */
    Optional<Reply> find(String path, @Nullable String known) {
        return resource(path)
                .map(resource -> files.computeIfAbsent(path, any -> File.of(resource)))
                .map(file -> file.reply(known));
    }

    private Optional<String> resource(String path) {
        if (path.matches("/drawings/[A-Za-z0-9_-]+\\.svg")) {
            String resource = DRAWINGS + path.substring("/drawings/".length());
            return Optional.of(resource).filter(name -> Assets.class.getResource(name) != null);
        }
        return Optional.ofNullable(listed.get(path));
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

        static File of(String resource) {
            return new File(type(resource.substring(resource.lastIndexOf('.') + 1)), bytes(resource));
        }

        Reply reply(@Nullable String known) {
            Map<String, String> headers = Map.of("ETag", tag, "Cache-Control", "private, no-cache");
            return tag.equals(known)
                    ? new Reply(304, type, new byte[0], headers)
                    : new Reply(200, type, bytes, headers);
        }
    }
}

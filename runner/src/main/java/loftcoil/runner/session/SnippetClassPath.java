package loftcoil.runner.session;

import java.io.File;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.chart.ChartOrder;

/**
 * The class path that snippets are compiled and run with. A build tool may run this program inside its own JVM, where
 * the property {@code java.class.path} names only the tool's launcher; then the class loader is asked.
 */
public final class SnippetClassPath {

    private static final List<Class<?>> NEEDED = List.of(ChartOrder.class, RefusedException.class);

    private SnippetClassPath() {}

    /**
     * Finds the folders and jars this program was loaded from.
     *
     * @throws SessionException where they are not files
     */
    public static List<Path> find() {
        Set<Path> found = new LinkedHashSet<>();
        for (Class<?> needed : NEEDED) {
            found.add(sourceOf(needed));
        }
        ClassLoader loader = ChartOrder.class.getClassLoader();
        if (loader instanceof URLClassLoader urls) {
            for (URL url : urls.getURLs()) {
                found.add(pathOf(url));
            }
        } else {
            Pattern.compile(Pattern.quote(File.pathSeparator))
                    .splitAsStream(System.getProperty("java.class.path", ""))
                    .filter(entry -> !entry.isEmpty())
                    .forEach(entry -> found.add(Path.of(entry).toAbsolutePath()));
        }
        List<Path> there = new ArrayList<>();
        for (Path path : found) {
            if (Files.exists(path)) {
                there.add(path);
            }
        }
        return there;
    }

    /**
     * Finds those of them whose types snippets name: the engine's and the charts'. The libraries that these need in turn are there
     * when a snippet runs, but it is not compiled against them.
     *
     * @throws SessionException where they are not files
     */
    public static List<Path> named() {
        return NEEDED.stream().map(SnippetClassPath::sourceOf).distinct().toList();
    }

    private static Path sourceOf(Class<?> type) {
        CodeSource source = type.getProtectionDomain().getCodeSource();
        if (source == null) {
            throw new SessionException("No file holds " + type.getName() + ", so snippets cannot use it.");
        }
        return pathOf(source.getLocation());
    }

    private static Path pathOf(URL url) {
        try {
            URI uri = url.toURI();
            return Path.of(uri).toAbsolutePath();
        } catch (URISyntaxException | IllegalArgumentException | java.nio.file.FileSystemNotFoundException e) {
            throw new SessionException("Snippets need classes from files, not from " + url + ".", e);
        }
    }
}

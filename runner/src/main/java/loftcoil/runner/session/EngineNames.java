package loftcoil.runner.session;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What the engine offers to snippets, found by looking at its class files.
 *
 * @param packages full names of its rooms, in order
 * @param types simple names of its top-level types
 */
record EngineNames(Set<String> packages, Set<String> types) {

    private static final String ROOT = "loftcoil/engine";
    private static final String ENDING = ".class";

    EngineNames {
        packages = java.util.Collections.unmodifiableSet(new TreeSet<>(packages));
        types = Set.copyOf(types);
    }

    /** Looks through folders and jars; those without the engine add nothing. */
    static EngineNames in(List<Path> classPath) {
        Set<String> packages = new TreeSet<>();
        Set<String> types = new TreeSet<>();
        for (Path entry : classPath) {
            try {
                if (Files.isDirectory(entry)) {
                    collect(entry.resolve(ROOT), packages, types);
                } else if (entry.toString().endsWith(".jar")) {
                    try (FileSystem jar = FileSystems.newFileSystem(entry)) {
                        collect(jar.getPath(ROOT), packages, types);
                    }
                }
            } catch (IOException e) {
                throw new UncheckedIOException("cannot look into " + entry, e);
            }
        }
        return new EngineNames(packages, types);
    }

    private static void collect(Path root, Set<String> packages, Set<String> types) throws IOException {
        if (!Files.isDirectory(root)) {
            return;
        }
        try (Stream<Path> files = Files.walk(root, 2)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                String name = file.getFileName().toString();
                Path folder = file.getParent();
                if (folder != null && name.endsWith(ENDING) && !name.contains("$") && !name.contains("-")) {
                    packages.add("loftcoil.engine." + root.relativize(folder));
                    types.add(name.substring(0, name.length() - ENDING.length()));
                }
            }
        }
    }
}

package loftcoil.runner.session;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the engine offers to snippets, found by looking at its class files.
 *
 * @param roomsByType the full names of the rooms in which a top-level type of that simple name is
 */
record EngineNames(Map<String, Set<String>> roomsByType) {

    private static final String ROOT = "loftcoil/engine";
    private static final String ENDING = ".class";
    private static final Pattern NAME = Pattern.compile("\\b[A-Z]\\w*");

    EngineNames {
        roomsByType = Map.copyOf(roomsByType);
    }

    /** Looks through folders and jars; those without the engine add nothing. */
    static EngineNames in(List<Path> classPath) {
        Map<String, Set<String>> rooms = new HashMap<>();
        for (Path entry : classPath) {
            try {
                if (Files.isDirectory(entry)) {
                    collect(entry.resolve(ROOT), rooms);
                } else if (entry.toString().endsWith(".jar")) {
                    try (FileSystem jar = FileSystems.newFileSystem(entry)) {
                        collect(jar.getPath(ROOT), rooms);
                    }
                }
            } catch (IOException e) {
                throw new UncheckedIOException("cannot look into " + entry, e);
            }
        }
        return new EngineNames(rooms);
    }

    /** Full names of all rooms, in order. */
    Set<String> packages() {
        return roomsByType.values().stream().flatMap(Set::stream).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Simple names of the top-level types. */
    Set<String> types() {
        return Collections.unmodifiableSet(roomsByType.keySet());
    }

    /** The rooms of the types that some Java may name, in order. */
    Set<String> roomsOf(String java) {
        return NAME.matcher(java)
                .results()
                .map(MatchResult::group)
                .flatMap(name -> roomsByType.getOrDefault(name, Set.of()).stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static void collect(Path root, Map<String, Set<String>> rooms) throws IOException {
        if (!Files.isDirectory(root)) {
            return;
        }
        try (Stream<Path> files = Files.walk(root, 2)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                String name = file.getFileName().toString();
                Path folder = file.getParent();
                if (folder != null && name.endsWith(ENDING) && !name.contains("$") && !name.contains("-")) {
                    rooms.computeIfAbsent(name.substring(0, name.length() - ENDING.length()), type -> new TreeSet<>())
                            .add("loftcoil.engine." + root.relativize(folder));
                }
            }
        }
    }
}

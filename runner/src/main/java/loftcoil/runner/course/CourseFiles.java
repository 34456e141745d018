package loftcoil.runner.course;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import loftcoil.engine.fault.Fault;

/** Files below one folder, with the name that folder has in messages. */
final class CourseFiles {

    private static final long LONGEST_BYTES = 2_000_000;

    private final String name;
    private final Path folder;
    private final List<Fault> faults;
    private final SortedMap<String, Path> files = new TreeMap<>();

    CourseFiles(String name, Path folder, List<Fault> faults) {
        this.name = name;
        this.folder = folder;
        this.faults = faults;
        if (!Files.isDirectory(folder)) {
            faults.add(new Fault(name, "no such folder: " + folder, "a folder of " + name, ""));
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            all.filter(Files::isRegularFile).forEach(file -> files.put(relative(file), file));
        } catch (IOException | UncheckedIOException e) {
            faults.add(new Fault(name, "cannot be listed (" + e.getMessage() + ")", "a readable folder", ""));
        }
        // Hidden files, such as a version control system's, are nobody's lesson.
        files.keySet().removeIf(path -> path.startsWith(".") || path.contains("/."));
    }

    /** Paths below the folder, with strokes between, in order. */
    List<String> paths() {
        return List.copyOf(files.keySet());
    }

    boolean has(String path) {
        return files.containsKey(path);
    }

    String shown(String path) {
        return name + "/" + path;
    }

    void fault(String path, String place, String what, String allowed) {
        faults.add(new Fault(shown(path) + (place.isEmpty() ? "" : ":" + place), what, allowed, ""));
    }

    /** Notes faults found in that file. */
    void faults(String path, List<Fault> found) {
        found.forEach(fault -> faults.add(fault.in(shown(path))));
    }

    /** The text of that file; nothing, and a fault, where it is too long, no UTF-8 or unreadable. */
    Optional<String> text(String path) {
        Path file = files.get(path);
        if (file == null) {
            return Optional.empty();
        }
        try {
            long size = Files.size(file);
            if (size > LONGEST_BYTES) {
                fault(path, "", size + " bytes long", "at most " + LONGEST_BYTES + " bytes");
                return Optional.empty();
            }
            ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
            return Optional.of(StandardCharsets.UTF_8.newDecoder().decode(bytes).toString());
        } catch (CharacterCodingException e) {
            fault(path, "", "not UTF-8 text", "text in UTF-8");
        } catch (IOException e) {
            fault(path, "", "cannot be read (" + e.getMessage() + ")", "a readable file");
        }
        return Optional.empty();
    }

    private String relative(Path file) {
        return folder.relativize(file).toString().replace('\\', '/');
    }
}

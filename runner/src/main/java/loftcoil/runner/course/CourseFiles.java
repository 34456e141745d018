package loftcoil.runner.course;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
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
import java.util.zip.ZipFile;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/** Files below one folder, or below one in a jar, with the name that folder has in messages. */
final class CourseFiles {

    private static final int LONGEST_BYTES = 2_000_000;

    private final String name;
    private final List<Fault> faults;
    private final SortedMap<String, Source> files = new TreeMap<>();

    /** Where the bytes of one file are. */
    @FunctionalInterface
    private interface Source {

        InputStream open() throws IOException;
    }

    private CourseFiles(String name, List<Fault> faults) {
        this.name = name;
        this.faults = faults;
    }

    /** Those of a folder. */
    static CourseFiles of(String name, Path folder, List<Fault> faults) {
        CourseFiles shelf = new CourseFiles(name, faults);
        if (!Files.isDirectory(folder)) {
            faults.add(new Fault(name, "no such folder: " + folder, "a folder of " + name, ""));
            return shelf;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            all.filter(Files::isRegularFile)
                    .forEach(file -> shelf.put(relative(folder, file), () -> Files.newInputStream(file)));
        } catch (IOException | UncheckedIOException e) {
            faults.add(new Fault(name, "cannot be listed (" + e.getMessage() + ")", "a readable folder", ""));
        }
        return shelf;
    }

    /**
     * Those below a folder in a jar. The jar is opened anew for each file: that costs little where this program runs from it, and what
     * is never asked for is never read.
     */
    static CourseFiles inJar(String name, Path jar, String folder, List<Fault> faults) throws IOException {
        CourseFiles shelf = new CourseFiles(name, faults);
        String start = folder + "/";
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            zip.stream()
                    .filter(entry -> entry.getName().startsWith(start) && !entry.isDirectory())
                    .forEach(entry ->
                            shelf.put(entry.getName().substring(start.length()), () -> entry(jar, entry.getName())));
        }
        return shelf;
    }

    private static InputStream entry(Path jar, String entry) throws IOException {
        try (ZipFile zip = new ZipFile(jar.toFile());
                InputStream in = zip.getInputStream(zip.getEntry(entry))) {
            return new ByteArrayInputStream(in.readNBytes(LONGEST_BYTES + 1));
        }
    }

    /** Hidden files, such as a version control system's, are nobody's lesson. */
    private void put(String path, Source source) {
        if (!path.startsWith(".") && !path.contains("/.")) {
            files.put(path, source);
        }
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
        if (!has(path)) {
            return Optional.empty();
        }
        try {
            return Optional.of(whole(path));
        } catch (RefusedException refused) {
            faults.addAll(refused.faults());
            return Optional.empty();
        }
    }

    /**
     * The text of a file that is there.
     *
     * @throws RefusedException where it is too long, no UTF-8 or unreadable
     */
    String whole(String path) {
        Source source = files.get(path);
        if (source == null) {
            throw refused(path, "not there", "a file of the course");
        }
        try (InputStream in = source.open()) {
            byte[] bytes = in.readNBytes(LONGEST_BYTES + 1);
            if (bytes.length > LONGEST_BYTES) {
                long size = bytes.length + in.transferTo(OutputStream.nullOutputStream());
                throw refused(path, size + " bytes long", "at most " + LONGEST_BYTES + " bytes");
            }
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw refused(path, "not UTF-8 text", "text in UTF-8");
        } catch (IOException e) {
            throw refused(path, "cannot be read (" + e.getMessage() + ")", "a readable file");
        }
    }

    private RefusedException refused(String path, String what, String allowed) {
        return new RefusedException(List.of(new Fault(shown(path), what, allowed, "")));
    }

    private static String relative(Path folder, Path file) {
        return folder.relativize(file).toString().replace('\\', '/');
    }
}

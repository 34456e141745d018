package loftcoil.runner.workshop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import loftcoil.runner.progress.Progress;
import loftcoil.runner.progress.ProgressCopy;

/**
 * The learners of a class, as their files lie in one folder: each learner's own folder copied under it, or each one's progress
 * file under the learner's name.
 *
 * @param learners in the order of their names
 * @param skipped what lies there and could not be used
 */
public record ClassRoll(List<Learner> learners, List<Skipped> skipped) {

    private static final String PROGRESS = "progress.json";
    private static final String ENDING = ".json";

    /** A learner's folder may have been copied with the folder it was in. */
    private static final int DEEPEST = 3;

    /** Keeps copies of the lists. */
    public ClassRoll {
        learners = List.copyOf(learners);
        skipped = List.copyOf(skipped);
    }

    /**
     * One learner.
     *
     * @param name name of the folder or file
     * @param progress what the learner has done
     */
    public record Learner(String name, Progress progress) {}

    /**
     * Something that could not be used.
     *
     * @param name name of the folder or file
     * @param why in words
     */
    public record Skipped(String name, String why) {}

    /**
     * Reads a folder. Hidden files are passed over.
     *
     * @param folder the class's folder
     * @param listener told before each of what lies there: the how manieth it is, and of how many
     * @throws IOException where the folder itself cannot be listed
     */
    public static ClassRoll read(Path folder, BiConsumer<Integer, Integer> listener) throws IOException {
        Reading reading = new Reading(folder);
        List<Path> entries;
        try (Stream<Path> all = Files.list(folder)) {
            entries = all.filter(entry -> !name(entry).startsWith("."))
                    .sorted(Comparator.comparing(ClassRoll::name, String.CASE_INSENSITIVE_ORDER))
                    .toList();
        }
        for (int i = 0; i < entries.size(); i++) {
            listener.accept(i + 1, entries.size());
            reading.entry(entries.get(i));
        }
        return new ClassRoll(reading.learners, reading.skipped);
    }

    private static String name(Path path) {
        return path.getFileName().toString();
    }

    /** Collects what a folder holds. */
    private static final class Reading {

        private final Path folder;
        private final List<Learner> learners = new ArrayList<>();
        private final List<Skipped> skipped = new ArrayList<>();

        Reading(Path folder) {
            this.folder = folder;
        }

        void entry(Path entry) {
            if (Files.isDirectory(entry)) {
                folder(entry);
            } else if (name(entry).endsWith(ENDING)) {
                String file = name(entry);
                learner(file.substring(0, file.length() - ENDING.length()), entry);
            }
        }

        private void folder(Path entry) {
            List<Path> files;
            try (Stream<Path> all = Files.walk(entry, DEEPEST)) {
                files = all.filter(file -> name(file).equals(PROGRESS)).sorted().toList();
            } catch (IOException | UncheckedIOException e) {
                skipped.add(new Skipped(name(entry), "the folder cannot be listed"));
                return;
            }
            if (files.isEmpty()) {
                skipped.add(new Skipped(name(entry), "there is no " + PROGRESS + " in it"));
            }
            // Two files in one folder are two pieces of work: the names then say which.
            files.forEach(file -> learner(files.size() == 1 ? name(entry) : below(file), file));
        }

        private String below(Path file) {
            return folder.relativize(file.getParent()).toString().replace('\\', '/');
        }

        private void learner(String learner, Path file) {
            ProgressCopy copy = ProgressCopy.read(file);
            if (copy instanceof ProgressCopy.Usable usable) {
                learners.add(new Learner(learner, usable.progress()));
            } else if (copy instanceof ProgressCopy.Unusable unusable) {
                skipped.add(new Skipped(learner, unusable.why()));
            }
        }
    }
}

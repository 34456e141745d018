package loftcoil.runner.progress;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The learner's folder: {@code progress.json}, {@code design.json} and {@code survey.json}, each whole at every moment, whatever ends this
 * process. Only one process at a time works in a folder. A file that cannot be read is moved to a new name and told of;
 * it is never written over. Calls may come from several threads.
 */
public final class ProgressFile implements AutoCloseable {

    private static final String PROGRESS = "progress.json";
    private static final String DESIGN = "design.json";
    private static final String SURVEY = "survey.json";
    private static final String BEFORE = "design-before-";
    private static final String SURVEY_BEFORE = "survey-before-";
    private static final Pattern KEPT = Pattern.compile("design-before-\\d{4}-\\d\\d-\\d\\d(-\\d+)?\\.json");

    private static final String TRAIL = "design.trail.json";

    private final Path folder;
    private final FolderLock lock;
    private final List<String> notices = new ArrayList<>();

    /** Tells whether the file of progress is as it was last read or written here; empty where it was neither. */
    private String progressMark = "";

    private ProgressFile(Path folder, FolderLock lock) {
        this.folder = folder;
        this.lock = lock;
    }

    /**
     * Takes the folder, and makes it where it is missing.
     *
     * @param folder where the learner's work is kept
     * @throws FolderException where it is no folder, cannot be written, or another process works in it
     */
    public static ProgressFile open(Path folder) {
        return new ProgressFile(folder, FolderLock.take(folder));
    }

    /** The folder. */
    public Path folder() {
        return folder;
    }

    /**
     * What the learner has done so far.
     *
     * @param newSeed the seed of a learner who starts now
     * @throws FolderException where a file is there but can be neither read nor set aside
     */
    public synchronized Progress progress(long newSeed) {
        Optional<String> json = text(PROGRESS);
        progressMark = new SafeFile(folder.resolve(PROGRESS)).mark();
        if (json.isEmpty()) {
            return Progress.start(newSeed);
        }
        try {
            return ProgressJson.read(json.get());
        } catch (ProgressJson.UnreadableException e) {
            setAside(PROGRESS, e.newer() ? "newer" : "damaged", String.valueOf(e.getMessage()));
            return Progress.start(newSeed);
        }
    }

    /**
     * Keeps what the learner has done.
     *
     * @param progress all of it
     * @throws FolderException where it cannot be written; what was kept before is untouched
     */
    public synchronized void keep(Progress progress) {
        SafeFile file = new SafeFile(folder.resolve(PROGRESS));
        if (!progressMark.isEmpty()) {
            keepForeign(file);
        }
        file.write(ProgressJson.write(progress));
        progressMark = file.mark();
    }

    /** Whoever writes progress by other means while this runs would find it written over: it is kept, under a name that says so. */
    private void keepForeign(SafeFile file) {
        String found = file.mark();
        if (!found.isEmpty() && !found.equals(progressMark)) {
            Path to = file.setAside("changed-elsewhere");
            notices.add(PROGRESS
                    + " was changed by other means while Loftcoil had it open. Your work here goes on, and the other is kept as "
                    + to.getFileName() + ". To go on from that one, close Loftcoil and give it the name " + PROGRESS
                    + ".");
        }
    }

    /**
     * The text of the learner's design, if there is one. What it means is for others to say.
     *
     * @throws FolderException where a file is there but can be neither read nor set aside
     */
    public synchronized Optional<String> design() {
        return text(DESIGN);
    }

    /**
     * Keeps the text of the learner's design.
     *
     * @param json its text
     * @throws FolderException where it cannot be written; what was kept before is untouched
     */
    public synchronized void keepDesign(String json) {
        new SafeFile(folder.resolve(DESIGN)).write(json.getBytes(StandardCharsets.UTF_8));
    }

    /** The local time at which the learner's design was last written, as {@code 2031-05-04T17:20:05}; empty where there is no file. */
    public synchronized String designAt() {
        Path file = folder.resolve(DESIGN);
        return Files.exists(file) ? new SafeFile(file).moment() : "";
    }

    /** What tells without reading whether the file of the learner's design has been written since; empty where there is none. */
    public synchronized String designMark() {
        return new SafeFile(folder.resolve(DESIGN)).mark();
    }

    /** How the learner's design came to be; empty where that is not known. */
    public synchronized Optional<Trail> trail() {
        Optional<String> json = text(TRAIL);
        Optional<Trail> trail = json.flatMap(TrailJson::read);
        if (json.isPresent() && trail.isEmpty()) {
            setAside(TRAIL, "damaged", "it is no history this Loftcoil can read");
        }
        return trail;
    }

    /**
     * Keeps how the learner's design came to be.
     *
     * @throws FolderException where it cannot be written; what was kept before is untouched
     */
    public synchronized void keepTrail(Trail trail) {
        new SafeFile(folder.resolve(TRAIL)).write(TrailJson.write(trail));
    }

    /** The designs besides the one that is taken up. */
    public DesignShelf shelf() {
        return new DesignShelf(folder);
    }

    /**
     * The text of the survey of the learner's house, if there is one. What it means is for others to say.
     *
     * @throws FolderException where a file is there but can be neither read nor set aside
     */
    public synchronized Optional<String> survey() {
        return text(SURVEY);
    }

    /**
     * Keeps the text of the survey of the learner's house.
     *
     * @param json its text
     * @throws FolderException where it cannot be written; what was kept before is untouched
     */
    public synchronized void keepSurvey(String json) {
        new SafeFile(folder.resolve(SURVEY)).write(json.getBytes(StandardCharsets.UTF_8));
    }

    /** What tells without reading whether the file of the survey has been written since; empty where there is none. */
    public synchronized String surveyMark() {
        return new SafeFile(folder.resolve(SURVEY)).mark();
    }

    /**
     * Takes the survey away: it is elsewhere by now.
     *
     * @throws FolderException where it cannot be taken away
     */
    public synchronized void dropSurvey() {
        new SafeFile(folder.resolve(SURVEY)).drop();
    }

    /**
     * Keeps the text of a survey from before beside the learner's own, under a name that is free, with the date on which it was put by,
     * such as {@code survey-before-2031-05-04.json}.
     *
     * @param json its text
     * @return the name
     * @throws FolderException where it cannot be written
     */
    public synchronized String keepSurveyBefore(String json) {
        return keepAside(SURVEY_BEFORE, json);
    }

    private String keepAside(String before, String json) {
        SafeFile aside = new SafeFile(folder.resolve(before + "today.json"));
        aside.write(json.getBytes(StandardCharsets.UTF_8));
        return aside.rename(before + aside.day()).getFileName().toString();
    }

    /**
     * Moves a survey that is none out of the way, to a name that is free.
     *
     * @param why what is wrong with it, for the notice
     * @throws FolderException where it cannot be moved
     */
    public synchronized void setSurveyAside(String why) {
        setAside(SURVEY, "damaged", why);
    }

    /**
     * Keeps the text of a design from before beside the learner's own, under a name that is free, with the date on which it
     * was put by, such as {@code design-before-2031-05-04.json}.
     *
     * @param json its text
     * @return the name
     * @throws FolderException where it cannot be written
     */
    public synchronized String keepBefore(String json) {
        return keepAside(BEFORE, json);
    }

    /**
     * Names of the designs from before, the newest first.
     *
     * @throws FolderException where the folder cannot be listed
     */
    public synchronized List<String> keptDesigns() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> KEPT.matcher(name).matches())
                    .sorted(Comparator.comparing(ProgressFile::day)
                            .thenComparing(ProgressFile::number)
                            .reversed())
                    .toList();
        } catch (IOException e) {
            throw new FolderException(
                    FolderException.Why.NO_ACCESS,
                    folder,
                    "cannot be listed (" + e.getClass().getSimpleName() + ")");
        }
    }

    private static String day(String kept) {
        return kept.substring(BEFORE.length(), BEFORE.length() + "2031-05-04".length());
    }

    /** Of one day, the first has no number; more digits are a later number. */
    private static String number(String kept) {
        String number = kept.substring((BEFORE + "2031-05-04").length()).replace(".json", "");
        return number.length() + number;
    }

    /**
     * The text of a design from before; empty where there is none of that name.
     *
     * @param name one of {@link #keptDesigns}
     * @throws FolderException where the file is there but can be neither read nor set aside
     */
    public synchronized Optional<String> keptDesign(String name) {
        return KEPT.matcher(name).matches() ? text(name) : Optional.empty();
    }

    /**
     * Moves a design that is none out of the way, to a name that is free.
     *
     * @param why what is wrong with it, for the notice
     * @throws FolderException where it cannot be moved
     */
    public synchronized void setDesignAside(String why) {
        setAside(DESIGN, "damaged", why);
    }

    /**
     * Moves a design that can be read but not built out of the way, to a name that is free.
     *
     * @param why what does not fit, for the notice
     * @throws FolderException where it cannot be moved
     */
    public synchronized void setDesignApart(String why) {
        setAside(DESIGN, "not-taken", why);
    }

    /** What the learner should know of this folder, such as a file that was set aside; oldest first. */
    public synchronized List<String> notices() {
        return List.copyOf(notices);
    }

    @Override
    public void close() {
        lock.close();
    }

    private Optional<String> text(String name) {
        Path file = folder.resolve(name);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            return Optional.of(TextFile.read(file, SafeFile.LONGEST_BYTES));
        } catch (TextFile.TooLongException e) {
            setAside(name, "damaged", SafeFile.tooLong(e));
            return Optional.empty();
        } catch (CharacterCodingException e) {
            setAside(name, "damaged", "it is not UTF-8 text");
            return Optional.empty();
        } catch (IOException e) {
            throw new FolderException(
                    FolderException.Why.NO_ACCESS,
                    file,
                    "cannot be read (" + e.getClass().getSimpleName() + ")");
        }
    }

    private void setAside(String name, String kind, String why) {
        Path to = new SafeFile(folder.resolve(name)).setAside(kind);
        notices.add(name + " could not be used (" + why + "). It was set aside as " + to.getFileName()
                + " and nothing in it was changed.");
    }
}

package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.survey.Survey;
import loftcoil.engine.survey.SurveyJson;
import loftcoil.engine.words.Units;
import loftcoil.runner.progress.DesignShelf;
import loftcoil.runner.progress.FolderException;
import loftcoil.runner.progress.Progress;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.progress.Trail;
import org.jspecify.annotations.Nullable;

/**
 * What the learner has done and decided, in memory and in the folder alike. Where the folder cannot take a change, such as on
 * a full disk, the work goes on in memory; {@link #unsaved} tells of it, and each later change tries the whole again.
 */
final class LearnerStore {

    private final ProgressFile files;
    private Progress progress;
    private final OwnDesign own;
    private Optional<Units> forNow = Optional.empty();
    private boolean progressWaits;
    private final OwnSurvey house;
    private @Nullable FolderException unsaved;

    /**
     * Reads the folder.
     *
     * @param files the learner's folder
     * @param newSeed the seed of a learner who starts now
     */
    LearnerStore(ProgressFile files, long newSeed) {
        this.files = files;
        this.progress = files.progress(newSeed);
        this.own = new OwnDesign(files);
        this.house = new OwnSurvey(files);
        try {
            settleSurvey();
        } catch (FolderException cannot) {
            // It stays where it is; the next start tries again.
            house.told(String.valueOf(cannot.getMessage()));
        }
        house.sees(own.now());
        // Kept at once, so that the seed and with it the learner's numbers stay the same from the first screen on.
        this.progressWaits = true;
        tryToSave();
    }

    synchronized Progress progress() {
        return progress;
    }

    /** Whose units all is shown in: those of this start, else those the learner chose, else metric ones. */
    synchronized Units units() {
        return forNow.or(() -> Units.named(progress.units())).orElse(Units.METRIC);
    }

    /** Whether somebody has said whose units. */
    synchronized boolean unitsSaid() {
        return forNow.isPresent() || Units.named(progress.units()).isPresent();
    }

    /** Shows all in those units from now on, at later starts too. */
    synchronized void choose(Units chosen) {
        forNow = Optional.empty();
        update(all -> all.withUnits(chosen.code()));
    }

    /** Shows all in those units until the end or until others are chosen. */
    synchronized void useForNow(Units units) {
        forNow = Optional.of(units);
    }

    synchronized Progress.LessonWork work(String lessonId) {
        return progress.work(lessonId);
    }

    /** Keeps a change, where it is one. */
    synchronized void update(UnaryOperator<Progress> change) {
        Progress changed = change.apply(progress);
        if (!changed.equals(progress)) {
            progress = changed;
            progressWaits = true;
            tryToSave();
        }
    }

    /** Keeps a change of the work in one lesson. */
    void updateWork(String lessonId, UnaryOperator<Progress.LessonWork> change) {
        update(all -> all.withWork(lessonId, change.apply(all.work(lessonId))));
    }

    /** The learner's design, as its file has it where that was changed by other means. */
    synchronized Design design() {
        return own.now();
    }

    /** How the learner's design came to be. */
    synchronized Trail trail() {
        own.now();
        return own.trail();
    }

    /** Makes a changed design the learner's own. */
    synchronized void becomes(Design changed, Trail.How how) {
        house.sees(own.now());
        own.becomes(changed, how);
        house.sees(own.now());
        tryToSave();
    }

    /**
     * Takes up another design in the place of the learner's own, which goes to the shelf with its trail and its survey.
     *
     * @param survey of the other; empty where none was begun
     * @return the key of the one from before on the shelf
     * @throws FolderException where the folder cannot be written; nothing is changed then
     */
    synchronized String takeUp(Design other, Trail trail, Optional<Survey> survey) {
        save();
        Design before = own.now();
        String key = shelf().put(before.name(), DesignJson.write(before), own.trail(), surveyText());
        own.gives(other, trail);
        house.gives(survey);
        house.sees(own.now());
        tryToSave();
        return key;
    }

    /** The learner's other designs. */
    DesignShelf shelf() {
        return files.shelf();
    }

    /** The survey of the learner's house as far as it has come; where none was begun, it is the learner's design as it stands. */
    synchronized Survey survey() {
        house.sees(own.now());
        return house.now(own.now());
    }

    /** The survey of the design that is taken up, as a file of it; empty where none was begun. */
    synchronized Optional<String> surveyText() {
        return house.begun().map(survey -> SurveyJson.write(survey, own.now().name()));
    }

    synchronized void keep(Survey changed) {
        house.becomes(changed);
        tryToSave();
    }

    /**
     * Begins the survey again; what was measured until now is kept beside it.
     *
     * @return the name that is kept under; empty where nothing was measured
     * @throws FolderException where the folder cannot be written; nothing is changed then
     */
    synchronized Optional<String> afresh(Survey begun) {
        Optional<String> kept = house.keptBeside();
        keep(begun);
        return kept;
    }

    /**
     * Folders of older editions have one survey for all designs, and a sudden end may leave that of the design from before: it goes to the
     * design it was made for.
     */
    private void settleSurvey() {
        Optional<String> madeFor =
                house.madeFor().filter(name -> !name.equals(own.now().name()));
        List<String> theirs = madeFor.map(this::onShelf).orElse(List.of());
        if (theirs.isEmpty()) {
            return;
        }
        String name = madeFor.orElseThrow();
        String text = house.text().orElseThrow();
        Optional<String> free =
                theirs.stream().filter(key -> shelf().survey(key).isEmpty()).findFirst();
        boolean there = theirs.stream().anyMatch(key -> shelf().survey(key).equals(Optional.of(text)));
        if (there) {
            house.told("Each design has a survey of its own; that of “" + name + "” lies with it on the shelf.");
        } else if (free.isPresent()) {
            shelf().putSurvey(free.get(), text);
            house.told("Each design has a survey of its own now: survey.json was made for “" + name
                    + "” and lies with it on the shelf. Take that design up to go on measuring it.");
        } else {
            house.told("survey.json was made for “" + name + "”, which has another survey on the shelf. It is kept as "
                    + files.keepSurveyBefore(text) + ".");
        }
        house.gives(Optional.empty());
    }

    /** Keys of the designs on the shelf that are called that. */
    private List<String> onShelf(String name) {
        return shelf().keys().stream()
                .filter(key -> shelf().text(key)
                        .flatMap(TrailWords::design)
                        .filter(design -> design.name().equals(name))
                        .isPresent())
                .toList();
    }

    /** Why the folder does not have all of the work yet, and what to do; empty where it has. */
    synchronized Optional<FolderException> unsaved() {
        return Optional.ofNullable(unsaved);
    }

    /**
     * Writes what the folder does not have yet.
     *
     * @throws FolderException where it still cannot be written; the work stays in memory
     */
    synchronized void save() {
        tryToSave();
        if (unsaved != null) {
            throw unsaved;
        }
    }

    private void tryToSave() {
        try {
            if (progressWaits) {
                files.keep(progress);
                progressWaits = false;
            }
            own.save();
            house.save(own.now().name());
            unsaved = null;
        } catch (FolderException cannot) {
            unsaved = cannot;
        }
    }

    /**
     * Puts another design in the place of the learner's own, which stays in the folder under a name with the date.
     *
     * @param how what made it
     * @return the name the design from before is kept under
     */
    synchronized String replace(Design other, Trail.How how) {
        // What was decided last must be safe before anything takes its place.
        save();
        String kept = files.keepBefore(DesignJson.write(own.now()));
        becomes(other, how);
        return kept;
    }

    /**
     * Keeps a survey from before in the folder, under a name with the date.
     *
     * @return that name
     */
    synchronized String keepSurveyBefore(String json) {
        return files.keepSurveyBefore(json);
    }

    /**
     * Where the house was told otherwise than the design has it after some changes, which leave the house as it is; empty where it was
     * not.
     *
     * @param changes paths of fields and named changes
     */
    String toldOtherwise(List<String> changes) {
        List<String> decides =
                changes.stream().flatMap(name -> Changes.decides(name).stream()).toList();
        String told = survey().otherwise(design()).stream()
                .filter(said -> decides.contains(said.path().replaceAll("\\[\\d+]", "[]")))
                .map(said -> units().words(said.words()))
                .collect(Collectors.joining("; "));
        return told.isEmpty()
                ? ""
                : " Your house was told otherwise and stays as it was told (" + told
                        + "): change it under House too, or it goes"
                        + " back to that once you make the house your design.";
    }

    /** Names of designs that were replaced, the newest first. */
    List<String> keptDesigns() {
        return files.keptDesigns();
    }

    /** The text of a design that was replaced; empty where there is none of that name. */
    Optional<String> keptDesign(String name) {
        return files.keptDesign(name);
    }

    String folder() {
        return files.folder().toString();
    }

    synchronized List<String> notices() {
        List<String> all = new ArrayList<>(files.notices());
        all.addAll(own.notices());
        all.addAll(house.notices());
        return all;
    }

    /** Tries once more to write what waits. */
    synchronized void close() {
        tryToSave();
        files.close();
    }
}

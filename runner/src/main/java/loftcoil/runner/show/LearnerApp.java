package loftcoil.runner.show;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.clear.Clears;
import loftcoil.engine.words.Units;

/**
 * Where a learner works: the course, the learner's folder and the running Java together, as views. Every face talks to
 * this and to nothing beneath it. Calls may come from several threads.
 */
public interface LearnerApp extends AutoCloseable {

    /** The lessons, and where the learner is. */
    View.Course course();

    /** Opens a lesson; remembered as the one last open. */
    View.Lesson lesson(String lessonId);

    /** Runs the snippet, after any before it in the lesson that have not run yet. Saved before and after. */
    View.Run run(String lessonId, String stepId, String source, Map<String, Double> dragged);

    /**
     * Coarse pictures of what a snippet would draw at a value of its slider, from values near by that it has been run at; none where there
     * are none. Takes no longer than the drawing: nothing is run for it.
     */
    List<View.Picture> coarse(String lessonId, String stepId, String source, Map<String, Double> dragged);

    /**
     * Runs a snippet with a value its slider may soon be dragged to, for coarse pictures of values near by.
     *
     * @param lessonId name of the lesson
     * @param stepId name of the snippet
     * @param source its text as it is now
     * @param dragged value to run with, by variable
     * @param stands value its slider stands at, by variable: what later Java finds
     */
    void ahead(String lessonId, String stepId, String source, Map<String, Double> dragged, Map<String, Double> stands);

    /**
     * Why not all of the work is in the learner's folder, such as a full disk, and what to do; empty where all is. The work
     * goes on in memory meanwhile.
     */
    Optional<String> unsaved();

    /**
     * Tries again to write what the folder does not have.
     *
     * @throws loftcoil.runner.progress.FolderException where it still cannot be written
     */
    void save();

    /** Keeps the text of a snippet without running it. */
    void keep(String lessonId, String stepId, String source);

    /** Puts back the lesson's own text of a snippet. */
    View.Snippet putBack(String lessonId, String stepId);

    /** Takes an answer or a decision. */
    View.Reply answer(String lessonId, String stepId, String text);

    /**
     * A faulty system with its levers moved, without judging it.
     *
     * @param moved {@code change = value}, separated by semicolons or line ends; empty for the system as found
     */
    MendView mend(String lessonId, String stepId, String moved);

    /** Ways to go on typing at the cursor, an offset from 0. */
    List<View.Suggestion> complete(String lessonId, String stepId, String source, int cursor);

    /** The glossary. */
    View.Words words();

    /**
     * Places of the course that have all of some words, accents and capitals aside, the likeliest first.
     *
     * @param sought the words, separated by blanks
     */
    List<View.Found> search(String sought);

    /** What to do in the worst hour, and before a fire: the same for every design. */
    View.ConductTable conduct();

    /** Whose units everything is shown in. */
    Units units();

    /** Shows everything in those units from now on; kept in the learner's folder. */
    void choose(Units units);

    /** Ends the snippet that is running now, if any. */
    void stop();

    /** The learner's own design, drawn and computed; its verdict leaves the year open. */
    View.Design design();

    /**
     * The learner's own design with what is being tried as a ghost in the same frame; empty where the value is none of the design's, or
     * cannot be built.
     *
     * @param lessonId name of the lesson
     * @param stepId name of the snippet whose value is dragged
     * @param value the value, metric
     */
    Optional<View.Picture> tried(String lessonId, String stepId, double value);

    /**
     * The learner's own design, drawn in signs for a terminal.
     *
     * @param columns greatest length of a line, in characters
     * @param rows of the screen; 0 where it has no end
     */
    List<String> plainDrawing(int columns, int rows);

    /**
     * What the dangers of the learner's own design come to, the year judged too; the first time for a design it takes about a
     * second. Where the year cannot be computed, the rest is judged, and what is open says why.
     */
    View.Safety safety();

    /**
     * What the last change of the learner's own design comes to, the year judged too; takes about a second for each of the two. Where
     * the design has not been changed, or the state before cannot be read, there is nothing in it.
     */
    View.Effect effect();

    /**
     * The build sheet of the learner's own design; the first time for a design it takes some seconds.
     *
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed
     */
    BuildSheet build();

    /** How far the build sheet is that is being worked out in the background. */
    View.Building building();

    /** Begins to work it out in the background, unless it is done or under way; {@link #building} tells how far it is. */
    View.Building startBuild();

    /** Ends that; nothing of it is kept. */
    View.Building stopBuild();

    /**
     * As much of the build sheet as follows without a year and a start; it says so at its top, and is there at once.
     *
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed
     */
    BuildSheet halfBuild();

    /** How far the search for what would clear the dangers of the learner's own design is, or what it found. */
    View.Clears clears();

    /** Begins that search in the background, unless it is done or under way; {@link #clears} tells how far it is. */
    View.Clears searchClears();

    /** Ends that search; what was found until then stands. */
    View.Clears stopClears();

    /**
     * Takes one of the ways that search found into the learner's own design, as a change that can be undone.
     *
     * @param danger code of the danger
     * @param way number of the way among those of {@link View.ClearedDanger}, those of conduct behind the others, from 0
     * @throws UnknownNameException where the search of the design as it is has no such way; nothing is changed
     */
    View.Followed follow(String danger, int way);

    /** What that search found, for the build sheet; empty where there was none of the design as it is. */
    Optional<Clears> foundClears();

    /** An old design and its rebuild side by side. */
    RebuildApp rebuild();

    /** The learner's designs and the history of the one that is taken up. */
    DesignsApp designs();

    /** The learner's house as it is measured. */
    SurveyApp survey();

    /** The quick path that finds what has faded. */
    Refresh refresh();

    @Override
    void close();
}

package loftcoil.runner.show;

import java.util.Map;

/**
 * Where an old design is rebuilt: what can be changed in it, old and new side by side, and the new one taken over. Nothing is
 * kept until it is taken over. The old design goes along with each question as text, so that it may be the learner's own, one
 * the folder keeps from before, or one from a file that only the face has seen.
 */
public interface RebuildApp {

    /**
     * Starts from the learner's own design.
     */
    RebuildView.Start own();

    /**
     * Starts from a design that the learner's folder keeps from before.
     *
     * @param name one of {@link RebuildView.Start#kept}
     * @throws UnknownNameException where there is none of that name
     * @throws loftcoil.engine.fault.RefusedException where it is no design; with every fault
     */
    RebuildView.Start kept(String name);

    /**
     * Starts from the text of a design.
     *
     * @param json the design
     * @param from where it is from, for the words above it
     * @throws loftcoil.engine.fault.RefusedException where it is no design; with every fault
     */
    RebuildView.Start from(String json, String from);

    /**
     * Old and new side by side.
     *
     * @param oldJson the old design
     * @param changes values by the names of the changes
     * @param year true to march the year too, which takes a second or more for each change
     * @throws loftcoil.engine.fault.RefusedException where the design or the changes are refused; with every fault
     */
    RebuildView.SideBySide compare(String oldJson, Map<String, String> changes, boolean year);

    /** How far the years are that are being marched for {@link #compare}. */
    RebuildView.Far far();

    /** Ends that; what is known until then is shown, the years that are left without. */
    void stop();

    /**
     * Makes the changed design the learner's own. The design that was the learner's own until then stays in the folder under a
     * name with the day's date.
     *
     * @param oldJson the old design
     * @param changes values by the names of the changes
     * @throws loftcoil.engine.fault.RefusedException where the design or the changes are refused; with every fault
     */
    RebuildView.Taken takeOver(String oldJson, Map<String, String> changes);
}

package loftcoil.runner.show;

import java.util.List;

/** What a face shows of the learner's designs: the one that is taken up with its history, and those on the shelf. */
public final class DesignsView {

    private DesignsView() {}

    /**
     * All designs.
     *
     * @param words what was done just now; empty where nothing was
     * @param own the one that is taken up; its key is empty
     * @param others those on the shelf
     * @param removed those that were removed and can be brought back
     * @param dwellings what a new one can be started from
     * @param history how the one that is taken up came to be
     */
    public record Shelf(
            String words,
            Card own,
            List<Card> others,
            List<Card> removed,
            List<SurveyView.Dwelling> dwellings,
            History history) {}

    /**
     * A design.
     *
     * @param key what it is asked for by
     * @param name what it is called
     * @param file the file it is in, below the learner's folder
     * @param words the few things that tell it from another
     * @param trouble why it cannot be taken up; empty where it can
     */
    public record Card(String key, String name, String file, String words, String trouble) {}

    /**
     * How a design came to be.
     *
     * @param moments its states, the newest first
     * @param folded what was folded before the oldest of them, in a sentence; empty where nothing was
     * @param undo what an undo takes back; empty where there is nothing
     * @param redo what a redo makes again; empty where there is nothing
     */
    public record History(List<Moment> moments, String folded, String undo, String redo) {}

    /**
     * A state of a design.
     *
     * @param number by which it is asked for; it stays the same when older ones are folded
     * @param at when it was kept, such as {@code 2031-05-04 17:20}
     * @param how what made it
     * @param changes what it changed, against the state before it
     * @param now whether it is the design as it is
     */
    public record Moment(int number, String at, String how, List<RebuildView.Difference> changes, boolean now) {}

    /**
     * A design to keep as a file elsewhere.
     *
     * @param name of the file
     * @param json its text
     */
    public record Saved(String name, String json) {}
}

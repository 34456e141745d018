package loftcoil.runner.show;

import java.util.List;

/**
 * The learner's designs. One of them is taken up: it is the one that lessons, survey and rebuild change. The others lie on the shelf.
 * Whatever is done here can be taken back: what is replaced goes to the shelf, what is removed can be brought back, and each change of
 * a design stands in its history.
 */
public interface DesignsApp {

    /** All designs. */
    DesignsView.Shelf shelf();

    /**
     * Takes up a new design that starts from an example dwelling, every value borrowed; the one until now goes to the shelf.
     *
     * @param dwelling code of one of {@link DesignsView.Shelf#dwellings}
     * @param name what to call it; blank for the name of the example
     * @throws loftcoil.engine.fault.RefusedException where there is no such dwelling or that is no name
     */
    DesignsView.Shelf start(String dwelling, String name);

    /**
     * Takes up a design from the text of a file; the one until now goes to the shelf.
     *
     * @param json the text
     * @param from the file it is from, for the words
     * @throws loftcoil.engine.fault.RefusedException where it is no design; with every fault
     */
    DesignsView.Shelf open(String json, String from);

    /**
     * Puts a copy of a design on the shelf.
     *
     * @param key of the design; empty for the one that is taken up
     * @param name what to call the copy
     * @throws UnknownNameException where there is no such design
     * @throws loftcoil.engine.fault.RefusedException where that is no name
     */
    DesignsView.Shelf copy(String key, String name);

    /**
     * Gives a design another name.
     *
     * @param key of the design; empty for the one that is taken up
     * @param name what to call it
     * @throws UnknownNameException where there is no such design
     * @throws loftcoil.engine.fault.RefusedException where that is no name
     */
    DesignsView.Shelf rename(String key, String name);

    /**
     * All in which a design of the shelf differs from the one that is taken up.
     *
     * @throws UnknownNameException where there is no such design
     * @throws loftcoil.engine.fault.RefusedException where its file holds no design; with every fault
     */
    List<RebuildView.Difference> differences(String key);

    /**
     * Takes up a design of the shelf; the one until now goes there.
     *
     * @throws UnknownNameException where there is no such design
     * @throws loftcoil.engine.fault.RefusedException where its file holds no design; with every fault
     */
    DesignsView.Shelf takeUp(String key);

    /**
     * Removes a design of the shelf; it can be brought back.
     *
     * @throws UnknownNameException where there is no such design
     */
    DesignsView.Shelf remove(String key);

    /**
     * Puts a design that was removed back on the shelf.
     *
     * @throws UnknownNameException where there is no such design
     */
    DesignsView.Shelf bringBack(String key);

    /**
     * A design to keep as a file elsewhere.
     *
     * @param key of the design; empty for the one that is taken up
     * @throws UnknownNameException where there is no such design
     */
    DesignsView.Saved saved(String key);

    /** Takes back the last change of the design that is taken up; where there is none, says so. */
    DesignsView.Shelf undo();

    /** Makes the change again that was taken back last; where there is none, says so. */
    DesignsView.Shelf redo();

    /**
     * Brings back a state from before, which is a change like any other.
     *
     * @param number of one of {@link DesignsView.History#moments}
     * @throws UnknownNameException where there is no such state
     */
    DesignsView.Shelf backTo(int number);
}

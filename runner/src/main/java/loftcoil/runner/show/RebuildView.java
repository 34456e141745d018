package loftcoil.runner.show;

import java.util.List;

/** What a face shows of a rebuild: the design as it stands, what can be changed in it, and both side by side. */
public final class RebuildView {

    private RebuildView() {}

    /**
     * A rebuild at its start.
     *
     * @param name what the old design is called
     * @param from where it is from, in words
     * @param json the old design as text, to be sent back with each question about it
     * @param parts the changes, by the part of the system they belong to
     * @param kept names of designs of earlier days that the learner's folder keeps
     */
    public record Start(String name, String from, String json, List<Part> parts, List<String> kept) {}

    /**
     * Changes of one part of the system.
     *
     * @param words the part
     * @param levers the changes
     * @param counts what each fitting counts, where fittings are chosen: a heading first; empty elsewhere
     */
    public record Part(String words, List<Lever> levers, List<String> counts) {}

    /**
     * One thing that can be changed.
     *
     * @param name its name, as in {@code tank.baseM}
     * @param label what it is
     * @param unit unit of its value; empty where there is none
     * @param current the old design's value
     * @param allowed what is allowed, in words
     * @param options the names to choose from; empty where a number is typed
     */
    public record Lever(String name, String label, String unit, String current, String allowed, List<String> options) {}

    /**
     * Old and new side by side.
     *
     * @param change both in one frame: what is kept, cut out and added
     * @param plainChange the same as lines of plain text
     * @param before the old design's loop
     * @param after the new design's loop
     * @param beforeWords does the old loop circulate
     * @param afterWords does the new loop circulate
     * @param safety what the new design's dangers come to; leaves the year open where it was not marched
     * @param heat whose heat both rest on where it is borrowed from an example; empty where it is not
     * @param groups all figures, those that belong together in one group
     * @param raised cautions that only the new design raises
     * @param settled cautions that only the old design raises
     * @param staying cautions that both raise
     * @param effects what each change does alone
     * @param year true where the year was marched
     * @param differences all in which the two designs differ, also where no figure does
     * @param parts what to buy for the rebuild and what it leaves over
     * @param partsKept how many lines of the parts list stay as they are
     * @param noYear why the year that was asked for could not be judged; empty where it was, or was not asked for
     */
    public record SideBySide(
            View.Picture change,
            List<String> plainChange,
            View.Picture before,
            View.Picture after,
            String beforeWords,
            String afterWords,
            View.Safety safety,
            String heat,
            List<Group> groups,
            List<View.Finding> raised,
            List<View.Finding> settled,
            List<View.Finding> staying,
            List<Effect> effects,
            boolean year,
            List<Difference> differences,
            List<PartLine> parts,
            int partsKept,
            String noYear) {}

    /**
     * A part that a rebuild wants or leaves over.
     *
     * @param fate what becomes of it, in words
     * @param amount how much of it
     * @param part what it is
     */
    public record PartLine(String fate, String amount, String part) {}

    /**
     * One thing in which two designs differ.
     *
     * @param part what it belongs to, such as {@code Tank} or {@code Hot pipe “riser”}
     * @param label what it is; empty where the whole part is new or gone
     * @param before what stands in the old design
     * @param after what stands in the new one
     */
    public record Difference(String part, String label, String before, String after) {}

    /**
     * How far a long piece of work is.
     *
     * @param done years marched
     * @param of years in all; 0 where nothing was begun
     */
    public record Far(int done, int of) {}

    /**
     * Figures that belong together.
     *
     * @param words what they are about
     * @param changed how many of them changed
     * @param lines the figures
     */
    public record Group(String words, int changed, List<Line> lines) {}

    /**
     * One figure.
     *
     * @param label what it is
     * @param unit its unit; empty for a plain number
     * @param before the old value; empty where there is none
     * @param after the new value; empty where there is none
     * @param difference with its sign; empty where there is none
     * @param turn what became of it: a {@link loftcoil.engine.study.Trend} in lower case
     */
    public record Line(String label, String unit, String before, String after, String difference, String turn) {}

    /**
     * What one change does by itself.
     *
     * @param words the change
     * @param refused why it cannot be done; empty where it can
     * @param lines the figures it changes, the weightiest few
     */
    public record Effect(String words, List<String> refused, List<Line> lines) {}

    /**
     * A rebuild that was taken over.
     *
     * @param words what was done, and which pipes were stretched with it
     * @param kept name of the file the design from before is kept in
     */
    public record Taken(String words, String kept) {}
}

package loftcoil.engine.build;

import java.util.List;
import java.util.Locale;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.Headings;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;

/**
 * What to buy or find; only what the design implies.
 *
 * @param parts lines, in groups
 */
public record PartsList(List<Part> parts) {

    /** Keeps a copy of the parts. */
    public PartsList {
        parts = List.copyOf(parts);
    }

    /** What a part is for. */
    public enum Group {
        /** Tube and what joins it. */
        PIPE("Tube and fittings"),
        /** Lagging of pipes and tank. */
        LAGGING("Lagging"),
        /** The tank and what is screwed to it. */
        TANK("Tank"),
        /** Panes, seals and shutter. */
        WINDOW("Panes"),
        /** Taps and the pipes to them. */
        TAPS("Taps"),
        /** What makes it safe, and tools to measure with. */
        SAFETY("Safety and measuring");

        private final String label;

        Group(String label) {
            this.label = label;
        }

        /** Its code, such as {@code pipe}. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** Its heading. */
        public String label() {
            return label;
        }
    }

    /**
     * A line of the list.
     *
     * @param group heading it stands under
     * @param what the part
     * @param amount how much or how many, allowance included
     * @param why what it is for and how the amount was reckoned
     */
    public record Part(Group group, MeasuredText what, Measure amount, MeasuredText why) {}

    /**
     * The parts of a design, without the years that a whole build sheet takes.
     *
     * @throws loftcoil.engine.fault.RefusedException where the design has a tube or a fitting that no table has
     */
    public static PartsList of(Design design) {
        return PartsMaker.of(design, CutMaker.of(design), FixingsMaker.of(design, Headings.UNKNOWN));
    }

    /** The parts of one group. */
    public List<Part> of(Group group) {
        return parts.stream().filter(part -> part.group() == group).toList();
    }
}

package loftcoil.engine.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loftcoil.engine.build.PartsList.Part;
import loftcoil.engine.words.Measure;

/**
 * What a rebuild needs and what it leaves over: two parts lists, line by line, by what the part is.
 *
 * @param lines those that differ, first what the new list has, then what only the old one had
 * @param kept lines that are the same in both
 */
public record PartsChange(List<Line> lines, List<Part> kept) {

    /** Amounts that differ less than this are one. */
    private static final double SAME = 1e-6;

    /** Keeps copies of the lists. */
    public PartsChange {
        lines = List.copyOf(lines);
        kept = List.copyOf(kept);
    }

    /** What becomes of a part. */
    public enum Fate {
        /** To be bought or found. */
        ADD("to buy or find"),
        /** Left over: of no use here any more, or more of it than needed. */
        LEFT("left over");

        private final String words;

        Fate(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /**
     * A part of which the rebuild wants more or less than there was.
     *
     * @param part the part as the list says that has it; its amount is that of the list
     * @param fate what becomes of it
     * @param difference how much is wanted besides or left over, never negative
     */
    public record Line(Part part, Fate fate, Measure difference) {}

    /**
     * Sets two lists side by side.
     *
     * @param before parts of what stands
     * @param after parts of what is to be
     */
    public static PartsChange between(PartsList before, PartsList after) {
        Map<String, Part> old = byName(before);
        List<Line> lines = new ArrayList<>();
        List<Part> kept = new ArrayList<>();
        byName(after).forEach((name, part) -> {
            Part was = old.remove(name);
            double more =
                    part.amount().value() - (was == null ? 0 : was.amount().value());
            if (Math.abs(more) < SAME) {
                kept.add(part);
            } else {
                lines.add(line(part, more));
            }
        });
        old.values().forEach(part -> lines.add(line(part, -part.amount().value())));
        return new PartsChange(lines, kept);
    }

    private static Line line(Part part, double more) {
        return new Line(
                part,
                more > 0 ? Fate.ADD : Fate.LEFT,
                new Measure(Math.abs(more), part.amount().kind()));
    }

    /** Parts by group and name; the amounts of lines that say the same are added. */
    private static Map<String, Part> byName(PartsList list) {
        Map<String, Part> parts = new LinkedHashMap<>();
        for (Part part : list.parts()) {
            parts.merge(
                    part.group() + " " + part.what().metric(),
                    part,
                    (one, other) -> new Part(
                            one.group(),
                            one.what(),
                            new Measure(
                                    one.amount().value() + other.amount().value(),
                                    one.amount().kind()),
                            one.why()));
        }
        return parts;
    }
}

package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where words already stand on a drawing, so that no others are set on them. The first free place of a list is taken, always the same. */
final class Placed {

    /** Width of a letter for its height, on the wide side of the letters that are used. */
    static final double LETTER = 0.59;

    /** Height of letters with their tails, for their size. */
    private static final double TALL = 1.12;

    /** A box in units of the drawing, y downward. */
    record Box(double left, double top, double right, double bottom) {

        /** Of words whose baseline begins, has its middle, or ends at a place. */
        static Box of(String words, double size, double x, double y, String anchor) {
            double width = words.length() * size * LETTER;
            double left = anchor.equals("start") ? x : anchor.equals("end") ? x - width : x - width / 2;
            return new Box(left, y - 0.85 * size, left + width, y + (TALL - 0.85) * size);
        }

        static Box round(double x, double y, double radius) {
            return new Box(x - radius, y - radius, x + radius, y + radius);
        }

        /** Its point that is nearest to another, where that is farther off. */
        Optional<double[]> nearestIfFar(double[] from, double off) {
            double[] near = {Math.max(left, Math.min(right, from[0])), Math.max(top, Math.min(bottom, from[1]))};
            return Math.hypot(near[0] - from[0], near[1] - from[1]) > off ? Optional.of(near) : Optional.empty();
        }

        boolean touches(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    /** A place for words. */
    record At(double x, double y, String anchor) {}

    private final List<Box> words = new ArrayList<>();
    private final List<Box> things = new ArrayList<>();
    private final List<Box> faint = new ArrayList<>();
    private final Box within;

    /** @param within what words may not leave */
    Placed(Box within) {
        this.within = within;
    }

    /** Words that stand where they stand. */
    void stands(Box box) {
        words.add(box);
    }

    /** Something drawn that words had better not cover. */
    void thing(Box box) {
        things.add(box);
    }

    /**
     * A line drawn that words had better not cover.
     *
     * @param line its points, two at least
     * @param stroke how far apart the places are that are kept free along it
     * @param reach how far it reaches to either side
     */
    void thing(List<double[]> line, double stroke, double reach) {
        for (int i = 1; i < line.size(); i++) {
            double[] from = line.get(i - 1);
            double[] to = line.get(i);
            int steps = (int) Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / stroke) + 1;
            for (int k = 0; k <= steps; k++) {
                double share = (double) k / steps;
                thing(Box.round(from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1]), reach));
            }
        }
    }

    /** A thin line that words cover only where there is no other place. */
    void faint(Box box) {
        faint.add(box);
    }

    /** Whether words may stand there at all. */
    boolean free(Box box) {
        boolean inside = box.left >= within.left
                && box.right <= within.right
                && box.top >= within.top
                && box.bottom <= within.bottom;
        return inside && words.stream().noneMatch(box::touches);
    }

    private boolean clear(Box box) {
        return free(box) && things.stream().noneMatch(box::touches);
    }

    /** The first place where the words cover nothing that is drawn, or else a thin line at most; empty where there is none. */
    Optional<At> place(String text, double size, List<At> places) {
        List<At> clear = places.stream()
                .filter(at -> clear(Box.of(text, size, at.x, at.y, at.anchor)))
                .toList();
        Optional<At> free = clear.stream()
                .filter(at -> faint.stream().noneMatch(Box.of(text, size, at.x, at.y, at.anchor)::touches))
                .findFirst();
        return taken(text, size, free.or(() -> clear.stream().findFirst()));
    }

    /** The first place where the words cover no words, whatever else is drawn there; empty where there is none. */
    Optional<At> placeOver(String text, double size, List<At> places) {
        return taken(
                text,
                size,
                places.stream()
                        .filter(at -> free(Box.of(text, size, at.x, at.y, at.anchor)))
                        .findFirst());
    }

    private Optional<At> taken(String text, double size, Optional<At> found) {
        found.ifPresent(at -> words.add(Box.of(text, size, at.x, at.y, at.anchor)));
        return found;
    }

    /** The same for a mark in a circle. */
    Optional<At> placeRound(double radius, List<At> places) {
        Optional<At> found = places.stream()
                .filter(at -> free(Box.round(at.x, at.y, radius)))
                .findFirst();
        found.ifPresent(at -> words.add(Box.round(at.x, at.y, radius)));
        return found;
    }

    /** Boxes of all words, in the order in which they were set. */
    List<Box> words() {
        return List.copyOf(words);
    }
}

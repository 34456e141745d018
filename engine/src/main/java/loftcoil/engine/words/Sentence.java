package loftcoil.engine.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A sentence as it stands in a resource, taken apart. */
record Sentence(List<Piece> pieces) {

    private static final Pattern BRACES = Pattern.compile("\\{([^{}]*)}");
    private static final Pattern HOLE =
            Pattern.compile("([a-zA-Z]\\w*|-?\\d+(?:\\.\\d+)?)(?::([A-Z_0-9]+)([+-]\\d)?( bare)?)?");

    Sentence {
        pieces = List.copyOf(pieces);
    }

    /** Something that stands fast, or a hole. */
    sealed interface Piece permits Ready, Hole {}

    /** Text, or a measure that is the same for every design. */
    record Ready(MeasuredText.Part part) implements Piece {}

    /**
     * A hole.
     *
     * @param kind what it measures; empty where it takes text
     * @param finer decimal places beyond what the kind has; below 0 for fewer
     * @param bare whether its unit follows later in the sentence
     */
    record Hole(String name, Optional<MeasureKind> kind, int finer, boolean bare) implements Piece {

        /** A measure as the hole wants it written. */
        Measure written(Measure measure) {
            Measure digits = finer == 0 ? measure : measure.finer(finer);
            return bare ? digits.withoutUnit() : digits;
        }
    }

    /** @throws IllegalStateException where a hole is misspelt */
    static Sentence read(String where, String text) {
        List<Piece> pieces = new ArrayList<>();
        Matcher braces = BRACES.matcher(text);
        int from = 0;
        while (braces.find()) {
            plain(where, text.substring(from, braces.start()), pieces);
            pieces.add(braced(where, braces.group(1)));
            from = braces.end();
        }
        plain(where, text.substring(from), pieces);
        return new Sentence(pieces);
    }

    private static void plain(String where, String text, List<Piece> pieces) {
        if (text.contains("{") || text.contains("}")) {
            throw new IllegalStateException(where + ": a brace without its fellow");
        }
        if (!text.isEmpty()) {
            pieces.add(new Ready(new MeasuredText.Text(text)));
        }
    }

    private static Piece braced(String where, String inside) {
        Matcher hole = HOLE.matcher(inside);
        if (!hole.matches()) {
            throw new IllegalStateException(where + ": no hole is written so: {" + inside + "}");
        }
        Optional<MeasureKind> kind = Optional.ofNullable(hole.group(2)).map(named -> kind(where, named));
        int finer = hole.group(3) == null ? 0 : Integer.parseInt(hole.group(3));
        Hole made = new Hole(hole.group(1), kind, finer, hole.group(4) != null);
        if (Character.isLetter(made.name().charAt(0))) {
            return made;
        }
        double value = Double.parseDouble(made.name());
        return new Ready(made.written(new Measure(
                value,
                kind.orElseThrow(() -> new IllegalStateException(where + ": " + inside + " measures nothing")))));
    }

    private static MeasureKind kind(String where, String named) {
        for (MeasureKind kind : MeasureKind.values()) {
            if (kind.name().equals(named)) {
                return kind;
            }
        }
        throw new IllegalStateException(where + ": there is no kind " + named);
    }
}

package loftcoil.engine.design;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Numeral;

/** The words for what stands in a field of a design, and for the part it belongs to. */
final class DifferenceWords {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final Map<String, String> PARTS = Map.of(
            "name", "Name of the design",
            "site", "Site",
            "tank", "Tank",
            "coil", "Coil",
            "fire", "Fire",
            "window", "Panes",
            "trunk", "Pipe that taps share",
            "safety", "Safety");

    /** Decimal places beyond those of its kind that a value may be written with. */
    private static final int MOST_FINER = 6;

    /** How far what is written may be off before another decimal place is written; a tape shows no more. */
    private static final double NEAR = 0.002;

    private DifferenceWords() {}

    /** Whether a field holds a number for each month. */
    static boolean isYear(DesignField field) {
        return field.allowed().startsWith("12 values");
    }

    private static boolean isMonths(DesignField field) {
        return field.allowed().startsWith("months");
    }

    static String month(int number) {
        return Month.of(number).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    /** What a field belongs to; of a pipe, tap or draw its name in the later design, or else in the earlier one. */
    static String part(String path, Design after, Design before) {
        for (Listed listed : Listed.values()) {
            if (listed.holds(path)) {
                Map<String, Optional<String>> now = DesignFields.texts(after);
                return item(listed, listed.number(path), now.containsKey(path) ? now : DesignFields.texts(before));
            }
        }
        String first = path.replaceFirst("[.\\[].*", "");
        return PARTS.getOrDefault(first, first);
    }

    /** What an item of a list is called. */
    static String item(Listed listed, int number, Map<String, Optional<String>> texts) {
        if (listed.named()) {
            return listed.item() + " “"
                    + texts.getOrDefault(listed.at(number, ".name"), Optional.empty())
                            .orElse("") + "”";
        }
        String tap =
                texts.getOrDefault(listed.at(number, ".tap"), Optional.empty()).orElse("");
        return listed.item() + " " + (number + 1) + (tap.isEmpty() ? "" : " from “" + tap + "”");
    }

    /**
     * What stands in a field.
     *
     * @param text what stands there; empty where nothing does
     * @param other what stands in the other design, so that two numbers are never written alike
     */
    static MeasuredText value(DesignField field, Optional<String> text, Optional<String> other) {
        if (text.isEmpty()) {
            return MeasuredText.of(field.leftOut().isPresent() ? Changes.NOT_SAID : "none");
        }
        String plain = text.get();
        if (isMonths(field)) {
            return MeasuredText.of(plain.isBlank() ? "none" : months(plain));
        }
        if (plain.equals("true") || plain.equals("false")) {
            return MeasuredText.of(plain.equals("true") ? "yes" : "no");
        }
        if (!NUMBER.matcher(plain).matches() || field.range().isEmpty()) {
            return plain.isBlank() ? MeasuredText.of("none") : MeasuredText.of(new MeasuredText.Name(plain));
        }
        double value = Double.parseDouble(plain);
        Optional<Double> second =
                other.filter(one -> NUMBER.matcher(one).matches()).map(Double::parseDouble);
        if (field.path().equals("site.latitudeDeg")) {
            return MeasuredText.of(measure(Math.abs(value), field, Optional.empty()), value < 0 ? " south" : " north");
        }
        if (field.path().equals("site.longitudeDeg")) {
            return MeasuredText.of(measure(Math.abs(value), field, Optional.empty()), value < 0 ? " west" : " east");
        }
        boolean bare = field.kind() == MeasureKind.NONE && !field.unit().isEmpty();
        return bare
                ? MeasuredText.of(Numeral.withUnit(Numeral.minus(plain), field.unit()))
                : MeasuredText.of(measure(value, field, second));
    }

    private static String months(String plain) {
        return Arrays.stream(plain.split(", ", -1))
                .map(number -> month(Integer.parseInt(number)))
                .collect(Collectors.joining(", "));
    }

    /** As many decimal places as tell the value, and tell it from the other. */
    static Measure measure(double value, DesignField field, Optional<Double> other) {
        Measure rough = new Measure(value * field.inKind(), field.kind());
        if (field.kind() == MeasureKind.CLOCK_H) {
            return rough;
        }
        Optional<Measure> second = other.map(one -> new Measure(one * field.inKind(), field.kind()));
        for (int finer = 0; finer < MOST_FINER; finer++) {
            int places = finer;
            Measure written = rough.finer(places);
            boolean told = second.map(one -> !one.finer(places).number().equals(written.number()))
                    .orElse(true);
            if (told
                    && near(written)
                    && second.map(one -> near(one.finer(places))).orElse(true)) {
                return written;
            }
        }
        return rough.finer(MOST_FINER);
    }

    private static boolean near(Measure written) {
        double shown = Double.parseDouble(Numeral.hyphened(written.number()));
        double share = written.kind() == MeasureKind.SHARE ? 100 : 1;
        double value = written.value() * share;
        return Math.abs(shown - value) <= NEAR * Math.abs(value);
    }
}

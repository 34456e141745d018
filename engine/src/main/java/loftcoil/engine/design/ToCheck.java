package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Numeral;

/**
 * A value of a design that nobody measured, chose or decided, with what stands there, so that a builder can check it.
 *
 * @param path where it stands
 * @param item what pipe, tap or draw it belongs to; empty for what belongs to none
 * @param origin assumed or borrowed
 * @param value what stands there, with its unit; of a stand-in how far it may be off too
 */
public record ToCheck(String path, String item, Origin origin, MeasuredText value) {

    /** Air by the month is told to a tenth of a degree. */
    private static final int FINER_MONTH = 1;

    /** All such values of a design, in the order of the file. */
    public static List<ToCheck> of(Design design) {
        return DesignFields.of(design).stream()
                .filter(Grounds::counts)
                .filter(value -> Grounds.origin(value) != Origin.YOURS)
                .map(value ->
                        new ToCheck(value.path(), item(value.path(), design), Grounds.origin(value), words(value)))
                .toList();
    }

    private static String item(String path, Design design) {
        return Stream.of(Listed.values()).anyMatch(listed -> listed.holds(path))
                ? DifferenceWords.part(path, design, design)
                : "";
    }

    private static MeasuredText words(DesignFields.Value value) {
        DesignField field = value.field();
        return value.text().isEmpty()
                ? field.assumed().map(assumed -> standIn(field, assumed)).orElseThrow()
                : DifferenceWords.isYear(field)
                        ? year(field, value.text().orElseThrow())
                        : DifferenceWords.value(field, value.text(), Optional.empty());
    }

    /** Twelve numbers, the unit behind the last. */
    private static MeasuredText year(DesignField field, String text) {
        Optional<MeasureKind> kind = MeasureKind.ofUnit(field.unit());
        String[] months = text.split(", ", -1);
        List<Object> parts = new ArrayList<>();
        for (int i = 0; i < months.length; i++) {
            String between = i == 0 ? "" : ", ";
            boolean last = i == months.length - 1;
            if (kind.isEmpty()) {
                parts.add(between + Numeral.minus(months[i]) + (last ? " " + field.unit() : ""));
            } else {
                int finer = kind.get() == MeasureKind.TEMP_C ? FINER_MONTH : 0;
                Measure measure = new Measure(Double.parseDouble(months[i]), kind.get()).finer(finer);
                parts.add(between);
                parts.add(last ? measure : measure.withoutUnit());
            }
        }
        return MeasuredText.of(parts.toArray());
    }

    private static MeasuredText standIn(DesignField field, DesignField.Assumed assumed) {
        return MeasuredText.of(
                measure(field, assumed.usual()),
                " (",
                measure(field, assumed.low()).withoutUnit(),
                " to ",
                measure(field, assumed.high()),
                ")");
    }

    private static Measure measure(DesignField field, double value) {
        return DifferenceWords.measure(value, field, Optional.empty());
    }
}

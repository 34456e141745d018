package loftcoil.engine.design;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.words.Numeral;

/** What somebody most likely meant by a value that a design cannot take, added to its fault. */
final class FaultHints {

    private static final double MJ_PER_KWH = 3.6;

    /** No place has a mean day with more sun than this, kWh/m². */
    private static final double SUNNIEST_KWH = 12;

    /** No place has a mean month as warm as that in °C, or warmer than this in °F. */
    private static final double HOTTEST_MONTH_C = 45;

    private static final double HOTTEST_MONTH_F = 113;

    private static final double WHOLE_TURN_DEG = 360;

    private FaultHints() {}

    /** The fault with what was most likely meant; as it is where nothing is known, or where it says why already. */
    static Fault hinted(Fault fault) {
        return fault.why().isEmpty()
                ? hint(fault)
                        .map(why -> new Fault(fault.path(), fault.given(), fault.allowed(), why))
                        .orElse(fault)
                : fault;
    }

    private static Optional<String> hint(Fault fault) {
        String path = fault.path();
        if (path.startsWith("site.monthly.globalKWhPerM2Day")) {
            return number(fault)
                    .filter(sun -> sun > SUNNIEST_KWH && sun <= SUNNIEST_KWH * MJ_PER_KWH)
                    .map(sun -> "MJ, not kWh? " + Numeral.typed(sun) + " MJ are " + Numeral.fixed(sun / MJ_PER_KWH, 2)
                            + " kWh");
        }
        if (path.startsWith("site.monthly.meanAirC")) {
            return number(fault)
                    .filter(air -> air > HOTTEST_MONTH_C && air <= HOTTEST_MONTH_F)
                    .map(air -> "in °F where °C are wanted?");
        }
        if (path.endsWith("azimuthDeg")) {
            return number(fault)
                    .filter(turn -> turn < 0 && turn >= -WHOLE_TURN_DEG)
                    .map(turn -> "clockwise from north all round: " + Numeral.typed(turn + WHOLE_TURN_DEG) + " for "
                            + Numeral.typed(turn));
        }
        if (path.contains("onths[")) {
            return month(fault.given()).map(month -> "months are counted, January as 1: " + month.getValue());
        }
        boolean listed = fault.given().startsWith("[");
        if (listed && (path.equals("fire.litFromH") || path.equals("fire.litForH"))) {
            return Optional.of("one fire only; the second of a day stands in litAgainFromH and litAgainForH");
        }
        return Optional.empty();
    }

    private static Optional<Double> number(Fault fault) {
        try {
            return Optional.of(Double.parseDouble(fault.given().replace('−', '-')));
        } catch (NumberFormatException isNone) {
            return Optional.empty();
        }
    }

    /** A month by its English name, or the first three letters of it. */
    private static Optional<Month> month(String given) {
        String name = given.replace("\"", "").strip();
        return Stream.of(Month.values())
                .filter(month -> name.equalsIgnoreCase(month.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
                        || name.equalsIgnoreCase(month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH)))
                .findFirst();
    }
}

package loftcoil.engine.study;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;

/**
 * How the figures of one unit are written for a person: so many decimal places, and minutes as hours where a person would say
 * hours. What would be noise in the last place is nought.
 *
 * @param unit the unit that is shown; empty for a plain number
 * @param divisor what a value is divided by to be shown in it
 * @param decimals decimal places
 */
record FigureUnit(String unit, double divisor, int decimals) {

    /** A time from which a person says hours, min. */
    private static final double HOURS_FROM_MIN = 120;

    private static final Map<String, Integer> DECIMALS = Map.ofEntries(
            Map.entry("kg/s", 4),
            Map.entry("L/min", 2),
            Map.entry("Pa", 1),
            Map.entry("kPa", 1),
            Map.entry("kW", 2),
            Map.entry("W", 1),
            Map.entry("W/(m² K)", 2),
            Map.entry("°C", 1),
            Map.entry("K", 1),
            Map.entry("kg", 1),
            Map.entry("L", 1),
            Map.entry("kWh", 1),
            Map.entry("min", 1),
            Map.entry("", 2));

    /**
     * The unit in which figures are shown.
     *
     * @param unit as the sheet has it
     * @param largest the largest of the values that stand side by side, without its sign
     */
    static FigureUnit of(String unit, double largest) {
        if (unit.equals("min") && largest >= HOURS_FROM_MIN) {
            return new FigureUnit("h", 60, 1);
        }
        Integer decimals = DECIMALS.get(unit);
        if (decimals == null) {
            throw new IllegalStateException("no decimals are known for " + unit);
        }
        // A plain number is a share below one or a count such as Reynolds' number.
        return new FigureUnit(unit, 1, unit.isEmpty() && largest >= 100 ? 0 : decimals);
    }

    /** The value as it is shown, with the sign of a minus; nought has no sign. */
    String shown(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value / divisor).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0
                ? rounded.abs().toPlainString()
                : rounded.toPlainString().replace('-', '−');
    }

    /** The value with its sign, a plus too; nought has none. */
    String signed(double value) {
        String shown = shown(value);
        return value > 0 && shown.chars().anyMatch(digit -> digit >= '1' && digit <= '9') ? "+" + shown : shown;
    }
}

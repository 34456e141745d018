package loftcoil.runner.unit;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Unit;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/**
 * Reads a unit as a person writes it: {@code L/min}, {@code kg/m³}, {@code W/(m K)}, {@code gallons per minute},
 * {@code mm H2O}. All that follows a stroke stands below it, up to the next stroke, as the trade writes {@code W/m²K}.
 */
public final class UnitText {

    private static final int LONGEST = 60;
    private static final Pattern PART =
            Pattern.compile("\\s*(?:([\\p{L}°%\"'″′]+)(?:\\^?\\(?(-?\\d)(?!\\d)\\)?)?|([*·×⋅.()])|(/))");

    /** What was measured, behind its unit: {@code litres of hot water}, {@code kg of wood}. */
    private static final Pattern OF =
            Pattern.compile("(?i)(.+?)\\s+of(?:\\s+(?:hot|cold|warm|dry|fresh|mixed))?\\s+\\p{L}+");

    private UnitText() {}

    /**
     * The unit written there.
     *
     * @param text what was written; blank means a plain number
     * @return nothing where it is no unit known here
     */
    public static Optional<WrittenUnit> read(String text) {
        String plain = UnitSpelling.plain(text).replaceFirst("^1\\s*(?=/)", "");
        if (plain.isEmpty()) {
            return Optional.of(new WrittenUnit("", AbstractUnit.ONE));
        }
        if (plain.length() > LONGEST) {
            return Optional.empty();
        }
        Optional<WrittenUnit> single = UnitNames.find(plain.replaceAll("\\.$", ""));
        Optional<WrittenUnit> unit = single.isPresent() ? single : compound(plain);
        Matcher substance = OF.matcher(text);
        return unit.isPresent() || !substance.matches() ? unit : read(substance.group(1));
    }

    private static Optional<WrittenUnit> compound(String plain) {
        Matcher part = PART.matcher(plain);
        Unit<?> unit = AbstractUnit.ONE;
        StringBuilder shown = new StringBuilder();
        boolean below = false;
        boolean named = false;
        int at = 0;
        while (part.lookingAt()) {
            if (part.group(1) != null) {
                Optional<WrittenUnit> name = UnitNames.find(part.group(1));
                if (name.isEmpty()) {
                    return Optional.empty();
                }
                int power = part.group(2) == null ? 1 : Integer.parseInt(part.group(2));
                Unit<?> raised = linear(name.get().unit()).pow(power);
                unit = below ? unit.divide(raised) : unit.multiply(raised);
                append(shown, name.get().shown(), power);
                named = true;
            } else if (part.group(4) != null) {
                below = true;
                shown.append('/');
            }
            at = part.end();
            part.region(at, plain.length());
        }
        boolean whole =
                plain.substring(at).isBlank() && named && !shown.toString().endsWith("/");
        return whole ? Optional.of(new WrittenUnit(shown.toString(), unit)) : Optional.empty();
    }

    private static void append(StringBuilder shown, String name, int power) {
        if (!shown.isEmpty() && shown.charAt(shown.length() - 1) != '/') {
            shown.append(' ');
        }
        shown.append(name);
        if (power != 1) {
            shown.append(power == 2 ? "²" : power == 3 ? "³" : String.format(Locale.ROOT, "^%d", power));
        }
    }

    /** Within a product a degree is a step, not a level: W/(m °C) is W/(m K). */
    private static Unit<?> linear(Unit<?> unit) {
        if (unit.equals(Units.CELSIUS)) {
            return Units.KELVIN;
        }
        return unit.equals(USCustomary.FAHRENHEIT) ? USCustomary.RANKINE : unit;
    }
}

package loftcoil.runner.show;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.DesignField;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.check.AnswerText;
import loftcoil.runner.check.ClockText;
import loftcoil.runner.unit.QuantityKind;
import loftcoil.runner.unit.UnitText;
import loftcoil.runner.unit.WrittenUnit;

/** What people type into a survey, as the text that a field of a design takes: numbers in any fitting unit, tubes and slopes as said. */
final class Typed {

    /** 22 mm × 1 mm. */
    private static final Pattern OUTER_BY_WALL =
            Pattern.compile("(?i)^(\\d+(?:[.,]\\d+)?)\\s*(?:mm)?\\s*[x×*]\\s*(\\d+(?:[.,]\\d+)?)(?:\\s*mm)?(.*)$");

    /** One in fifty. */
    private static final Pattern ONE_IN =
            Pattern.compile("(?i)^([-−–]?)\\s*(\\d+(?:[.,]\\d+)?)\\s*(?:in|:)\\s*(\\d+(?:[.,]\\d+)?)$");

    /** Which way a slope leads, in a word before it or behind it. */
    private static final Pattern FALLS = Pattern.compile(
            "(?i)^(?:it )?(?:falls?|falling|drops?|down|lower)\\s+(?:by )?|\\s+(?:down|lower|falling)$");

    private static final Pattern CLIMBS = Pattern.compile(
            "(?i)^(?:it )?(?:climbs?|climbing|rises?|rising|up|higher)\\s+(?:by )?|\\s+(?:up|higher|rising)$");

    /** So many inches in each foot. */
    private static final Pattern IN_PER_FT =
            Pattern.compile("(?i)^(.*?)\\s*in(?:ch(?:es)?)?\\s*(?:/|per|a|in each)\\s*(?:ft|foot)$");

    /** Of things that are counted. */
    private static final Pattern NONE = Pattern.compile("(?i)(?:none|no|nought|nil|not any)\\.?");

    private static final Pattern LEVEL = Pattern.compile("(?i)(?:none|level|flat|no slope)\\.?");
    private static final Pattern UNKNOWN =
            Pattern.compile("(?i)(?:not said|unknown|not known|(?:i )?do(?:n['’]t| not) know|no idea)\\.?");
    private static final double INCHES_IN_FOOT = 12;
    private static final String SLOPE = "mm/m";
    private static final int DIGITS = 9;
    private static final String UTC_OFFSET = "site.utcOffsetH";

    /** Clocks say how far they are from these. */
    private static final Pattern UTC = Pattern.compile("(?i)^(?:UTC|GMT)\\s*([+\\-−]?)\\s*");

    private static final Pattern MINUS = Pattern.compile("(?i)^minus\\s+");
    private static final double MM_PER_M = 1000;

    private Typed() {}

    /**
     * The text for a field.
     *
     * @param field what is known of the field
     * @param path where it stands, for a refusal
     * @param typed as it was typed
     * @throws RefusedException where no number or no fitting unit can be made out
     */
    static String text(DesignField field, String path, String typed) {
        String plain = typed.strip();
        if (plain.equalsIgnoreCase("yes") || plain.equalsIgnoreCase("no")) {
            return field.options().contains("true") ? Boolean.toString(plain.equalsIgnoreCase("yes")) : plain;
        }
        if (path.endsWith("tube")) {
            return tube(plain);
        }
        boolean list = field.allowed().startsWith("months") || field.allowed().startsWith("any of");
        if (list && plain.equalsIgnoreCase("none")) {
            return "";
        }
        if (field.leftOut().isPresent() && UNKNOWN.matcher(plain).matches()) {
            return Changes.NOT_SAID;
        }
        if (field.range().isEmpty() || plain.equals(Changes.NOT_SAID)) {
            return plain;
        }
        if (field.allowed().startsWith("months")) {
            return MonthsText.of(plain, path);
        }
        if (field.allowed().startsWith("12 values")) {
            return List.of(plain.split("[;,\\s]+")).stream()
                    .map(one -> Numeral.typed(number(one, "", path), DIGITS))
                    .collect(Collectors.joining(", "));
        }
        return path.equals(UTC_OFFSET)
                ? numberText(UTC.matcher(plain).replaceFirst("$1").replaceFirst("^$", "0"), field.unit(), path)
                : numberText(plain, field.unit(), path);
    }

    /** Whether a number was typed and nothing behind it. */
    static boolean isBareNumber(String typed) {
        return AnswerText.read(typed) instanceof AnswerText.Amount amount
                && amount.unit().isEmpty()
                && !typed.contains("%");
    }

    /**
     * A number in a unit as text that a design takes, or an hour of the day; text that is no number stays for the design to judge.
     *
     * @throws RefusedException where there is no number, or its unit does not fit
     */
    static String numberText(String typed, String unit, String path) {
        if (Shown.isClock(path)) {
            return hour(typed, path);
        }
        if (unit.equals(BearingText.UNIT)) {
            return Numeral.typed(BearingText.degrees(typed, path), DIGITS);
        }
        return unit.equals(SLOPE)
                ? Numeral.typed(slopeMmPerM(typed, path), DIGITS)
                : Numeral.typed(number(typed, unit, path), DIGITS);
    }

    private static String hour(String typed, String path) {
        return ClockText.read(typed)
                .map(clock -> Numeral.typed(clock.hours(), DIGITS))
                .orElseThrow(() -> new RefusedException(List.of(new Fault(
                        path,
                        "“" + typed.strip() + "”",
                        "a time of day",
                        "write it as 17:30, 5:30 pm or half past five in the afternoon"))));
    }

    /** A tube said as outer diameter by wall, as the table writes that; any other as it is. */
    static String tube(String typed) {
        Matcher size = OUTER_BY_WALL.matcher(typed.strip());
        return size.matches() ? point(size.group(1)) + "x" + point(size.group(2)) + size.group(3) : typed.strip();
    }

    /**
     * A slope in mm for each m, typed as that, as 1 in 50, in per cent or in inches for each foot; less than 0 where it is said to fall.
     *
     * @throws RefusedException where it is none
     */
    static double slopeMmPerM(String typed, String path) {
        return slopeMmPerM(typed, path, plain -> OptionalDouble.empty());
    }

    /**
     * The same of a piece of pipe, of which may be told too how much higher or lower its far end is: {@code 12 cm}, {@code falls 2 in}.
     *
     * @param lengthM length of the piece, m
     */
    static double slopeMmPerM(String typed, double lengthM, String path) {
        return slopeMmPerM(typed, path, plain -> riseMmPerM(plain, lengthM));
    }

    private static OptionalDouble riseMmPerM(String plain, double lengthM) {
        boolean length = AnswerText.read(plain) instanceof AnswerText.Amount amount
                && amount.unit()
                        .flatMap(unit -> UnitText.read("m").filter(unit::fits))
                        .isPresent();
        return length && lengthM > 0
                ? OptionalDouble.of(number(plain, "m", "") / lengthM * MM_PER_M)
                : OptionalDouble.empty();
    }

    private static double slopeMmPerM(String typed, String path, Function<String, OptionalDouble> rise) {
        String said = typed.strip();
        if (LEVEL.matcher(said).matches()) {
            return 0;
        }
        String fall = FALLS.matcher(said).replaceFirst("");
        boolean falls = !fall.equals(said);
        String plain = falls ? fall : CLIMBS.matcher(said).replaceFirst("");
        OptionalDouble risen = rise.apply(plain);
        double climb = risen.isPresent() ? risen.getAsDouble() : climbMmPerM(plain, path);
        return falls ? -climb : climb;
    }

    private static double climbMmPerM(String plain, String path) {
        Matcher oneIn = ONE_IN.matcher(plain);
        if (oneIn.matches()) {
            double slope =
                    Double.parseDouble(point(oneIn.group(2))) / Double.parseDouble(point(oneIn.group(3))) * MM_PER_M;
            return oneIn.group(1).isEmpty() ? slope : -slope;
        }
        Matcher inFoot = IN_PER_FT.matcher(plain);
        if (inFoot.matches()) {
            return number(inFoot.group(1), "", path) / INCHES_IN_FOOT * MM_PER_M;
        }
        return number(plain.replaceAll("(?i)\\s*mm\\s*/\\s*m$", ""), "", path, plain.contains("%") ? MM_PER_M : 1);
    }

    /**
     * A number in a unit; one typed without a unit is taken to be in it.
     *
     * @throws RefusedException where there is no number, or its unit does not fit
     */
    static double number(String typed, String unit, String path) {
        return number(typed, unit, path, 1);
    }

    private static double number(String typed, String unit, String path, double times) {
        if (unit.isEmpty() && NONE.matcher(typed.strip()).matches()) {
            return 0;
        }
        AnswerText read = AnswerText.read(MINUS.matcher(typed.strip()).replaceFirst("-"));
        if (read instanceof AnswerText.Amount amount) {
            return inUnit(amount, unit, typed, path) * times;
        }
        throw refused(path, typed, unit, ((AnswerText.NotRead) read).words());
    }

    private static double inUnit(AnswerText.Amount amount, String unit, String typed, String path) {
        Optional<WrittenUnit> wanted = UnitText.read(unit);
        if (amount.unit().isEmpty()) {
            return amount.value();
        }
        // What is asked for is that of an hour: a basket of so many pounds is so many in the hour.
        Optional<WrittenUnit> ofTheHour = UnitText.read(unit.replaceFirst("/h$", ""));
        if (unit.endsWith("/h") && ofTheHour.filter(amount.unit().get()::fits).isPresent()) {
            return amount.unit().get().to(ofTheHour.get(), amount.value());
        }
        if (wanted.isEmpty() || !amount.unit().get().fits(wanted.get())) {
            throw refused(path, typed, unit, "the unit does not fit");
        }
        return amount.unit().get().to(wanted.get(), amount.value());
    }

    private static RefusedException refused(String path, String typed, String unit, String why) {
        return new RefusedException(List.of(new Fault(path, "“" + typed.strip() + "”", wanted(unit), why)));
    }

    private static String wanted(String unit) {
        return UnitText.read(unit)
                .filter(known -> !unit.isEmpty())
                .map(known -> QuantityKind.of(known) + ", such as in " + unit)
                .orElse(unit.isEmpty() ? "a number" : "a number in " + unit);
    }

    private static String point(String number) {
        return number.replace(',', '.').toLowerCase(Locale.ROOT);
    }
}

package loftcoil.runner.show;

import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import loftcoil.runner.check.NumberWords;
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

    private static final Pattern MINUS = Pattern.compile("(?i)^(?:minus|negative)\\s+(?=\\S)");

    /** Which side of nought a measure is on, in words behind it. */
    private static final Pattern LESS = Pattern.compile(
            "(?i)^(?=.*\\p{Alnum}.*\\s)(.+?)\\s+(?:below(?: zero| the floor)?|under the floor|behind(?: it| the axle)?|aft|(?:to the )?left)$");

    private static final Pattern MORE = Pattern.compile(
            "(?i)^(?=.*\\p{Alnum}.*\\s)(.+?)\\s+(?:above zero|ahead(?: of it| of the axle)?|in front|forward|(?:to the )?right)$");

    private static final Pattern NEVER = Pattern.compile("(?i)(?:never|n/?a|not applicable|there is none)\\.?");

    /** Of these, none is nought; of a temperature or a load it is nothing said. */
    private static final List<String> NONE_IS_NOUGHT = List.of("", "mm", "cm²", "%", "bearers");

    /** Tubes of ASTM B88 as they are called over the counter: 3/4 in type M. */
    private static final String INCH_SIZE = "(\\d(?:[ -]\\d/\\d)?|\\d/\\d|\\d?[½¼¾⅜⅝])";

    private static final Pattern SIZE_TYPE = Pattern.compile(
            "(?i)^" + INCH_SIZE
                    + "\\s*(?:-?in(?:ch)?\\.?|\"|″|”)?\\s*(?:nominal |nom\\.? )?(?:copper,? )?(?:type[ -]?)?([KLM])(?: copper)?(?: tube| pipe)?$");

    private static final Pattern TYPE_SIZE =
            Pattern.compile("(?i)^(?:copper,? )?(?:type[ -]?)?([KLM])(?: copper)?,?\\s+" + INCH_SIZE
                    + "\\s*(?:-?in(?:ch)?\\.?|\"|″|”)?(?: copper)?(?: tube| pipe)?$");

    private static final Map<String, String> SIGNS = Map.of("½", "1/2", "¼", "1/4", "¾", "3/4", "⅜", "3/8", "⅝", "5/8");

    /** What laggings are called over the counter, by the names of their table. */
    private static final Map<Pattern, String> LAGGINGS = Map.of(
            Pattern.compile("(?i)(?:fib(?:er|re) ?glass|glass fib(?:er|re)|glasswool)(?: wool)?"), "glass wool",
            Pattern.compile("(?i)(?:rock|mineral|basalt)[ -]?wool|stonewool"), "stone wool",
            Pattern.compile("(?i)(?:closed[ -]cell |nitrile )?(?:rubber(?: foam)?|foam rubber)|elastomeric"),
                    "elastomeric foam",
            Pattern.compile("(?i)(?:polyethylene|polythene|PE)(?:[ -]foam)?"), "polyethylene foam",
            Pattern.compile("(?i)(?:PIR|polyiso(?:cyanurate)?)(?: foam| board)?"), "PIR foam",
            Pattern.compile("(?i)none|no|nothing|bare|not lagged|unlagged"), "none");

    /** How often something is done. */
    private static final Pattern OFTEN = Pattern.compile(
            "(?i)^(?:(once|twice|.+?)\\s*(?:times?|x|×)?\\s*)??(?:(?:an?|per|each|every|in a)\\s+|/\\s*)"
                    + "(other |second )?(day|night|week|fortnight|month|year)s?$");

    private static final Map<String, Double> DAYS =
            Map.of("day", 1.0, "night", 1.0, "week", 7.0, "fortnight", 14.0, "month", 365.0 / 12, "year", 365.0);

    private static final Map<String, String> ADVERBS = Map.of(
            "daily",
            "every day",
            "nightly",
            "every day",
            "weekly",
            "every week",
            "monthly",
            "every month",
            "fortnightly",
            "every fortnight");

    private static final Pattern PERSONS = Pattern.compile(
            "(?i)\\s+(?:of us|of them|adults?|people|persons?|grown-?ups?|kids?|child(?:ren)?|in all|altogether)$");

    /** Width and height, and how many of them. */
    private static final Pattern BY =
            Pattern.compile("(?i)\\s*(?:×|(?<=[\\d\\s\"'″′\\p{L}])x(?=[\\s\\d])|\\*|\\bby\\b|\\bof\\b)\\s*");

    private static final double MM_PER_M = 1000;

    /** How what is allowed begins where a number for each month is wanted. */
    static final String TWELVE = "12 values";

    private static final Pattern BEFORE_UNIT = Pattern.compile("(?<=\\d)\\s+(?=[°\\p{L}])");
    private static final Pattern DECIMAL_COMMAS =
            Pattern.compile("[-−]?\\d+(?:,\\d+)?[^\\d\\s,;]*(?:(?:\\s*;\\s*|\\s+)[-−]?\\d+(?:,\\d+)?[^\\d\\s,;]*)+");

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
        if (path.endsWith("lagging.material")) {
            return lagging(plain);
        }
        boolean list = field.allowed().startsWith("months") || field.allowed().startsWith("any of");
        if (list && plain.equalsIgnoreCase("none")) {
            return "";
        }
        if (field.leftOut().isPresent() && isLeftOut(field, path, plain)) {
            return Changes.NOT_SAID;
        }
        if (field.range().isEmpty() || plain.equals(Changes.NOT_SAID)) {
            return plain;
        }
        if (field.allowed().startsWith("months")) {
            return MonthsText.of(plain, path);
        }
        if (field.allowed().startsWith(TWELVE)) {
            return listed(plain).stream()
                    .map(one -> Numeral.typed(number(one, monthly(field), path), DIGITS))
                    .collect(Collectors.joining(", "));
        }
        if (field.unit().isEmpty() && !isAmount(plain) && !NONE.matcher(plain).matches()) {
            throw RefusedException.of(path, "“" + plain + "”", "a number, " + field.allowed());
        }
        return path.equals(UTC_OFFSET)
                ? numberText(UTC.matcher(plain).replaceFirst("$1").replaceFirst("^$", "0"), field.unit(), path)
                : numberText(plain, field.unit(), path);
    }

    /** The unit of a month's number; sun in a day is no unit that people write behind each. */
    private static String monthly(DesignField field) {
        return UnitText.read(field.unit()).isPresent() ? field.unit() : "";
    }

    /** Whether somebody said that there is no such thing, or that it is not known; nought where nought says it. */
    private static boolean isLeftOut(DesignField field, String path, String plain) {
        boolean nought = !Shown.isClock(path)
                && NONE_IS_NOUGHT.contains(field.unit())
                && field.range().filter(range -> range.low() <= 0).isPresent();
        return UNKNOWN.matcher(plain).matches()
                || NEVER.matcher(plain).matches()
                || (!nought && field.range().isPresent() && NONE.matcher(plain).matches());
    }

    /** Several numbers in a row, each with its unit where it has one; where commas are decimal, blanks or semicolons stand between. */
    static List<String> listed(String typed) {
        String plain = BEFORE_UNIT.matcher(typed.strip()).replaceAll("");
        return List.of(plain.split(DECIMAL_COMMAS.matcher(plain).matches() ? "[;\\s]+" : "[;,\\s]+"));
    }

    /** A number that has its sign in words, with the sign before it. */
    static String signed(String typed) {
        String plain = MINUS.matcher(typed.strip()).replaceFirst("-");
        Matcher less = LESS.matcher(plain);
        if (less.matches() && isAmount(less.group(1))) {
            return "-" + less.group(1);
        }
        Matcher more = MORE.matcher(plain);
        return more.matches() && isAmount(more.group(1)) ? more.group(1) : plain;
    }

    private static boolean isAmount(String text) {
        return AnswerText.read(text) instanceof AnswerText.Amount;
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

    /** A tube as the table writes it, where it is said by its outer diameter and wall or by its size and type; any other as it is. */
    static String tube(String typed) {
        String plain = NumberWords.inFigures(typed.strip());
        Matcher size = OUTER_BY_WALL.matcher(plain);
        if (size.matches()) {
            return point(size.group(1)) + "x" + point(size.group(2)) + size.group(3);
        }
        Matcher first = SIZE_TYPE.matcher(plain);
        if (first.matches()) {
            return inches(first.group(2), first.group(1));
        }
        Matcher last = TYPE_SIZE.matcher(plain);
        return last.matches() ? inches(last.group(1), last.group(2)) : typed.strip();
    }

    private static String inches(String type, String size) {
        String plain = size.replace(' ', '-');
        for (Map.Entry<String, String> sign : SIGNS.entrySet()) {
            plain = plain.replaceFirst("(\\d)" + sign.getKey(), "$1-" + sign.getValue())
                    .replace(sign.getKey(), sign.getValue());
        }
        return "B88 " + type.toUpperCase(Locale.ROOT) + " " + plain;
    }

    /** A lagging by the name of its table; what is none of those it is called stays. */
    static String lagging(String typed) {
        return LAGGINGS.entrySet().stream()
                .filter(known -> known.getKey().matcher(typed.strip()).matches())
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(typed.strip());
    }

    /**
     * How often in so many days: a number, or every day, twice a week, once a month.
     *
     * @param days of how many days it is asked
     * @throws RefusedException where it cannot be read
     */
    static double howOften(String typed, double days, String path) {
        String said = typed.strip().toLowerCase(Locale.ROOT);
        if (NEVER.matcher(said).matches()) {
            return 0;
        }
        Matcher often = OFTEN.matcher(ADVERBS.getOrDefault(said, said));
        if (!often.matches()) {
            return number(typed, "", path);
        }
        String times = Optional.ofNullable(often.group(1)).orElse("once");
        double number = times.equals("once") ? 1 : times.equals("twice") ? 2 : number(times, "", path);
        double period = DAYS.getOrDefault(often.group(3), 1.0) * (often.group(2) == null ? 1 : 2);
        return number * days / period;
    }

    /**
     * How many people: a number, or two adults and a child.
     *
     * @throws RefusedException where it cannot be read
     */
    static double people(String typed, String path) {
        String said = typed.strip().replaceFirst("(?i)^(?:a )?(?:family|household) of ", "");
        if (said.matches("(?i)(?:just |only )?me|myself|(?:I live )?alone")) {
            return 1;
        }
        double sum = 0;
        for (String part : said.split("\\s*(?:,|\\+|\\band\\b)\\s*", -1)) {
            sum += number(PERSONS.matcher(part).replaceFirst("").replaceFirst("(?i)^an?$", "1"), "", path);
        }
        return sum;
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
        if (NONE_IS_NOUGHT.contains(unit) && NONE.matcher(typed.strip()).matches()) {
            return 0;
        }
        Optional<Double> area = area(typed, unit);
        if (area.isPresent()) {
            return area.get() * times;
        }
        AnswerText read = AnswerText.read(signed(typed));
        if (read instanceof AnswerText.Amount amount) {
            return inUnit(amount, unit, typed, path) * times;
        }
        throw refused(path, typed, unit, ((AnswerText.NotRead) read).words());
    }

    /** An area said as width by height, each in a unit or both in the last one's, and as many of them as is said. */
    private static Optional<Double> area(String typed, String unit) {
        Optional<WrittenUnit> wanted = UnitText.read(unit);
        WrittenUnit metre = UnitText.read("m").orElseThrow();
        WrittenUnit square = UnitText.read("m²").orElseThrow();
        List<String> parts = List.of(BY.split(typed.strip()));
        if (parts.size() < 2 || wanted.filter(square::fits).isEmpty()) {
            return Optional.empty();
        }
        double product = 1;
        int lengths = 0;
        Optional<WrittenUnit> last = Optional.empty();
        for (int i = parts.size() - 1; i >= 0; i--) {
            if (!(AnswerText.read(parts.get(i)) instanceof AnswerText.Amount amount)) {
                return Optional.empty();
            }
            boolean counted = amount.unit().isEmpty() && lengths == 2;
            Optional<WrittenUnit> side = amount.unit().isPresent() || counted ? amount.unit() : last;
            if (!counted && side.filter(metre::fits).isEmpty()) {
                return Optional.empty();
            }
            product *= counted ? amount.value() : side.orElseThrow().to(metre, amount.value());
            lengths += counted ? 0 : 1;
            last = side;
        }
        return lengths == 2 ? Optional.of(square.to(wanted.orElseThrow(), product)) : Optional.empty();
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
        return new RefusedException(List.of(
                typed.isBlank()
                        ? new Fault(path, "nothing", wanted(unit), "")
                        : new Fault(path, "“" + typed.strip() + "”", wanted(unit), why)));
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

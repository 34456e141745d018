package loftcoil.runner.show;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.DesignField;
import loftcoil.engine.design.DesignFields;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.Numeral;
import loftcoil.engine.words.TapeMeasure;
import loftcoil.engine.words.Units;
import loftcoil.runner.exercise.Quantity;
import loftcoil.runner.exercise.Reckoned;

/**
 * Values of a design as the learner reads them in their units, and what they type as a design takes it. Designs stay metric; only
 * what is shown and typed is not.
 *
 * @param units whose units
 */
public record Shown(Units units) {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");
    private static final Pattern SUCH_AS_IN = Pattern.compile("such as in (\\S+)$");
    private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d),(?=\\d{3}(?!\\d))");
    private static final String BETWEEN = ", ";

    /** What a number in that metric unit measures; empty for a plain number and for units that are the same everywhere. */
    private static Optional<MeasureKind> kind(String path, String unit) {
        Optional<MeasureKind> clock =
                DesignFields.at(path).map(DesignField::kind).filter(MeasureKind.CLOCK_H::equals);
        return clock.isPresent() ? clock : MeasureKind.ofUnit(unit);
    }

    /** Whether it is an hour of the day. */
    static boolean isClock(String path) {
        return kind(path, "").isPresent();
    }

    /**
     * A value with its unit, such as {@code 7 ft 2-1/2 in} for 2.2 m.
     *
     * @param path path of its field or name of its change
     * @param text as the design has it
     * @param unit its metric unit; empty where there is none
     */
    public String value(String path, String text, String unit) {
        Optional<MeasureKind> kind = kind(path, unit);
        if (kind.isEmpty() || !isNumbers(text)) {
            return unit.isEmpty() || !isNumbers(text) ? option(text) : Numeral.withUnit(text, unit);
        }
        if (metricAsIs(kind.get())) {
            return Numeral.withUnit(text, unit);
        }
        if (!text.contains(BETWEEN)) {
            return units.of(measure(kind.get(), text));
        }
        String numbers = List.of(text.split(BETWEEN)).stream()
                .map(one -> units.number(measure(kind.get(), one)))
                .collect(Collectors.joining(BETWEEN));
        String after = units.unit(kind.get());
        return after.isEmpty() ? numbers : numbers + " " + after;
    }

    /**
     * An answer in the units of the reader, where those are not the ones that are asked for.
     *
     * @param asked what is asked
     * @param metric the answer in the unit that is asked for; only taken where it is said
     */
    public Optional<String> besides(Reckoned asked, DoubleSupplier metric) {
        if (units == Units.METRIC) {
            return Optional.empty();
        }
        String unit = asked.reference().unit();
        boolean difference =
                asked instanceof Quantity quantity && quantity.temperature() == Quantity.Temperature.DIFFERENCE;
        return (difference ? Optional.of(MeasureKind.TEMP_DIFF_K) : MeasureKind.ofUnit(unit))
                .filter(kind -> !units.typedUnit(kind).equals(unit))
                .map(kind -> units.of(new Measure(metric.getAsDouble(), kind)
                        .finer(asked.about().before() ? 0 : 1)));
    }

    /**
     * The same of a length that is read off a tape and may be typed back: under 1 m, in metric units, in cm or mm with all its digits.
     */
    String taped(String path, String text, String unit) {
        boolean tape = units == Units.METRIC
                && kind(path, unit).filter(MeasureKind.LENGTH_M::equals).isPresent()
                && isNumbers(text);
        return tape ? TapeMeasure.typed(new BigDecimal(text)) : value(path, text, unit);
    }

    /** The same without a unit that stands beside the field; feet and inches keep theirs. */
    String number(String path, String text, String unit) {
        if (isNumbers(text)
                && kind(path, unit).filter(kind -> !metricAsIs(kind)).isEmpty()) {
            return text;
        }
        String whole = value(path, text, unit);
        String after = " " + unit(path, unit);
        return whole.endsWith(after) && isNumbers(text) ? whole.substring(0, whole.length() - after.length()) : whole;
    }

    /** The unit that stands beside a field: that of a number typed without one. */
    public String unit(String path, String unit) {
        Optional<MeasureKind> kind = kind(path, unit);
        return kind.isEmpty() || metricAsIs(kind.get()) ? unit : units.typedUnit(kind.get());
    }

    /**
     * What was typed, as text that a design takes: a number in its metric unit.
     *
     * @param path path of its field or name of its change
     * @param typed as typed
     * @param unit its metric unit
     * @throws RefusedException where no number or no fitting unit can be made out
     */
    String typed(String path, String typed, String unit) {
        return Typed.numberText(withUnit(path, typed, unit), unit, path);
    }

    /** What was typed, with the unit that a number without one is in. */
    String withUnit(String path, String typed, String unit) {
        String plain = unit.isEmpty() ? typed.strip() : Typed.signed(grouped(typed));
        String taken = unit(path, unit);
        return !taken.equals(unit) && !taken.isEmpty() && Typed.isBareNumber(plain) ? plain + " " + taken : plain;
    }

    /** Where thousands are set apart by commas and decimals by points, a comma before three figures is no doubt. */
    private String grouped(String typed) {
        return units == Units.US ? THOUSANDS.matcher(typed).replaceAll("") : typed;
    }

    /** An option as it is shown. */
    String option(String option) {
        return units.said(option);
    }

    /** Options as they are shown. */
    public List<String> options(List<String> options) {
        return options.stream().map(this::option).toList();
    }

    /** The option that is shown so; what is none stays as it is. */
    String chosen(List<String> options, String typed) {
        return options.stream()
                .filter(option -> option(option).equalsIgnoreCase(typed.strip()))
                .findFirst()
                .orElse(typed);
    }

    /** A refusal. */
    public RefusedException said(RefusedException refused) {
        return units == Units.METRIC
                ? refused
                : new RefusedException(refused.faults().stream().map(this::said).toList());
    }

    private Fault said(Fault fault) {
        Optional<String> unit =
                DesignFields.at(fault.path()).map(DesignField::unit).filter(any -> !any.isEmpty());
        String given = unit.filter(any -> isNumbers(fault.given()))
                .map(any -> value(fault.path(), fault.given(), any))
                .orElse(units.said(fault.given()));
        return new Fault(fault.path(), given, units.said(inTheirs(fault.allowed())), units.said(fault.why()));
    }

    /** What is wanted, with the unit that a reader of these units would write. */
    private String inTheirs(String allowed) {
        Matcher such = SUCH_AS_IN.matcher(allowed);
        return such.find()
                ? such.replaceFirst(Matcher.quoteReplacement("such as in "
                        + MeasureKind.ofUnit(such.group(1))
                                .map(units::typedUnit)
                                .orElse(such.group(1))))
                : allowed;
    }

    /** What a deed gives; where it is refused, that is told in these units. */
    <T> T telling(Supplier<T> deed) {
        try {
            return deed.get();
        } catch (RefusedException refused) {
            throw said(refused);
        }
    }

    /** Faults, a line each. */
    List<String> lines(List<Fault> faults) {
        return faults.stream()
                .map(fault -> (units == Units.METRIC ? fault : said(fault)).line())
                .toList();
    }

    /**
     * What was sent back as it was shown, as it stands: no value moves by the rounding of what is shown.
     *
     * @param sent by name
     * @param shown what was shown, by name
     * @param exact what stands, by name
     */
    static Map<String, String> unmoved(Map<String, String> sent, Map<String, String> shown, Map<String, String> exact) {
        Map<String, String> back = new HashMap<>(sent);
        back.replaceAll((name, text) -> text.equals(shown.get(name)) ? exact.getOrDefault(name, text) : text);
        return back;
    }

    private boolean metricAsIs(MeasureKind kind) {
        return units == Units.METRIC && kind != MeasureKind.CLOCK_H;
    }

    private static boolean isNumbers(String text) {
        return !text.equals(Changes.NOT_SAID)
                && !text.isEmpty()
                && List.of(text.split(BETWEEN)).stream()
                        .allMatch(one -> NUMBER.matcher(one).matches());
    }

    /** To a sixteenth of an inch, and else with a digit more than a figure has: somebody typed it. */
    private static Measure measure(MeasureKind kind, String text) {
        Measure measure = new Measure(Double.parseDouble(text), kind);
        int said = text.contains(".") ? text.length() - text.indexOf('.') - 1 : 0;
        return switch (kind) {
            case LENGTH_M -> measure.finer(1);
            case SMALL_LENGTH_MM, CLOCK_H -> measure;
            default -> measure.finer(said > 0 ? 1 : 0);
        };
    }
}

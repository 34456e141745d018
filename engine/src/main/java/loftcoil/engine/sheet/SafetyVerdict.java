package loftcoil.engine.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import loftcoil.engine.caution.Ask;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.CautionFacts;
import loftcoil.engine.caution.CautionReport;
import loftcoil.engine.caution.Cautions;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.ColdNight;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Outdoors;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.FlowSearch;
import loftcoil.engine.run.YearSpread;
import loftcoil.engine.start.Starts;
import loftcoil.engine.watch.Watch;

/**
 * What a design's dangers come to: the one judgement that every face shows. It looks at the loop in each of
 * {@link JudgedStates}, at the year and at fires lit after rests. The states take microseconds; year and starts take about a second
 * and may be left for later, which the verdict then says.
 *
 * @param report what was found, and what would have to be known to tell
 * @param yearOpen whether the year belongs to it and has not been judged yet
 * @param startsOpen whether starts belong to it and have not been judged yet
 */
public record SafetyVerdict(CautionReport report, boolean yearOpen, boolean startsOpen) {

    /** Code of a design in which nothing was found. */
    public static final String CLEAR = "clear";

    /** How much hotter than in a rough year the tank may come to be in a fine one, K. */
    private static final double ROUGHLY_K = 3;

    /** How many cautions lead. */
    public static final int LEADING = 3;

    /**
     * Judges all but year and starts.
     *
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed
     */
    public static SafetyVerdict quick(Design design) {
        return judged(design, Optional.empty(), Optional.empty());
    }

    /**
     * Judges everything.
     *
     * @throws loftcoil.engine.fault.RefusedException where the design or its year cannot be computed
     */
    public static SafetyVerdict whole(Design design) {
        Optional<YearSpread> year = year(design);
        return judged(design, year, starts(design, year));
    }

    /**
     * Judges all but the starts, the year as {@link #whole} does.
     *
     * @throws loftcoil.engine.fault.RefusedException where the design or its year cannot be computed
     */
    public static SafetyVerdict withoutStarts(Design design) {
        return judged(design, year(design), Optional.empty());
    }

    /**
     * Judges all but the year: the starts on the tanks that every design is started on.
     *
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed
     */
    public static SafetyVerdict withoutYear(Design design) {
        return judged(design, Optional.empty(), starts(design, Optional.empty()));
    }

    /**
     * The verdict with a year and starts that are known already, or without them.
     *
     * @param design the design
     * @param year its year, or that of a design alike in all that a year looks at; empty where it is left for later
     * @param starts its starts likewise
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed
     */
    public static SafetyVerdict judged(Design design, Optional<YearSpread> year, Optional<Starts> starts) {
        Circuit circuit = design.circuit(JudgedStates.COOL_C);
        FlowSearch lit = circuit.search();
        JudgedStates states =
                JudgedStates.of(design, circuit, HeatSpread.of(design, circuit, lit), CautionInputs.hottestTankC(year));
        return of(design, circuit, lit, states, year, starts);
    }

    /** The verdict from figures that are known already. */
    static SafetyVerdict of(
            Design design,
            Circuit circuit,
            FlowSearch lit,
            JudgedStates states,
            Optional<YearSpread> year,
            Optional<Starts> starts) {
        CautionFacts steady = CautionInputs.of(design, circuit, lit, states);
        CautionFacts facts = CautionInputs.withStarts(CautionInputs.withYear(steady, year), starts);
        boolean heated = circuit.setting().firing().heatW() > 0;
        return new SafetyVerdict(Cautions.of(facts), year.isEmpty() && hasYear(design), starts.isEmpty() && heated);
    }

    /**
     * The starts of a design, the hottest tank of its year among them, pipes outdoors as cold as on the coldest night of the months of fire.
     *
     * @param design a design
     * @param year its year; empty where it is not known
     * @return empty where the coil takes no heat
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed
     */
    public static Optional<Starts> starts(Design design, Optional<YearSpread> year) {
        return starts(design, year, Watch.NONE);
    }

    static Optional<Starts> starts(Design design, Optional<YearSpread> year, Watch watch) {
        return Starts.of(coldest(design), CautionInputs.hottestTankC(year), watch);
    }

    /**
     * As {@link #starts}, but no more of them than it takes to see that one fails: for a search that looks at many designs.
     *
     * @param coarse whether they are marched in longer cells and steps, for a first guess; otherwise on a tank that is hotter by what a year
     *     marched roughly may have missed
     */
    public static Optional<Starts> startsUntilOneFails(Design design, Optional<YearSpread> year, boolean coarse) {
        OptionalDouble roughC = CautionInputs.hottestTankC(year);
        OptionalDouble hottestC =
                coarse || roughC.isEmpty() ? roughC : OptionalDouble.of(roughC.getAsDouble() + ROUGHLY_K);
        return Starts.untilOneFails(coldest(design), hottestC, coarse);
    }

    private static Design coldest(Design design) {
        return Outdoors.at(design, ColdNight.of(design).litNightC());
    }

    /**
     * The year of a design, marched.
     *
     * @return empty where nothing warms the tank in the course of it
     * @throws loftcoil.engine.fault.RefusedException where the design or its year cannot be computed
     */
    public static Optional<YearSpread> year(Design design) {
        return year(design, Watch.NONE);
    }

    static Optional<YearSpread> year(Design design, Watch watch) {
        return hasYear(design) ? Optional.of(YearSpread.of(design, watch)) : Optional.empty();
    }

    /** As {@link #year}, but in long steps and thick layers: for a search that looks at many designs. */
    public static Optional<YearSpread> roughYear(Design design) {
        return hasYear(design) ? Optional.of(YearSpread.rough(design)) : Optional.empty();
    }

    private static boolean hasYear(Design design) {
        return design.fire().isPresent() || design.window().isPresent();
    }

    /** What can hurt somebody, by {@link Caution#GRAVEST_FIRST}; empty where nothing was found. */
    public List<Caution> cautions() {
        return report.cautions();
    }

    /** The gravest, with which every face begins: {@link #LEADING} or, where there are no more, all. */
    public List<Caution> leading() {
        return cautions().subList(0, Math.min(LEADING, cautions().size()));
    }

    /** Those that follow after a heading or in a fold. */
    public List<Caution> following() {
        return cautions().subList(leading().size(), cautions().size());
    }

    /** What those that follow are called together, such as {@code 3 more: 1 danger, 2 cautions}; empty where none do. */
    public String followingWords() {
        String each = Arrays.stream(Severity.values())
                .map(severity -> Map.entry(
                        severity.label(),
                        following().stream()
                                .filter(caution -> caution.severity() == severity)
                                .count()))
                .filter(counted -> counted.getValue() > 0)
                .map(counted -> counted.getValue() + " " + counted.getKey().toLowerCase(Locale.ROOT)
                        + (counted.getValue() == 1 ? "" : "s"))
                .collect(Collectors.joining(", "));
        return following().isEmpty() ? "" : following().size() + " more: " + each;
    }

    /** What the design does not say and that decides over a danger. */
    public List<Ask> asks() {
        return report.asks();
    }

    /** What has not been judged yet, in a sentence; empty where all has. */
    public String open() {
        if (startsOpen) {
            return yearOpen
                    ? "How it starts and how its year goes are not judged yet."
                    : "How it starts is not judged yet.";
        }
        return yearOpen ? "The year is not judged yet." : "";
    }

    /** The gravest of what was found; empty where nothing was. */
    public Optional<Severity> gravest() {
        return cautions().stream().map(Caution::severity).min(Severity::compareTo);
    }

    /** Code of the gravest, or {@link #CLEAR}. */
    public String level() {
        return gravest().map(Severity::code).orElse(CLEAR);
    }

    /** Whether a danger was found: no fire may be lit under it as it is. */
    public boolean dangerous() {
        return gravest().filter(Severity.DANGER::equals).isPresent();
    }

    /** Those of one severity, in the order of the rules. */
    public List<Caution> of(Severity severity) {
        return cautions().stream()
                .filter(caution -> caution.severity() == severity)
                .toList();
    }
}

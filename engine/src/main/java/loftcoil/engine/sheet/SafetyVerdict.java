package loftcoil.engine.sheet;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.caution.Ask;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.CautionReport;
import loftcoil.engine.caution.Cautions;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Design;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.FlowSearch;
import loftcoil.engine.run.YearSpread;

/**
 * What a design's dangers come to: the one judgement that every face shows. It looks at the loop in each of
 * {@link JudgedStates} and at the year. The states take microseconds; the year takes about a second and may be left for later,
 * which the verdict then says.
 *
 * @param report what was found, and what would have to be known to tell
 * @param yearOpen whether the year belongs to it and has not been judged yet
 */
public record SafetyVerdict(CautionReport report, boolean yearOpen) {

    /** Code of a design in which nothing was found. */
    public static final String CLEAR = "clear";

    /**
     * Judges all but the year.
     *
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed
     */
    public static SafetyVerdict quick(Design design) {
        return judged(design, Optional.empty());
    }

    /**
     * Judges everything.
     *
     * @throws loftcoil.engine.fault.RefusedException where the design or its year cannot be computed
     */
    public static SafetyVerdict whole(Design design) {
        return judged(design, year(design));
    }

    /** The verdict with a year that is known already, or without one. */
    static SafetyVerdict judged(Design design, Optional<YearSpread> year) {
        Circuit circuit = design.circuit(JudgedStates.COOL_C);
        FlowSearch lit = circuit.search();
        return of(design, circuit, lit, HeatSpread.of(design, circuit, lit), year);
    }

    /** The verdict from figures that are known already. */
    static SafetyVerdict of(
            Design design, Circuit circuit, FlowSearch lit, Optional<HeatSpread> spread, Optional<YearSpread> year) {
        CautionReport found = Cautions.of(CautionInputs.withYear(CautionInputs.of(design, circuit, lit, spread), year));
        return new SafetyVerdict(found, year.isEmpty() && hasYear(design));
    }

    /** The year of a design, marched; empty where nothing warms the tank in the course of it. */
    static Optional<YearSpread> year(Design design) {
        return hasYear(design) ? Optional.of(YearSpread.of(design)) : Optional.empty();
    }

    private static boolean hasYear(Design design) {
        return design.fire().isPresent() || design.window().isPresent();
    }

    /** What can hurt somebody; empty where nothing was found. */
    public List<Caution> cautions() {
        return report.cautions();
    }

    /** What the design does not say and that decides over a danger. */
    public List<Ask> asks() {
        return report.asks();
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

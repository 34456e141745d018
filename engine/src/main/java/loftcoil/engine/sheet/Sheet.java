package loftcoil.engine.sheet;

import java.util.List;
import loftcoil.engine.caution.Ask;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.CautionFacts;
import loftcoil.engine.caution.CautionReport;
import loftcoil.engine.caution.Cautions;
import loftcoil.engine.design.Design;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.FlowSearch;

/**
 * Every figure of a design that can be computed so far.
 *
 * @param design the design
 * @param loop figures of the loop
 * @param tank figures of the tank
 * @param report what can hurt somebody, and what would have to be known to tell
 */
public record Sheet(Design design, LoopFigures loop, TankFigures tank, CautionReport report) {

    /** Tank temperature where none is asked for, °C. */
    public static final double USUAL_TANK_C = 40;

    /** What can hurt somebody; empty where nothing was found. */
    public List<Caution> cautions() {
        return report.cautions();
    }

    /** What the design does not say and that decides over a danger. */
    public List<Ask> asks() {
        return report.asks();
    }

    /**
     * Computes a design.
     *
     * @param design the design
     * @param tankC temperature of the whole tank, °C; 0 to its boiling point
     * @throws loftcoil.engine.fault.RefusedException where the design or the temperature cannot be computed
     */
    public static Sheet of(Design design, double tankC) {
        Circuit circuit = design.circuit(tankC);
        FlowSearch lit = circuit.search();
        return new Sheet(
                design,
                LoopFigures.of(design, lit, tankC),
                TankFigures.of(design.tank()),
                Cautions.of(CautionFacts.steady(design, circuit, lit)));
    }

    /** Computes a design with the tank at {@link #USUAL_TANK_C}. */
    public static Sheet of(Design design) {
        return of(design, USUAL_TANK_C);
    }
}

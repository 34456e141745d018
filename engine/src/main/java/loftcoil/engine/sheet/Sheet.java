package loftcoil.engine.sheet;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.caution.Ask;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Grounds;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.FlowSearch;
import loftcoil.engine.run.YearSpread;
import loftcoil.engine.start.Starts;
import loftcoil.engine.watch.Watch;

/**
 * Every figure of a design. Year and starts take a second and are there only where the whole sheet was asked for.
 *
 * @param design the design
 * @param loop figures of the loop
 * @param tank figures of the tank
 * @param spread the loop with the least and the most heat, where the heat is worked out from the fire
 * @param states the loop in every state in which it is judged
 * @param coil the metal of the coil; empty where it takes no heat or nothing flows
 * @param scale lime in the coil; empty where nobody said how hard the water is or none settles
 * @param flue what the coil leaves for the flue; empty where no fire is described or the coil takes no heat
 * @param taps each tap alone open, the water as warm as the tank
 * @param window the panes; empty where there are none
 * @param year a year marched; empty where it was not asked for, or there is neither fire nor window
 * @param starts the fire lit after rests; empty where that was not asked for or the coil takes no heat
 * @param verdict what can hurt somebody, and what would have to be known to tell; judged with the tank at the asked temperature, or at
 *     {@link #USUAL_TANK_C} where a cooler one was asked for, so that no sheet is milder than another
 */
public record Sheet(
        Design design,
        LoopFigures loop,
        TankFigures tank,
        Optional<HeatSpread> spread,
        JudgedStates states,
        Optional<CoilFigures> coil,
        Optional<ScaleFigures> scale,
        Optional<FireFigures> flue,
        List<TapFigures> taps,
        Optional<WindowFigures> window,
        Optional<YearSpread> year,
        Optional<Starts> starts,
        SafetyVerdict verdict) {

    /** Tank temperature where none is asked for, °C. */
    public static final double USUAL_TANK_C = 40;

    /** Keeps a copy of the taps. */
    public Sheet {
        taps = List.copyOf(taps);
    }

    /** What can hurt somebody; empty where nothing was found. */
    public List<Caution> cautions() {
        return verdict.cautions();
    }

    /**
     * Whether the design raises a caution of that code.
     *
     * @param code such as {@code LC-VENT-LOW}; one that no rule knows is never raised
     */
    public boolean raises(String code) {
        return cautions().stream().anyMatch(caution -> caution.code().equals(code));
    }

    /** What the design does not say and that decides over a danger. */
    public List<Ask> asks() {
        return verdict.asks();
    }

    /** How many of the values that figures and verdict rest on are yours, assumed and borrowed. */
    public Grounds grounds() {
        return Grounds.of(design);
    }

    /** The weighed charge of the first fire; empty where no fire heats the coil. */
    public Optional<FirstCharge> firstCharge() {
        return loop.heatKW() > 0 ? Optional.of(FirstCharge.of(design)) : Optional.empty();
    }

    /**
     * Computes a design without its year and starts.
     *
     * @param design the design
     * @param tankC temperature of the whole tank, °C; 0 to its boiling point
     * @throws loftcoil.engine.fault.RefusedException where the design or the temperature cannot be computed
     */
    public static Sheet of(Design design, double tankC) {
        return made(design, tankC, Optional.empty(), Optional.empty());
    }

    /**
     * Computes a design, marches its year and starts it.
     *
     * @param design the design
     * @param tankC temperature of the whole tank for the figures of loop and taps, °C; 0 to its boiling point
     * @throws loftcoil.engine.fault.RefusedException where the design or the temperature cannot be computed, or a month has
     *     more sun than its place can have
     */
    public static Sheet whole(Design design, double tankC) {
        return whole(design, tankC, Watch.NONE);
    }

    /**
     * The same, watched.
     *
     * @throws loftcoil.engine.fault.RefusedException as {@link #whole(Design, double)}
     * @throws Watch.StoppedException where the watch ends it
     */
    public static Sheet whole(Design design, double tankC, Watch watch) {
        Optional<YearSpread> year = SafetyVerdict.year(design, watch);
        Optional<Starts> starts = SafetyVerdict.starts(design, year, watch);
        watch.pass(Watch.Stage.SHEET, 0, 1);
        return made(design, tankC, year, starts);
    }

    private static Sheet made(Design design, double tankC, Optional<YearSpread> year, Optional<Starts> starts) {
        Circuit circuit = design.circuit(tankC);
        FlowSearch lit = circuit.search();
        Optional<HeatSpread> spread = HeatSpread.of(design, circuit, lit);
        JudgedStates states = JudgedStates.of(design, circuit, spread, CautionInputs.hottestTankC(year));
        return new Sheet(
                design,
                LoopFigures.of(design, circuit, lit),
                TankFigures.of(design),
                spread,
                states,
                CoilFigures.of(design, circuit, lit),
                ScaleFigures.of(design, tankC),
                FireFigures.of(design, circuit, lit),
                TapFigures.of(design, tankC),
                design.window().map(window -> WindowFigures.of(design, window)),
                year,
                starts,
                tankC < USUAL_TANK_C
                        ? SafetyVerdict.judged(design, year, starts)
                        : SafetyVerdict.of(design, circuit, lit, states, year, starts));
    }

    /** Computes a design with the tank at {@link #USUAL_TANK_C}. */
    public static Sheet of(Design design) {
        return of(design, USUAL_TANK_C);
    }
}

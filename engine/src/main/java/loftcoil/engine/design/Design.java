package loftcoil.engine.design;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loftcoil.engine.fire.CoilInFire;
import loftcoil.engine.fire.FireSpread;
import loftcoil.engine.fire.LowMidHigh;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.supply.GravitySupply;

/**
 * A whole design. Levels are metres above the finished floor. A design that came from {@link DesignJson#read},
 * {@link Example}, {@link Changes} or a {@code with} method has been checked; one made with the constructor is checked
 * when {@link #checked} or a {@code with} method is called on it, or its circuit is asked for.
 *
 * @param name what the builder calls it
 * @param site where it stands
 * @param tank the tank
 * @param coil the coil in the fire
 * @param fire the fire; empty where it is not described
 * @param coldLegs from the tank's cold port to the coil's inlet, at least one
 * @param hotLegs from the coil's outlet to the tank's return port, at least one
 * @param window the panes; empty where there are none
 * @param taps the taps; may be none
 * @param use what is drawn each day; may be none
 * @param safety what is said about the things that can hurt somebody; empty where nothing is
 * @param notes free text by the path of the object it stands in ({@code ""} for the whole design)
 */
public record Design(
        String name,
        Site site,
        Tank tank,
        Coil coil,
        Optional<Fire> fire,
        List<Leg> coldLegs,
        List<Leg> hotLegs,
        Optional<Window> window,
        List<Tap> taps,
        List<Use> use,
        Optional<Safety> safety,
        Map<String, String> notes)
        implements WithTank, WithLoop, WithFire, WithWindow, WithTaps, WithSafety {

    private static final double W_PER_KW = 1000;

    /** Keeps copies of the lists. */
    public Design {
        coldLegs = List.copyOf(coldLegs);
        hotLegs = List.copyOf(hotLegs);
        taps = List.copyOf(taps);
        use = List.copyOf(use);
        notes = Collections.unmodifiableMap(new TreeMap<>(notes));
    }

    /**
     * This design, if it can be computed.
     *
     * @throws loftcoil.engine.fault.RefusedException with every fault in it
     */
    public Design checked() {
        DesignFaults.refuse(this);
        return this;
    }

    /**
     * The loop with the fire lit.
     *
     * @param tankC temperature of the whole tank, °C; 0 to its boiling point
     * @throws loftcoil.engine.fault.RefusedException where the design or the temperature cannot be computed
     */
    public Circuit circuit(double tankC) {
        return LoopMaker.lit(checked(), tankC);
    }

    /**
     * The loop with the fire out: the coil is a bare tube at room temperature, each leg has its surroundings of then.
     *
     * @param tankC temperature of the whole tank, °C; 0 to its boiling point
     * @throws loftcoil.engine.fault.RefusedException where the design or the temperature cannot be computed
     */
    public Circuit circuitFireOut(double tankC) {
        return LoopMaker.fireOut(checked(), tankC);
    }

    /** The fire with the coil in it, a common heater where the design does not say; empty where there is no fire. */
    public Optional<CoilInFire> coilInFire() {
        return fire.map(lit -> FireMaker.coilInFire(this, lit));
    }

    /** Heat of the coil: as stated where it is stated, else the best estimate from the fire. */
    public CoilHeating coilHeating() {
        if (coil.heatKW().isPresent()) {
            return CoilHeating.stated(coil.heatKW().getAsDouble() * W_PER_KW);
        }
        return coilInFire().map(FireMaker::heating).orElse(CoilHeating.stated(0));
    }

    /**
     * Heat of the coil with its spread, W: known where it is stated, else what the fire may give at least, best and most.
     *
     * @param flowKgPerS mass flow through the coil, kg/s
     * @param inletC temperature of the water at the coil's inlet, °C
     */
    public LowMidHigh coilHeatW(double flowKgPerS, double inletC) {
        if (coil.heatKW().isPresent()) {
            return LowMidHigh.known(coil.heatKW().getAsDouble() * W_PER_KW);
        }
        return coilInFire()
                .map(lit -> FireSpread.coilW(lit, FireMaker.water(flowKgPerS, inletC)))
                .orElse(LowMidHigh.known(0));
    }

    /**
     * The pipe from the full tank to one of the taps, that tap alone open.
     *
     * @param tap one of {@link #taps}
     * @param waterC temperature of the water, °C; 0 to 110
     */
    public GravitySupply supply(Tap tap, double waterC) {
        return SupplyMaker.of(this, tap, waterC);
    }

    /** The same design with other cold and hot legs. */
    public Design withLegs(List<Leg> cold, List<Leg> hot) {
        return with(tank, coil, cold, hot);
    }

    /** The same design with another tank; it must fit the legs. */
    public Design withTank(Tank newTank) {
        return with(newTank, coil, coldLegs, hotLegs);
    }

    /** The same design with another coil; it must fit the legs. */
    public Design withCoil(Coil newCoil) {
        return with(tank, newCoil, coldLegs, hotLegs);
    }

    /** The same design with other hot legs, from the coil's outlet to the tank's return port; their rises must close. */
    public Design withHotLegs(List<Leg> newHotLegs) {
        return with(tank, coil, coldLegs, newHotLegs);
    }

    /** The same design with this fire. */
    public Design withFire(Fire newFire) {
        return withCoilAndFire(coil, newFire);
    }

    /** The same design with other panes. */
    public Design withWindow(Window newWindow) {
        return new Design(
                        name,
                        site,
                        tank,
                        coil,
                        fire,
                        coldLegs,
                        hotLegs,
                        Optional.of(newWindow),
                        taps,
                        use,
                        safety,
                        notes)
                .checked();
    }

    /** The same design with these taps; every draw must still name one of them. */
    public Design withTaps(List<Tap> newTaps) {
        return new Design(name, site, tank, coil, fire, coldLegs, hotLegs, window, newTaps, use, safety, notes)
                .checked();
    }

    /** The same design with these draws; every one must name a tap. */
    public Design withUse(List<Use> newUse) {
        return new Design(name, site, tank, coil, fire, coldLegs, hotLegs, window, taps, newUse, safety, notes)
                .checked();
    }

    /** The same design with this said on safety. */
    public Design withSafety(Safety newSafety) {
        return new Design(
                        name,
                        site,
                        tank,
                        coil,
                        fire,
                        coldLegs,
                        hotLegs,
                        window,
                        taps,
                        use,
                        Optional.of(newSafety),
                        notes)
                .checked();
    }

    /** The same design at this altitude, m. */
    public Design withAltitudeM(double altitudeM) {
        return new Design(
                        name,
                        site.withAltitudeM(altitudeM),
                        tank,
                        coil,
                        fire,
                        coldLegs,
                        hotLegs,
                        window,
                        taps,
                        use,
                        safety,
                        notes)
                .checked();
    }

    Design withCoilAndFire(Coil newCoil, Fire newFire) {
        return new Design(
                        name,
                        site,
                        tank,
                        newCoil,
                        Optional.of(newFire),
                        coldLegs,
                        hotLegs,
                        window,
                        taps,
                        use,
                        safety,
                        notes)
                .checked();
    }

    /** Tank, coil and legs at once, so that the loop is closed when it is checked. */
    Design with(Tank newTank, Coil newCoil, List<Leg> cold, List<Leg> hot) {
        return new Design(name, site, newTank, newCoil, fire, cold, hot, window, taps, use, safety, notes).checked();
    }
}

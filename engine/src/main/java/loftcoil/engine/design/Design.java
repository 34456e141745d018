package loftcoil.engine.design;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loftcoil.engine.fire.CoilInFire;
import loftcoil.engine.fire.FireCoil;
import loftcoil.engine.fire.FireSpread;
import loftcoil.engine.fire.LowMidHigh;
import loftcoil.engine.fire.WaterFlow;
import loftcoil.engine.gas.Atmosphere;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.sun.Glazing;
import loftcoil.engine.sun.HottestPanes;
import loftcoil.engine.sun.WindowLoss;
import loftcoil.engine.supply.GravitySupply;
import loftcoil.engine.supply.TapFlow;
import loftcoil.engine.tank.CoatedTank;
import loftcoil.engine.tank.SeenFace;

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
 * @param trunk the pipe that several of them share; empty where each has its own from the tank
 * @param use what is drawn each day; may be none
 * @param safety what is said about the things that can hurt somebody; empty where nothing is
 * @param notes free text by the path of the object it stands in ({@code ""} for the whole design)
 * @param origins where values are from, by the path of their field or part; what is not named stands as goes without saying:
 *     what stands in the design is yours, what a default fills is assumed
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
        Optional<Trunk> trunk,
        List<Use> use,
        Optional<Safety> safety,
        Map<String, String> notes,
        Map<String, Origin> origins) {

    private static final double W_PER_KW = 1000;

    /** Keeps copies of the lists. */
    public Design {
        coldLegs = List.copyOf(coldLegs);
        hotLegs = List.copyOf(hotLegs);
        taps = List.copyOf(taps);
        use = List.copyOf(use);
        notes = Collections.unmodifiableMap(new TreeMap<>(notes));
        origins = Collections.unmodifiableMap(new TreeMap<>(origins));
    }

    /** A design without a trunk, of which nothing is said on where its values are from. */
    public Design(
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
            Map<String, String> notes) {
        this(
                name,
                site,
                tank,
                coil,
                fire,
                coldLegs,
                hotLegs,
                window,
                taps,
                Optional.empty(),
                use,
                safety,
                notes,
                Map.of());
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

    /** What the panes look at of the tank; empty where there are no panes. */
    public Optional<SeenFace> seenFace() {
        return window.map(panes -> tank.shape().seenFrom(panes.tiltDeg()));
    }

    /** The panes before the tank; empty where there are none. */
    public Optional<Glazing> glazing() {
        return window.map(Window::glazing);
    }

    /**
     * The panes with the tank at a temperature and the air as cold as on the coldest night, or where nobody said that, as in the
     * coldest month; empty where there are no panes.
     *
     * @param tankC temperature of the tank, °C; 0 to 110
     */
    public Optional<HottestPanes> hottestPanes(double tankC) {
        double coldestMonthC = site.monthly().meanAirC().stream()
                .mapToDouble(Double::doubleValue)
                .min()
                .orElseThrow();
        double airC = Math.max(WindowLoss.AIR.low(), site.coldestNightC().orElse(coldestMonthC));
        double pressurePa = Atmosphere.pressurePa(site.altitudeM());
        return glazing().map(panes -> HottestPanes.of(panes, pressurePa, tankC, airC));
    }

    /** The tank in its coat, bare where the panes look at it. */
    public CoatedTank coatedTank() {
        return window.map(panes -> tank.coated().behindPanes(tank.shape().seenFrom(panes.tiltDeg()), panes.areaM2()))
                .orElseGet(tank::coated);
    }

    /** Area of panes whose sun reaches the tank, m²; 0 where there are none. */
    public double creditedM2() {
        return window.map(panes -> tank.shape().seenFrom(panes.tiltDeg()).creditedM2(panes.areaM2(), panes.reflected()))
                .orElse(0.0);
    }

    /** The fire with the coil in it, a common heater where the design does not say; empty where there is no fire. */
    public Optional<CoilInFire> coilInFire() {
        return fire.map(lit -> FireMaker.coilInFire(this, lit));
    }

    /** The coil as it stands in a fire, with common soot where the design does not say. */
    public FireCoil fireCoil() {
        return FireMaker.coil(this);
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
                .map(lit -> FireSpread.coilW(lit, WaterFlow.within(flowKgPerS, inletC)))
                .orElse(LowMidHigh.known(0));
    }

    /**
     * The pipe from the full tank to one of the taps, the trunk with it where the tap hangs on it, that tap alone open.
     *
     * @param tap one of {@link #taps}
     * @param waterC temperature of the water, °C; 0 to 110
     */
    public GravitySupply supply(Tap tap, double waterC) {
        return SupplyMaker.of(this, tap, waterC);
    }

    /**
     * All taps fully open at once, the tank full: those on the trunk share what it carries, a tap on a pipe of its own runs as
     * if it were alone.
     *
     * @param waterC temperature of the water, °C; 0 to 110
     * @return one flow for each of {@link #taps}, in their order
     */
    public List<TapFlow> allTapsOpen(double waterC) {
        return SupplyMaker.allOpen(this, waterC);
    }

    /** Whether a tap hangs on the trunk. */
    public boolean onTrunk(Tap tap) {
        return trunk.isPresent() && tap.onTrunk().orElse(true);
    }

    /** The same design, every value marked as borrowed from an example dwelling; a later change by name makes a value yours. */
    public Design borrowed() {
        return Origins.borrowed(this);
    }

    /**
     * Where the value of a field is from.
     *
     * @param path of the field, such as {@code coldLegs[1].riseM}
     */
    public Origin origin(String path) {
        return Origins.of(
                origins,
                path,
                DesignFields.texts(this).getOrDefault(path, Optional.empty()).isPresent());
    }

    /** The same design with other cold and hot legs. */
    public Design withLegs(List<Leg> cold, List<Leg> hot) {
        return with(tank, coil, cold, hot);
    }

    /** The same design with other hot legs, from the coil's outlet to the tank's return port; their rises must close. */
    public Design withHotLegs(List<Leg> newHotLegs) {
        return with(tank, coil, coldLegs, newHotLegs);
    }

    /** The same design with these draws; every one must name a tap. */
    public Design withUse(List<Use> newUse) {
        return with(DesignTable.USE, newUse);
    }

    /** The same design with this much more level run, m, in the leg with most of it on each side. */
    public Design withAddedRunM(double addedM) {
        return withLegs(Stretch.levelRun(coldLegs, addedM), Stretch.levelRun(hotLegs, addedM));
    }

    /** The same design with the tank moved to this level, m above the floor; the longest rises follow. */
    public Design withTankBaseM(double baseM) {
        return Changes.tried(this, "tank.baseM", Double.toString(baseM));
    }

    /** The same design with the port to the taps at this level, m above the tank's base. */
    public Design withDrawPortM(double drawPortM) {
        return Changes.tried(this, "tank.drawPortM", Double.toString(drawPortM));
    }

    /** The same design with this thickness of lagging round the tank, mm; a bare tank gets stone wool; 0 takes it off. */
    public Design withTankLaggingMm(double thicknessMm) {
        return Changes.tried(this, "tank.laggingMm", Double.toString(thicknessMm));
    }

    /** The same design with a coil of this length of tube, m. */
    public Design withCoilLengthM(double lengthM) {
        return Changes.tried(this, "coil.lengthM", Double.toString(lengthM));
    }

    /** The same design with a fire of this much wood an hour, kg/h; where there is none yet, it is lit as stated in the table. */
    public Design withBurnKgPerH(double burnKgPerH) {
        return Changes.tried(this, "fire.burnKgPerH", Double.toString(burnKgPerH));
    }

    /** The same design with this heat in the coil, kW; no more than the wood of an hour holds. */
    public Design withCoilHeatKW(double heatKW) {
        return Changes.tried(this, "coil.heatKW", Double.toString(heatKW));
    }

    /** The same design with every leg and the coil of this tube. */
    public Design withLoopTube(String tube) {
        return Changes.tried(this, "loop.tube", tube);
    }

    /** The same design with this many sharp 90° elbows in every leg. */
    public Design withElbowsPerLeg(int elbows) {
        return Changes.tried(this, "loop.elbowsPerLeg", Integer.toString(elbows));
    }

    /** The same design with no pipe flatter than this, mm of rise a metre of level run; less than 0 for one that slopes the wrong way.
     * Flatter legs are brought to it; where all are steeper, the flattest one is. The leg with the largest rise of that side gives
     * or takes. */
    public Design withLoopSlopeMmPerM(double slopeMmPerM) {
        return Changes.tried(this, "loop.slopeMmPerM", Double.toString(slopeMmPerM));
    }

    /** The same design with this thickness of lagging on every leg, mm; a bare leg gets stone wool; 0 takes it off. */
    public Design withLoopLaggingMm(double thicknessMm) {
        return Changes.tried(this, "loop.laggingMm", Double.toString(thicknessMm));
    }

    /** The same design with this thickness of lagging on the hot legs, mm; a bare leg gets stone wool; 0 takes it off. */
    public Design withHotLaggingMm(double thicknessMm) {
        return Changes.tried(this, "hotLegs.laggingMm", Double.toString(thicknessMm));
    }

    /** The same design with its gate valves opened so, one of {@link LoopValves.Opening}; without one, it gets one. */
    public Design withValveOpening(String opening) {
        return Changes.tried(this, "loop.valveOpening", opening);
    }

    /** The same design with a joint of the first hot leg as one of {@link LoopValves.Joint}. */
    public Design withChokedJoint(String joint) {
        return Changes.tried(this, "loop.choked", joint);
    }

    /** The same design with the fire lit at this hour, h. */
    public Design withLitFromH(double litFromH) {
        return Changes.tried(this, "fire.litFromH", Double.toString(litFromH));
    }

    /** The same design with this many panes, one behind the other. */
    public Design withPanes(int panes) {
        return Changes.tried(this, "window.panes", Integer.toString(panes));
    }

    /** The same design with every tap behind a mixing valve set as the change {@code taps.mixer} offers. */
    public Design withTapMixer(String setting) {
        return Changes.tried(this, "taps.mixer", setting);
    }

    /** The same design with an open vent of this tube. */
    public Design withVentTube(String tube) {
        return Changes.tried(this, "vent.tube", tube);
    }

    /** The same design with an open vent that ends this far above the waterline, m. */
    public Design withVentAboveWaterlineM(double aboveM) {
        return Changes.tried(this, "vent.aboveWaterlineM", Double.toString(aboveM));
    }

    /** The same design with this kind of cold feed; what was not said of it is started from usual values. */
    public Design withColdFeedKind(String kind) {
        return Changes.tried(this, "coldFeed.kind", kind);
    }

    /** The same design left in winter as the change {@code absence.drained} offers. */
    public Design withAbsence(String absence) {
        return Changes.tried(this, "absence.drained", absence);
    }

    /** The design with one part changed. */
    <V> Design with(Field<Design, V> field, V value) {
        return DesignTable.with(this, field, value).checked();
    }

    /** Tank, coil and legs at once, so that the loop is closed when it is checked. */
    Design with(Tank newTank, Coil newCoil, List<Leg> cold, List<Leg> hot) {
        Design moved = DesignTable.with(DesignTable.with(this, DesignTable.TANK, newTank), DesignTable.COIL, newCoil);
        return DesignTable.with(moved, DesignTable.COLD_LEGS, cold).with(DesignTable.HOT_LEGS, hot);
    }

    /** The same design with other notes and origins. */
    Design noted(Map<String, String> newNotes, Map<String, Origin> newOrigins) {
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
                trunk,
                use,
                safety,
                newNotes,
                newOrigins);
    }
}

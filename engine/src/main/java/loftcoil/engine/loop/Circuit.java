package loftcoil.engine.loop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.gas.Atmosphere;
import loftcoil.engine.pipe.Lagging;
import loftcoil.engine.pipe.Tube;

/**
 * A loop made ready for searching: checked, its heat losses tabulated, its boiling points worked out. Immutable; one
 * circuit may be searched by several threads at once.
 *
 * <p>Model: one-dimensional steady flow; the tank is uniform; the loss per metre follows water temperature; friction is
 * that of developed flow in a straight or wound tube plus two-K fittings; pressure change by acceleration, storage of heat in the
 * copper and slow swings of temperature are left out. Expect the flow to be within 15 % of a well-bled real loop, mostly
 * for the fittings, and the drive within 2 %.
 */
public final class Circuit {

    private static final Allowed TRIAL = new Allowed(-100, 100, "kg/s");

    private final CircuitPlan plan;
    private final Setting setting;
    private final Segment[] segments;
    private final Surface surface;
    private final double[][] boilingC;
    private final LiquidTable liquid;

    private Circuit(CircuitPlan plan, Setting setting, Segment[] segments) {
        this(plan, setting, segments, LiquidTable.WATER);
    }

    /** As another whose pipes lie at the same levels, under the same air and with as warm a tank: it boils where that one does. */
    private Circuit(Circuit as, Setting setting, Segment[] segments) {
        this.plan = as.plan;
        this.setting = setting;
        this.segments = segments;
        this.surface = as.surface;
        this.liquid = as.liquid;
        this.boilingC = as.boilingC;
    }

    /**
     * Parts made ready elsewhere, with another liquid: for holding the model against a loop measured with one. Nothing is checked;
     * boiling and the bounds of the search stay those of water.
     */
    Circuit(CircuitPlan plan, Setting setting, Segment[] segments, LiquidTable liquid) {
        this.plan = plan;
        this.setting = setting;
        this.segments = segments;
        this.surface = new Surface(
                Atmosphere.pressurePa(setting.altitudeM()),
                plan.heights().waterlineM(),
                LiquidTable.WATER.densityKgPerM3(setting.tankC()));
        this.liquid = liquid;
        this.boilingC = Limits.boilingC(segments, surface);
    }

    /**
     * Checks and prepares a loop.
     *
     * @param plan how it is built
     * @param setting tank temperature, altitude and fire
     * @throws loftcoil.engine.fault.RefusedException with every fault found: lengths, rises that do not close, legs
     *     that rise more than they are long, temperatures out of range, a tank at its boiling point
     */
    public static Circuit of(CircuitPlan plan, Setting setting) {
        PlanFaults.refuse(plan, setting);
        boolean real = plan.kind() == LoopKind.REAL;
        Map<Kind, LossTable> tables = new HashMap<>();
        List<Segment> segments = new ArrayList<>();
        double levelM = plan.heights().coldPortM();
        for (Pipe pipe : plan.forward()) {
            Kind kind = new Kind(pipe.tube(), pipe.lagging(), pipe.aroundC());
            LossTable table = tables.computeIfAbsent(kind, k -> real ? k.table() : LossTable.none(k.aroundC()));
            boolean coil = segments.size() == plan.coldLegs().size();
            segments.add(new Segment(pipe, table, coil, levelM));
            levelM += pipe.riseM();
        }
        Joints.join(segments);
        if (real) {
            Segment first = segments.get(0);
            Segment last = segments.get(segments.size() - 1);
            first.port("entrance", Direction.FORWARD);
            last.port("exit", Direction.FORWARD);
            last.port("entrance", Direction.BACKWARD);
            first.port("exit", Direction.BACKWARD);
        }
        return new Circuit(plan, setting, segments.toArray(new Segment[0]));
    }

    /** What the loss table of a leg depends on. */
    private record Kind(Tube tube, Lagging lagging, double aroundC) {
        LossTable table() {
            return LossTable.of(tube, lagging, aroundC);
        }
    }

    /**
     * The same loop on a tank in layers.
     *
     * @param enteringC temperature of the water that enters the loop, °C: at the cold port for a forward flow, at the
     *     return port for a backward one
     * @param columnKgPerM3 mean density of the tank's water between its two ports, kg/m³; 900 to 1050
     * @throws loftcoil.engine.fault.RefusedException where a value is out of range
     */
    public Circuit onLayers(double enteringC, double columnKgPerM3) {
        return with(new Setting(enteringC, setting.altitudeM(), setting.firing(), columnKgPerM3));
    }

    /**
     * The same loop with another heat in the coil.
     *
     * @param heatW heat the water takes up, W; 0 to 100 000
     * @throws loftcoil.engine.fault.RefusedException where it is out of range
     */
    public Circuit withHeatW(double heatW) {
        return with(new Setting(setting.tankC(), setting.altitudeM(), Firing.lit(heatW), setting.columnKgPerM3()));
    }

    /**
     * The same loop with the whole tank at another temperature; heat that hangs on it stays as it is.
     *
     * @param tankC temperature of the whole tank, °C; 0 to its boiling point
     * @throws loftcoil.engine.fault.RefusedException where it is out of range
     */
    public Circuit withTankC(double tankC) {
        return with(new Setting(tankC, setting.altitudeM(), setting.firing()));
    }

    /** The same loop with the water of the tank sunk to its return port, which it just covers. */
    public Circuit sunkToReturnPort() {
        LoopHeights at = plan.heights();
        LoopHeights sunk = new LoopHeights(at.coldPortM(), at.returnPortM(), at.returnPortM());
        return new Circuit(
                new CircuitPlan(sunk, plan.coldLegs(), plan.coil(), plan.hotLegs(), plan.kind()), setting, segments);
    }

    /**
     * The same loop at another altitude, or in other weather.
     *
     * @param altitudeM altitude, m above the sea; a fall of the barometer by 10 hPa is about 85 m more
     * @throws loftcoil.engine.fault.RefusedException where it is out of range, or the tank boils there
     */
    public Circuit withAltitudeM(double altitudeM) {
        return with(new Setting(setting.tankC(), altitudeM, setting.firing(), setting.columnKgPerM3()));
    }

    /** The same loop with other resistance and heat loss than computed; the factors are on those of this loop. */
    public Circuit trimmed(UncertaintyFactors trim) {
        Segment[] trimmed = new Segment[segments.length];
        Arrays.setAll(trimmed, i -> segments[i].trimmed(trim));
        return new Circuit(this, setting, trimmed);
    }

    private Circuit with(Setting changed) {
        PlanFaults.refuse(plan, changed);
        return changed.altitudeM() == setting.altitudeM() && changed.tankC() == setting.tankC()
                ? new Circuit(this, changed, segments)
                : new Circuit(plan, changed, segments);
    }

    /** How it is built. */
    public CircuitPlan plan() {
        return plan;
    }

    /** What it is searched for. */
    public Setting setting() {
        return setting;
    }

    /**
     * Boiling temperature in the loop at a level, °C.
     *
     * @param levelM level above the floor, m
     */
    public double boilingC(double levelM) {
        return surface.boilingC(levelM);
    }

    /** How far the loop's highest point stands above the waterline, m; 0 where it does not. */
    public double aboveWaterlineM() {
        double highest = Double.NEGATIVE_INFINITY;
        for (Segment segment : segments) {
            highest = Math.max(highest, Math.max(segment.startLevelM, segment.endLevelM()));
        }
        return Math.max(0, highest - plan.heights().waterlineM());
    }

    /**
     * Drive and resistance at a flow that the loop need not be able to hold.
     *
     * @param flowKgPerS mass flow, kg/s, forward positive; −100 to 100
     * @return empty where water would boil or freeze at that flow, and for flows below {@link FlowSearch#LEAST_KG_PER_S}
     * @throws loftcoil.engine.fault.RefusedException where the flow is out of range
     */
    public Optional<TrialFlow> trial(double flowKgPerS) {
        TRIAL.require("flowKgPerS", flowKgPerS);
        if (Math.abs(flowKgPerS) < FlowSearch.LEAST_KG_PER_S) {
            return Optional.empty();
        }
        March march = march();
        march.residualPa(flowKgPerS);
        return march.boilMarginK() < 0
                ? Optional.empty()
                : Optional.of(new TrialFlow(flowKgPerS, march.drivePa, march.frictionPa));
    }

    /** Finds every flow the loop can hold, both ways, and judges the forward one. */
    public FlowSearch search() {
        return new Searching(plan, setting, segments, march()).search();
    }

    /** The flow of {@link FlowSearch#forward}, for who needs no other: found in a third of the time of a search. */
    public Optional<SteadyFlow> forward() {
        return new Searching(plan, setting, segments, march()).slowestStable(Direction.FORWARD);
    }

    /** The flow of {@link FlowSearch#fromRest}, for who needs no other. */
    public Optional<SteadyFlow> fromRest() {
        double push = StaticDrive.pa(plan, setting);
        if (push == 0) {
            return Optional.empty();
        }
        return new Searching(plan, setting, segments, march())
                .slowestStable(push > 0 ? Direction.FORWARD : Direction.BACKWARD);
    }

    /** Push on the water at rest: {@link FlowSearch#staticDrivePa}. */
    public double staticDrivePa() {
        return StaticDrive.pa(plan, setting);
    }

    /**
     * The same loop through time, all of it at the tank's temperature and at rest to begin with.
     *
     * @return a stepper of its own; its lit coil is given its heat step by step
     */
    public WarmingLoop warming() {
        return new WarmingLoop(segments, setting.firing().lit(), surface, setting.tankC(), MarchDetail.USUAL);
    }

    /** The same in other detail; for a loop of over 10 m in longer cells, as many as for one of 10 m. */
    public WarmingLoop warming(MarchDetail detail) {
        double loopM =
                Arrays.stream(segments).mapToDouble(segment -> segment.lengthM).sum();
        return new WarmingLoop(segments, setting.firing().lit(), surface, setting.tankC(), detail.forLength(loopM));
    }

    /** The runs of tube made ready; not to be changed. */
    Segment[] segments() {
        return segments;
    }

    /** Fresh working space for one search. */
    March march() {
        return new March(
                segments,
                new Limits(segments, boilingC),
                setting,
                plan.heights().portsApartM(),
                liquid);
    }
}

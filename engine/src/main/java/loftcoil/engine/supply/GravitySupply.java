package loftcoil.engine.supply;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loftcoil.engine.constant.Constants;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.water.Water;

/**
 * A tank open to the air and a tree of pipes down to the taps, full of water of one temperature.
 *
 * <p>Bernoulli from the still waterline to each open mouth: head = friction + fittings + outlet + what the jet carries off.
 * Losses at tees are those of their fittings, without the small exchange of static and velocity head between run and branch.
 * Friction is good to about 10 %, fittings to 25 %; a tap's outlet K is the least known. Immutable.
 */
public final class GravitySupply {

    /** The waterlines accepted, in m above the finished floor. */
    public static final Allowed WATERLINE = new Allowed(-20, 100, "m");

    private static final double LITRES_PER_MIN = 60_000;

    private final double waterlineM;
    private final double waterC;
    private final Branch root;
    private final HeadLoss[] pipes;
    private final List<SupplyPath> paths;

    /**
     * A supply.
     *
     * @param waterlineM level of the water in the tank above the finished floor in m, -20 to 100
     * @param waterC temperature of the water in °C, 0 to 110
     * @param root the pipe from the tank; {@link SupplyPipe#fromTank} adds the way out of the tank
     * @throws RefusedException where a value is outside its range or not a number, or two outlets bear one name
     */
    public GravitySupply(double waterlineM, double waterC, Branch root) {
        this.waterlineM = WATERLINE.require("waterlineM", waterlineM);
        this.waterC = Water.TEMPERATURE.require("waterC", waterC);
        this.root = root;
        List<HeadLoss> losses = new ArrayList<>();
        paths = new ArrayList<>();
        walk(root, List.of(), 0, losses);
        pipes = losses.toArray(new HeadLoss[0]);
        refuseSameNames();
    }

    /**
     * A supply of a single tap on its own pipe from the tank.
     *
     * @param waterlineM level of the water in the tank above the finished floor in m, -20 to 100
     * @param waterC temperature of the water in °C, 0 to 110
     * @param pipe the pipe; the way out of the tank is added
     * @param outlet the tap
     * @throws RefusedException where a value is outside its range or not a number
     */
    public static GravitySupply single(double waterlineM, double waterC, SupplyPipe pipe, Outlet outlet) {
        return new GravitySupply(waterlineM, waterC, new Branch(pipe.fromTank(), outlet));
    }

    /**
     * The same pipes at another water level.
     *
     * @param levelM level of the water in the tank above the finished floor in m, -20 to 100
     * @throws RefusedException where the level is outside its range or not a number
     */
    public GravitySupply withWaterline(double levelM) {
        return new GravitySupply(levelM, waterC, root);
    }

    /** Level of the water above the finished floor in m. */
    public double waterlineM() {
        return waterlineM;
    }

    /** Names of all outlets, as the tree is walked from the tank, branches in their order. */
    public List<String> outlets() {
        return paths.stream().map(path -> path.outlet().name()).toList();
    }

    /**
     * One tap fully open, all others shut.
     *
     * @param name name of the outlet
     * @throws RefusedException where there is no such outlet
     */
    public TapFlow alone(String name) {
        return open(Set.of(name)).get(0);
    }

    /**
     * Several taps fully open at once.
     *
     * @param names names of the open outlets
     * @return one flow for each of them, in the order of {@link #outlets}
     * @throws RefusedException where there is no such outlet; all faults at once
     */
    public List<TapFlow> open(Set<String> names) {
        for (String name : names) {
            path(name);
        }
        List<SupplyPath> taps = paths.stream()
                .filter(path -> names.contains(path.outlet().name()))
                .toList();
        FlowSplit split = new FlowSplit(taps, pipes, waterlineM);
        double[] flows = split.solve();
        List<TapFlow> result = new ArrayList<>();
        for (int tap = 0; tap < flows.length; tap++) {
            result.add(describe(taps.get(tap), flows[tap], split.leftOverM(tap)));
        }
        return List.copyOf(result);
    }

    /**
     * Waterline above the mouth of an outlet, in m; negative where below.
     *
     * @param name name of the outlet
     * @throws RefusedException where there is no such outlet
     */
    public double headM(String name) {
        return waterlineM - path(name).outlet().levelM();
    }

    /**
     * Water standing between the tank and a tap, in m³: what has to run off before it runs hot.
     *
     * @param name name of the outlet
     * @throws RefusedException where there is no such outlet
     */
    public double standingM3(String name) {
        return path(name).volumeM3();
    }

    private TapFlow describe(SupplyPath tap, double flowM3PerS, double leftOverM) {
        Outlet outlet = tap.outlet();
        double headM = waterlineM - outlet.levelM();
        double pascalPerM = Water.densityKgPerM3(waterC) * Constants.GRAVITY_M_PER_S2;
        double staticKPa = headM * pascalPerM / 1000;
        if (headM <= 0) {
            return new TapFlow.TooHigh(outlet.name(), staticKPa, -headM);
        }
        if (flowM3PerS <= 0) {
            return new TapFlow.Robbed(outlet.name(), staticKPa, -leftOverM);
        }
        HeadLoss last = pipes[tap.lastPipe()];
        return new TapFlow.Runs(
                outlet.name(),
                flowM3PerS * LITRES_PER_MIN,
                staticKPa,
                outlet.outletK() * last.velocityHeadM(flowM3PerS) * pascalPerM / 1000,
                last.velocityMPerS(flowM3PerS),
                last.reynolds(flowM3PerS));
    }

    private void walk(Branch branch, List<Integer> before, double volumeM3, List<HeadLoss> losses) {
        List<Integer> here = new ArrayList<>(before);
        here.add(losses.size());
        losses.add(new HeadLoss(branch.pipe(), waterC));
        double volume = volumeM3 + branch.pipe().volumeM3();
        if (branch.end() instanceof Outlet outlet) {
            paths.add(new SupplyPath(outlet, here, volume));
        } else if (branch.end() instanceof Tee tee) {
            tee.branches().forEach(next -> walk(next, here, volume, losses));
        }
    }

    private void refuseSameNames() {
        Set<String> seen = new HashSet<>();
        List<Fault> faults = outlets().stream()
                .filter(name -> !seen.add(name))
                .map(name -> new Fault("outlets.name", name, "a name of its own", "two outlets bear it"))
                .toList();
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }

    private SupplyPath path(String name) {
        return paths.stream()
                .filter(path -> path.outlet().name().equals(name))
                .findFirst()
                .orElseThrow(() -> new RefusedException(List.of(new Fault(
                        "outlet", name, "one of " + String.join(", ", outlets()), "there is no such outlet"))));
    }
}

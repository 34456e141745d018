package loftcoil.engine.loop;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** One search: scans both directions, works out each flow found, and judges. */
final class Searching {

    private final CircuitPlan plan;
    private final Setting setting;
    private final Segment[] segments;
    private final March march;

    Searching(CircuitPlan plan, Setting setting, Segment[] segments, March march) {
        this.plan = plan;
        this.setting = setting;
        this.segments = segments;
        this.march = march;
    }

    FlowSearch search() {
        FlowRange range = range();
        RootScan backward = RootScan.of(march, this::flow, Direction.BACKWARD, range);
        RootScan forward = RootScan.of(march, this::flow, Direction.FORWARD, range);
        List<SteadyFlow> flows = new ArrayList<>(backward.roots());
        Collections.reverse(flows);
        flows.addAll(forward.roots());
        return new FlowSearch(flows, Judgement.of(plan, setting, flows, forward), StaticDrive.pa(plan, setting));
    }

    /** One direction, in strides of so many steps. */
    RootScan scan(int direction, int stride) {
        return RootScan.of(march, this::flow, direction, range(), stride);
    }

    /** The slowest stable flow one way; what {@link #search} lists besides is not looked for. */
    Optional<SteadyFlow> slowestStable(int direction) {
        return RootScan.firstStable(march, this::flow, direction, range());
    }

    private FlowRange range() {
        return FlowRange.of(segments, setting.firing(), march.columnPa());
    }

    /** The flow at which the march stands. */
    private SteadyFlow flow(double signedFlow, boolean stable) {
        double flow = Math.abs(signedFlow);
        List<LegEnds> legs = new ArrayList<>();
        LegEnds coil = null;
        double lostW = 0;
        for (int i = 0; i < segments.length; i++) {
            LegEnds ends = new LegEnds(segments[i].pipe.name(), march.startC[i], march.endC[i], march.lostW(i));
            legs.add(ends);
            lostW += march.lostW(i);
            coil = segments[i].coil ? ends : coil;
        }
        if (coil == null) {
            throw new IllegalStateException("a circuit has exactly one coil");
        }
        double tankW =
                flow * (march.liquid.enthalpyJPerKg(march.returnC) - march.liquid.enthalpyJPerKg(setting.tankC()));
        return new SteadyFlow(
                signedFlow,
                signedFlow / march.liquid.densityKgPerM3(setting.tankC()) * 60_000,
                stable,
                march.drivePa,
                march.frictionPa,
                march.coilReynolds,
                coil,
                legs,
                march.boilMargin(),
                new HeatBook(setting.firing().heatW(), lostW, tankW));
    }
}

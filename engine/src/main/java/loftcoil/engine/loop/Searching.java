package loftcoil.engine.loop;

import java.util.ArrayList;
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
        FlowRange range = FlowRange.of(segments, setting.firing(), march.columnPa());
        RootScan backward = RootScan.of(march, Direction.BACKWARD, range);
        RootScan forward = RootScan.of(march, Direction.FORWARD, range);
        List<SteadyFlow> flows = new ArrayList<>();
        for (int i = backward.roots().size() - 1; i >= 0; i--) {
            flows.add(flow(backward.roots().get(i)));
        }
        for (RootScan.Root root : forward.roots()) {
            flows.add(flow(root));
        }
        return new FlowSearch(flows, Judgement.of(plan, setting, flows, forward), StaticDrive.pa(plan, setting));
    }

    /** The slowest stable flow one way; what {@link #search} lists besides is not looked for. */
    Optional<SteadyFlow> slowestStable(int direction) {
        FlowRange range = FlowRange.of(segments, setting.firing(), march.columnPa());
        return RootScan.firstStable(march, direction, range).map(this::flow);
    }

    private SteadyFlow flow(RootScan.Root root) {
        march.residualPa(root.signedFlow());
        double flow = Math.abs(root.signedFlow());
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
                root.signedFlow(),
                root.signedFlow() / march.liquid.densityKgPerM3(setting.tankC()) * 60_000,
                root.stable(),
                march.drivePa,
                march.frictionPa,
                march.coilReynolds,
                coil,
                legs,
                march.boilMargin(),
                new HeatBook(setting.firing().heatW(), lostW, tankW));
    }
}

package loftcoil.engine.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.Lagging;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;

/** Any loop at all: every flow told is finite and balanced, or the loop is refused with its reasons. */
class FlowSearchPropertyLawTest {

    @Property(tries = 10_000, seed = "20260101")
    void finiteBalancedOrRefused(@ForAll("plans") CircuitPlan plan, @ForAll("settings") Setting setting) {
        FlowSearch search;
        try {
            search = Circuit.of(plan, setting).search();
        } catch (RefusedException refused) {
            assertTrue(!refused.faults().isEmpty());
            seen("refused");
            return;
        }
        assertTrue(!search.words().isBlank() && !search.words().contains("NaN"), search.words());
        assertTrue(Double.isFinite(search.staticDrivePa()));
        boolean stableForward = search.flows().stream().anyMatch(f -> f.stable() && f.flowKgPerS() > 0);
        assertEquals(stableForward, search.circulates());
        for (SteadyFlow flow : search.flows()) {
            check(flow);
        }
        seen(search.circulation().getClass().getSimpleName());
    }

    /** What a scan in strides passes over holds nothing: it finds what a scan of every single step does, flow for flow and edge for edge. */
    @Property(tries = 10_000, seed = "20261129")
    void stridesPassOverNothing(@ForAll("plans") CircuitPlan plan, @ForAll("settings") Setting setting) {
        Circuit circuit;
        try {
            circuit = Circuit.of(plan, setting);
        } catch (RefusedException refused) {
            return;
        }
        for (int direction : new int[] {Direction.FORWARD, Direction.BACKWARD}) {
            RootScan steps = searching(circuit).scan(direction, 1);
            RootScan strides = searching(circuit).scan(direction, RootScan.STRIDE);
            assertEquals(steps.roots().size(), strides.roots().size(), steps.roots() + " " + strides.roots());
            for (int i = 0; i < steps.roots().size(); i++) {
                SteadyFlow expected = steps.roots().get(i);
                SteadyFlow found = strides.roots().get(i);
                assertEquals(expected.stable(), found.stable());
                assertEquals(1, found.flowKgPerS() / expected.flowKgPerS(), 1e-6);
            }
            assertEquals(steps.edge().isPresent(), strides.edge().isPresent());
            if (steps.edge().isPresent()) {
                assertEquals(
                        1,
                        strides.edge().orElseThrow().signedFlow()
                                / steps.edge().orElseThrow().signedFlow(),
                        1e-5);
            }
        }
    }

    private static Searching searching(Circuit circuit) {
        return new Searching(circuit.plan(), circuit.setting(), circuit.segments(), circuit.march());
    }

    /** A run in which one of the outcomes hardly ever came up would prove nothing about it. */
    private static void seen(String outcome) {
        Statistics.label("outcome").collect(outcome).coverage(cover -> {
            cover.check("Circulates").percentage(share -> share > 5);
            cover.check("Boils").percentage(share -> share > 1);
            cover.check("Still").percentage(share -> share > 5);
            cover.check("refused").percentage(share -> share > 1);
        });
    }

    private static void check(SteadyFlow flow) {
        assertTrue(flow.frictionPa() > 0 && Double.isFinite(flow.reynolds()) && flow.reynolds() > 0, flow.toString());
        double forward = Math.signum(flow.flowKgPerS()) * flow.frictionPa();
        assertEquals(forward, flow.drivePa(), 1e-6 * flow.frictionPa() + 1e-8, flow.toString());
        double turnover = Math.max(
                flow.heat().coilW(),
                flow.legs().stream().mapToDouble(leg -> Math.abs(leg.lossW())).sum());
        assertEquals(
                flow.heat().coilW(),
                flow.heat().lostW() + flow.heat().tankW(),
                1e-6 * turnover + 1e-9,
                flow.toString());
        assertTrue(flow.boilMargin().marginK() >= -1e-6, flow.toString());
        for (LegEnds leg : flow.legs()) {
            assertTrue(leg.startC() >= -1e-6 && leg.startC() <= 110 + 1e-6, flow.toString());
            assertTrue(leg.endC() >= -1e-6 && leg.endC() <= 110 + 1e-6, flow.toString());
        }
    }

    @Provide
    Arbitrary<Setting> settings() {
        Arbitrary<Firing> firing = Arbitraries.oneOf(
                Arbitraries.doubles().between(0, 20_000).map(Firing::lit),
                Arbitraries.doubles().between(0, 20).map(Firing::lit),
                Arbitraries.just(Firing.out()));
        return Combinators.combine(
                        Arbitraries.doubles().between(0, 105),
                        Arbitraries.doubles().between(-400, 5000),
                        firing)
                .as(Setting::new);
    }

    @Provide
    Arbitrary<CircuitPlan> plans() {
        Arbitrary<Double> level = Arbitraries.doubles().between(-4, 6);
        Arbitrary<Double> gap = Arbitraries.doubles().between(0, 1.5);
        Arbitrary<Double> rise = Arbitraries.doubles().between(-3, 3);
        return Combinators.combine(level, gap, gap, rise, rise, pipes(), pipes(), pipes())
                .as((cold, between, cover, coldRise, coilRise, drop, run, riser) -> {
                    double hotRise = between - coldRise - coilRise;
                    return new CircuitPlan(
                            new LoopHeights(cold, cold + between, cold + between + cover),
                            List.of(shaped(drop, "drop", coldRise * 0.8), shaped(run, "run", coldRise * 0.2)),
                            shaped(run, "coil", coilRise),
                            List.of(shaped(riser, "riser", hotRise * 1.3), shaped(drop, "back", hotRise * -0.3)),
                            LoopKind.REAL);
                });
    }

    private static Pipe shaped(Pipe pipe, String name, double riseM) {
        return new Pipe(
                name,
                pipe.tube(),
                Math.hypot(pipe.lengthM(), riseM),
                riseM,
                pipe.fittings(),
                pipe.lagging(),
                pipe.aroundC());
    }

    private static Arbitrary<Pipe> pipes() {
        Arbitrary<Tube> tube = Arbitraries.of(TubeTable.names())
                .map(name -> TubeTable.find(name).orElseThrow());
        Arbitrary<Lagging> lagging =
                Arbitraries.of(Lagging.NONE, new Lagging("stone wool", 0.04), new Lagging("elastomeric foam", 0.013));
        Arbitrary<Double> around = Arbitraries.oneOf(
                Arbitraries.doubles().between(-40, 40), Arbitraries.doubles().between(0, 250), Arbitraries.just(19.0));
        Arbitrary<Double> length = Arbitraries.doubles().between(0.01, 12);
        return Combinators.combine(
                        tube, length, lagging, around, Arbitraries.integers().between(0, 8))
                .as((t, l, w, a, elbows) -> new Pipe("pipe", t, l, 0, Map.of("elbow90", elbows), w, a));
    }
}

package loftcoil.engine.sheet;

import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.loop.Circulation;
import loftcoil.engine.loop.FlowSearch;
import loftcoil.engine.loop.SteadyFlow;

/**
 * The loop's figures with the whole tank at one temperature, as the sheet shows them. Where no stable forward flow exists,
 * flow, drive and Reynolds number are 0 and there are no temperatures: {@link #flow} is empty.
 *
 * @param tankC temperature of the whole tank, °C
 * @param circulation the finding
 * @param flow the stable forward flow; empty where there is none
 * @param coldFire the night flow
 */
public record LoopFigures(double tankC, Circulation circulation, Optional<SteadyFlow> flow, ColdFire coldFire) {

    static LoopFigures of(Design design, FlowSearch lit, double tankC) {
        ColdFire night = design.circuitFireOut(tankC)
                .search()
                .fromRest()
                .map(flow -> new ColdFire(flow.flowKgPerS(), -flow.heat().tankW()))
                .orElse(new ColdFire(0, 0));
        return new LoopFigures(tankC, lit.circulation(), lit.forward(), night);
    }

    /** Whether a stable forward flow exists in which nothing boils. */
    public boolean circulates() {
        return flow.isPresent();
    }

    /** Stable forward flow, kg/s; 0 where there is none. */
    public double flowKgPerS() {
        return flow.map(SteadyFlow::flowKgPerS).orElse(0.0);
    }

    /** Stable forward flow, L/min; 0 where there is none. */
    public double flowLPerMin() {
        return flow.map(SteadyFlow::flowLPerMin).orElse(0.0);
    }

    /** Drive at that flow, Pa; 0 where there is none. */
    public double drivePa() {
        return flow.map(SteadyFlow::drivePa).orElse(0.0);
    }

    /** Reynolds number in the coil, mean; 0 where there is no flow. */
    public double reynolds() {
        return flow.map(SteadyFlow::reynolds).orElse(0.0);
    }

    /** Water temperature at the coil's inlet, °C; NaN (a gap in a curve) where there is no flow. */
    public double coilInC() {
        return flow.map(steady -> steady.coil().startC()).orElse(Double.NaN);
    }

    /** Water temperature at the coil's outlet, °C; NaN (a gap in a curve) where there is no flow. */
    public double coilOutC() {
        return flow.map(steady -> steady.coil().endC()).orElse(Double.NaN);
    }

    /** Water temperature at the return port, °C; NaN (a gap in a curve) where there is no flow. */
    public double returnC() {
        return flow.map(SteadyFlow::returnC).orElse(Double.NaN);
    }

    /** Least distance from boiling over the loop, K; NaN (a gap in a curve) where there is no flow. */
    public double boilMarginK() {
        return flow.map(steady -> steady.boilMargin().marginK()).orElse(Double.NaN);
    }

    /** The finding in plain words. */
    public String words() {
        return circulation.words();
    }
}

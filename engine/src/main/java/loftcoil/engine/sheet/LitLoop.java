package loftcoil.engine.sheet;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import loftcoil.engine.loop.SteadyFlow;

/** A lit loop: its heat, and its stable forward flow where there is one. */
public interface LitLoop {

    /** Heat the water in the coil takes up, kW. */
    double heatKW();

    /** The stable forward flow; empty where there is none. */
    Optional<SteadyFlow> flow();

    /** Whether a stable forward flow exists in which nothing boils. */
    default boolean circulates() {
        return flow().isPresent();
    }

    /** Stable forward flow, kg/s; 0 where there is none. */
    default double flowKgPerS() {
        return flow().map(SteadyFlow::flowKgPerS).orElse(0.0);
    }

    /** Stable forward flow, L/min; 0 where there is none. */
    default double flowLPerMin() {
        return flow().map(SteadyFlow::flowLPerMin).orElse(0.0);
    }

    /** Drive at that flow, Pa; 0 where there is none. */
    default double drivePa() {
        return flow().map(SteadyFlow::drivePa).orElse(0.0);
    }

    /** Reynolds number in the coil, mean; 0 where there is no flow. */
    default double reynolds() {
        return flow().map(SteadyFlow::reynolds).orElse(0.0);
    }

    /** Water temperature at the coil's inlet, °C; NaN (a gap in a curve) where there is no flow. */
    default double coilInC() {
        return flowing(flow -> flow.coil().startC());
    }

    /** Water temperature at the coil's outlet, °C; NaN (a gap in a curve) where there is no flow. */
    default double coilOutC() {
        return flowing(flow -> flow.coil().endC());
    }

    /** Water temperature at the return port, °C; NaN (a gap in a curve) where there is no flow. */
    default double returnC() {
        return flowing(SteadyFlow::returnC);
    }

    /** Least distance from boiling over the loop, K; NaN (a gap in a curve) where there is no flow. */
    default double boilMarginK() {
        return flowing(flow -> flow.boilMargin().marginK());
    }

    /** What the flow has of something; NaN (a gap in a curve) where there is no flow. */
    default double flowing(ToDoubleFunction<SteadyFlow> something) {
        return flow().stream().mapToDouble(something).findFirst().orElse(Double.NaN);
    }
}

package loftcoil.engine.start;

import java.util.List;
import java.util.OptionalDouble;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.Allowed;

/**
 * One start from minute to minute, to be drawn.
 *
 * @param start what became of it
 * @param moments every ten seconds from lighting
 */
public record StartTrace(Start start, List<StartMoment> moments) {

    private static final Allowed GAP = new Allowed(0.01, 72, "h");

    private static final double HALF_A_MOMENT_MIN = 1 / 12.0;

    /** Keeps a copy of the moments. */
    public StartTrace {
        moments = List.copyOf(moments);
    }

    /**
     * Lights the fire again after a rest, with some counterflow.
     *
     * @param design a design
     * @param tankC temperature of the tank, °C
     * @param gapH hours without fire, 0.01 to 72
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed or a value is out of range
     */
    public static StartTrace of(Design design, double tankC, double gapH) {
        GAP.require("gapH", gapH);
        return Starts.traced(design, tankC, OptionalDouble.of(gapH));
    }

    /** Flow at a minute from lighting, L/min, backward less than 0; the last one after the end. */
    public double flowLPerMinAt(double minute) {
        return at(minute).flowLPerMin();
    }

    /** Hotter end of the coil at a minute from lighting, °C; the last one after the end. */
    public double coilCAt(double minute) {
        return at(minute).hotterEndC();
    }

    private StartMoment at(double minute) {
        return moments.stream()
                .filter(moment -> moment.minute() > minute - HALF_A_MOMENT_MIN)
                .findFirst()
                .orElseGet(() -> moments.get(moments.size() - 1));
    }
}

package loftcoil.engine.supply;

import java.util.Map;
import loftcoil.engine.constant.Constants;
import loftcoil.engine.pipe.Fitting;
import loftcoil.engine.pipe.FittingTable;
import loftcoil.engine.pipe.Friction;
import loftcoil.engine.water.Water;

/**
 * Head lost in a pipe against its flow, in metres of the water that flows: (f L/D + ΣK) v²/2g, with K = K1/Re + K∞ of each
 * fitting, summed once. Finite and zero at no flow, growing without end.
 */
final class HeadLoss {

    private static final double JET_TURBULENT_FROM = 4000;

    private final double boreM;
    private final double areaM2;
    private final double lengthM;
    private final double relativeRoughness;
    private final double kinematicM2PerS;
    private final double laminarK1;
    private final double turbulentK;

    HeadLoss(SupplyPipe pipe, double waterC) {
        boreM = pipe.tube().boreM();
        areaM2 = pipe.tube().areaM2();
        lengthM = pipe.lengthM();
        relativeRoughness = pipe.roughnessM() / boreM;
        kinematicM2PerS = Water.viscosityPaS(waterC) / Water.densityKgPerM3(waterC);
        double k1 = 0;
        double k = pipe.otherK();
        for (Map.Entry<String, Integer> entry : pipe.fittings().entrySet()) {
            Fitting fitting = FittingTable.require("fittings", entry.getKey());
            k1 += entry.getValue() * fitting.laminarK1();
            k += entry.getValue() * fitting.turbulentKAt(boreM);
        }
        laminarK1 = k1;
        turbulentK = k;
    }

    double velocityMPerS(double flowM3PerS) {
        return flowM3PerS / areaM2;
    }

    double reynolds(double flowM3PerS) {
        return velocityMPerS(flowM3PerS) * boreM / kinematicM2PerS;
    }

    /** Velocity head v²/2g in m. */
    double velocityHeadM(double flowM3PerS) {
        double v = velocityMPerS(flowM3PerS);
        return v * v / (2 * Constants.GRAVITY_M_PER_S2);
    }

    /** Head lost to friction and fittings in m, at a flow of 0 or more in m³/s. */
    double headM(double flowM3PerS) {
        double re = reynolds(flowM3PerS);
        double v = velocityMPerS(flowM3PerS);
        // Coefficients times Re, so that no flow needs no special case: (f Re L/D + K1 + K∞ Re) ν v / (2 g D).
        double kRe = Friction.darcyTimesReynolds(re, relativeRoughness) * lengthM / boreM + laminarK1 + turbulentK * re;
        return kRe * kinematicM2PerS * v / (2 * Constants.GRAVITY_M_PER_S2 * boreM);
    }

    /**
     * Kinetic energy the jet carries off, in m: α v²/2g. α is 2 for laminar flow and taken as 1 for turbulent (truly 1.03 to 1.1),
     * with a smooth step between Reynolds 2000 and 4000; a narrower one would let the head fall as the flow grows.
     */
    double jetHeadM(double flowM3PerS) {
        double part = (reynolds(flowM3PerS) - Friction.LAMINAR_TO) / (JET_TURBULENT_FROM - Friction.LAMINAR_TO);
        double at = Math.max(0, Math.min(1, part));
        double alpha = 2 - at * at * (3 - 2 * at);
        return alpha * velocityHeadM(flowM3PerS);
    }
}

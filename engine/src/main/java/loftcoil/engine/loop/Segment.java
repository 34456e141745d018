package loftcoil.engine.loop;

import java.util.Map;
import loftcoil.engine.pipe.Fitting;
import loftcoil.engine.pipe.FittingTable;
import loftcoil.engine.pipe.Friction;
import loftcoil.engine.pipe.WoundTube;

/**
 * One run of tube made ready for marching: what does not change from one trial flow to the next. Open to a subclass of the tests,
 * which has the measured resistance of a part of a laboratory's loop in place of {@link #resistancePa}.
 */
class Segment {

    /** Rise over length under which a pipe counts as level: 20 mm a metre. */
    private static final double LEVEL = 0.02;

    final Pipe pipe;
    /** Heat loss; for a coil in a lit fire it is not used. */
    final LossTable loss;

    final boolean coil;
    final double lengthM;
    final double riseM;
    /** Whether it rises and falls so little that water of two densities slides past itself either way. */
    final boolean level;

    final double startLevelM;
    final double boreM;
    final double areaM2;
    /** Bore over area, 1/m. */
    final double borePerAreaPerM;
    /** Bore over the diameter of the winding, 0 where it is not wound. */
    final double curvature;

    final double roughness;
    /** Factor on the friction of straight tube, 1 as computed. */
    final double frictionTimes;
    /** Factor on the Reynolds numbers at which flow turns turbulent, 1 as computed. */
    final double transitionTimes;
    /** Sum of the part of the fittings' loss that goes with 1/Re (two-K method). */
    final double lossPerReynolds;
    /** Sum of the fixed part of the losses, fittings and joints, for forward and for backward flow. */
    final double[] fixedLoss = new double[2];
    /** Loss of a tank's port at this run that goes with 1/Re, for forward and for backward flow. */
    final double[] portPerReynolds = new double[2];

    Segment(Pipe pipe, LossTable loss, boolean coil, double startLevelM) {
        this.pipe = pipe;
        this.loss = loss;
        this.coil = coil;
        this.lengthM = pipe.lengthM();
        this.riseM = pipe.riseM();
        this.level = Math.abs(riseM / lengthM) <= LEVEL;
        this.startLevelM = startLevelM;
        this.boreM = pipe.tube().boreM();
        this.areaM2 = pipe.tube().areaM2();
        this.borePerAreaPerM = boreM / areaM2;
        this.curvature = pipe.windingM() > 0 ? boreM / pipe.windingM() : 0;
        this.roughness = pipe.tube().metal().roughnessM() / boreM;
        this.frictionTimes = 1;
        this.transitionTimes = 1;
        double perReynolds = 0;
        for (Map.Entry<String, Integer> fitting : pipe.fittings().entrySet()) {
            Fitting kind = FittingTable.require(pipe.name() + ".fittings", fitting.getKey());
            perReynolds += fitting.getValue() * kind.laminarK1();
            double fixed = fitting.getValue() * kind.turbulentKAt(boreM);
            fixedLoss[Direction.FORWARD] += fixed;
            fixedLoss[Direction.BACKWARD] += fixed;
        }
        this.lossPerReynolds = perReynolds;
    }

    private Segment(Segment as, UncertaintyFactors trim) {
        this.pipe = as.pipe;
        this.loss = as.loss.times(trim.heatLossTimes());
        this.coil = as.coil;
        this.lengthM = as.lengthM;
        this.riseM = as.riseM;
        this.level = as.level;
        this.startLevelM = as.startLevelM;
        this.boreM = as.boreM;
        this.areaM2 = as.areaM2;
        this.borePerAreaPerM = as.borePerAreaPerM;
        this.curvature = as.curvature;
        this.roughness = Math.min(as.roughness * trim.roughnessTimes(), Friction.ROUGHNESS.high());
        this.frictionTimes = as.frictionTimes * trim.frictionTimes();
        this.transitionTimes = as.transitionTimes * trim.transitionTimes();
        this.lossPerReynolds = as.lossPerReynolds * trim.fittingsTimes();
        for (int direction = 0; direction < fixedLoss.length; direction++) {
            fixedLoss[direction] = as.fixedLoss[direction] * trim.fittingsTimes();
            portPerReynolds[direction] = as.portPerReynolds[direction] * trim.fittingsTimes();
        }
    }

    /** The same run with other resistance and heat loss. */
    Segment trimmed(UncertaintyFactors trim) {
        return new Segment(this, trim);
    }

    double endLevelM() {
        return startLevelM + riseM;
    }

    /** Adds the loss of the tank's port at this run for one direction: {@code entrance} or {@code exit}. */
    void port(String key, int direction) {
        Fitting port = FittingTable.require("port", key);
        portPerReynolds[direction] += port.laminarK1();
        fixedLoss[direction] += port.turbulentKAt(boreM);
    }

    /** Drag of this run at a mass flow, Pa, for one direction. */
    double resistancePa(double flowKgPerS, double reynolds, double densityKgPerM3, int direction) {
        double massFlux = flowKgPerS / areaM2;
        double perReynolds = frictionTimes * darcyTimesReynolds(reynolds) * (lengthM / boreM)
                + lossPerReynolds
                + portPerReynolds[direction];
        return (perReynolds / reynolds + fixedLoss[direction]) * massFlux * massFlux / (2 * densityKgPerM3);
    }

    private double darcyTimesReynolds(double reynolds) {
        return curvature > 0
                ? WoundTube.darcyTimesReynolds(reynolds, roughness, curvature)
                : Friction.darcyTimesReynolds(reynolds, roughness, transitionTimes);
    }
}

package loftcoil.engine.loop;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Follows the water once round the loop at a trial flow. Working space of one search; not shared between threads.
 *
 * <p>In a leg the temperature follows the exact exponential for a pipe of constant loss coefficient and specific heat,
 * {@code T = Ta + (T0 − Ta) exp(−U'x / (w cp))}, with both taken at the leg's own mean temperature. In a lit coil the
 * enthalpy rises evenly along the tube. Mean density and viscosity are Gauss–Legendre integrals of the real properties
 * along each run. The weight is summed as (density − density in the tank) × rise, so that the tank's own column between
 * the ports is part of the circuit and a gap of a few millimetres left by rounded rises cannot pass for a drive.
 */
final class March {

    static final double GRAVITY = 9.80665;

    // Four points on 0..1: exact for polynomials of degree seven.
    private static final GaussIntegrator LEGENDRE = new GaussIntegratorFactory().legendre(4, 0, 1);
    private static final double[] NODE = points(LEGENDRE::getPoint);
    private static final double[] WEIGHT = points(LEGENDRE::getWeight);
    private static final int CLOSER_LOOKS = 4;
    // Around the boiling point at 5000 m; cooler surroundings cannot bring water near it inside a leg.
    private static final double WARM_ENOUGH_TO_BOIL_C = 80;

    private final Segment[] segments;
    private final Limits limits;
    private final double tankC;
    private final double tankDensity;
    private final Firing firing;

    final double[] startC;
    final double[] endC;
    final double[] lostW;
    private double meanDensity;
    private double meanKinematic;
    double drivePa;
    double frictionPa;
    double coilReynolds;
    double returnC;

    March(Segment[] segments, Limits limits, Setting setting) {
        this.segments = segments;
        this.limits = limits;
        this.tankC = setting.tankC();
        this.tankDensity = LiquidTable.densityKgPerM3(tankC);
        this.firing = setting.firing();
        this.startC = new double[segments.length];
        this.endC = new double[segments.length];
        this.lostW = new double[segments.length];
    }

    /** Drive minus resistance, both forward, Pa, at a flow (kg/s, not 0, forward positive). */
    double residualPa(double signedFlow) {
        int direction = signedFlow > 0 ? Direction.FORWARD : Direction.BACKWARD;
        double flow = Math.abs(signedFlow);
        limits.begin(direction);
        drivePa = 0;
        frictionPa = 0;
        double tempC = tankC;
        for (int step = 0; step < segments.length; step++) {
            int i = direction == Direction.FORWARD ? step : segments.length - 1 - step;
            Segment segment = segments[i];
            double leavingC = segment.coil && firing.lit() ? throughFire(i, flow, tempC) : throughLeg(i, flow, tempC);
            startC[i] = direction == Direction.FORWARD ? tempC : leavingC;
            endC[i] = direction == Direction.FORWARD ? leavingC : tempC;
            limits.seen(i, startC[i], endC[i]);
            drivePa -= GRAVITY * (meanDensity - tankDensity) * segment.riseM;
            double reynolds = flow * segment.boreM / (segment.areaM2 * meanKinematic * meanDensity);
            frictionPa += segment.resistancePa(flow, reynolds, meanDensity, direction);
            if (segment.coil) {
                coilReynolds = reynolds;
            }
            tempC = leavingC;
        }
        returnC = tempC;
        return drivePa - Direction.sign(direction) * frictionPa;
    }

    /** How far all water stays inside what can be computed at the last flow, K; negative where it boils or freezes. */
    double roomK() {
        return limits.roomK();
    }

    /** Whether at the last flow freezing is nearer than boiling. */
    boolean freezesFirst() {
        return limits.freezesFirst();
    }

    /** The place nearest to boiling at the last flow. */
    BoilMargin boilMargin() {
        return limits.boilMargin();
    }

    private double throughFire(int i, double flow, double inC) {
        double outC = LiquidTable.warmedC(inC, firing.heatW() / flow);
        lostW[i] = 0;
        double density = 0;
        double kinematic = 0;
        for (int n = 0; n < NODE.length; n++) {
            double tempC = inC + (outC - inC) * NODE[n];
            density += WEIGHT[n] * LiquidTable.densityKgPerM3(tempC);
            kinematic += WEIGHT[n] * LiquidTable.kinematicM2PerS(tempC);
        }
        meanDensity = density;
        meanKinematic = kinematic;
        return outC;
    }

    private double throughLeg(int i, double flow, double inC) {
        Segment segment = segments[i];
        double aroundC = segment.loss.aroundC();
        double apart = inC - aroundC;
        double midC = inC;
        double units = 0;
        double outC = inC;
        double before;
        int looks = 0;
        do {
            before = outC;
            double conductance = segment.loss.wPerMK(midC) * segment.lengthM;
            units = conductance / (flow * meanHeat(inC, outC));
            midC = aroundC + apart * meanPart(units);
            outC = aroundC + apart * Math.exp(-units);
        } while (Math.abs(outC - before) > 1e-6 && ++looks < CLOSER_LOOKS);
        lostW[i] = segment.loss.wPerMK(midC) * segment.lengthM * (midC - aroundC);
        means(aroundC, apart, units);
        if (outC > inC && aroundC > WARM_ENOUGH_TO_BOIL_C) {
            limits.seenInside(i, new Limits.Warming(aroundC, apart, units));
        }
        return outC;
    }

    /**
     * Mean density and viscosity along a leg. With y = exp(−units x) the integral of f(T) over the leg is
     * {@code f(Ta) + apart/units ∫ (f(T) − f(Ta))/(T − Ta) dy} from exp(−units) to 1: smooth however short the leg's
     * exponential is, where nodes spread evenly along the leg would miss a steep beginning.
     */
    private void means(double aroundC, double apart, double units) {
        double baseC = Math.min(Math.max(aroundC, 0), 110);
        double baseDensity = LiquidTable.densityKgPerM3(baseC);
        double baseKinematic = LiquidTable.kinematicM2PerS(baseC);
        double least = Math.exp(-units);
        double density = 0;
        double kinematic = 0;
        for (int n = 0; n < NODE.length; n++) {
            double y = least + (1 - least) * NODE[n];
            double difference = apart * y;
            if (Math.abs(difference) > 1e-9) {
                double tempC = aroundC + difference;
                density += WEIGHT[n] * (LiquidTable.densityKgPerM3(tempC) - baseDensity) / difference;
                kinematic += WEIGHT[n] * (LiquidTable.kinematicM2PerS(tempC) - baseKinematic) / difference;
            }
        }
        double scale = apart * meanPart(units);
        meanDensity = baseDensity + scale * density;
        meanKinematic = baseKinematic + scale * kinematic;
    }

    /** (1 − exp(−n))/n, 1 at n = 0. */
    private static double meanPart(double units) {
        return units < 1e-9 ? 1 - units / 2 : -Math.expm1(-units) / units;
    }

    private static double meanHeat(double oneC, double otherC) {
        double difference = oneC - otherC;
        return Math.abs(difference) < 1e-3
                ? LiquidTable.specificHeatJPerKgK((oneC + otherC) / 2)
                : (LiquidTable.enthalpyJPerKg(oneC) - LiquidTable.enthalpyJPerKg(otherC)) / difference;
    }

    private static double[] points(IntToDoubleFunction one) {
        return IntStream.range(0, LEGENDRE.getNumberOfPoints()).mapToDouble(one).toArray();
    }
}

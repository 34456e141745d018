package loftcoil.engine.loop;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import loftcoil.engine.constant.Constants;
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

    // Points on 0..1; four are exact for polynomials of degree seven, two of degree three.
    private static final GaussIntegrator FOUR = new GaussIntegratorFactory().legendre(4, 0, 1);
    private static final GaussIntegrator TWO = new GaussIntegratorFactory().legendre(2, 0, 1);
    private static final double[] FINE = points(FOUR.getNumberOfPoints(), FOUR::getPoint);
    private static final double[] FINE_WEIGHT = points(FOUR.getNumberOfPoints(), FOUR::getWeight);
    private static final double[] COARSE = points(TWO.getNumberOfPoints(), TWO::getPoint);
    private static final double[] COARSE_WEIGHT = points(TWO.getNumberOfPoints(), TWO::getWeight);

    private static final double SMALL_CHANGE_K = 0.5;
    private static final double COARSE_TO_K = 4;
    private static final double FINE_FROM_K = 5;
    /**
     * Share of the leg's temperature difference by which its mean may have moved, times how many times its loss is what its flow holds: the
     * loss goes with no more than the fourth root of the difference, so that what a further settling would move is an eighth of that.
     */
    private static final double SAME = 2e-9;

    /** The same where only the sign of the residual is asked for. */
    private static final double ROUGHLY_SAME = 1e-4;
    /** Many times what that leaves open, as a share of all pushes and resistance together. */
    private static final double OPEN = 1e-3;

    private static final int MOST_PASSES = 40;
    /** The loss goes with no more than the fourth root of the difference; a little room for a table's parabolas. */
    private static final double MOST_POWER = 0.4;
    /** Water so near to its surroundings pushes by less than a millionth of what is told. */
    private static final double HARDLY_APART_K = 1e-3;
    /** Water is densest a little under this. */
    private static final double DENSEST_C = 4;
    /** Share by which two mean differences must be apart for their losses to tell the power. */
    private static final double TELLS_OF_POWER = 1e-6;
    /** Change of an exponent up to which a few terms of the series do. */
    private static final double SERIES_TO = 1e-3;
    // Around the boiling point at 5000 m; cooler surroundings cannot bring water near it inside a leg.
    private static final double WARM_ENOUGH_TO_BOIL_C = 80;

    /** Loss over heat of a leg at the last trial flow that way, to start the next from; 0 where there was none. */
    private final double[] lossPerHeat;
    /** Power of the mean difference that the loss of a leg goes with, as it was last seen. */
    private final double[] lossPower;

    private double same = SAME;
    /** Pushes of all legs together, whichever way each pushes. */
    private double weightPa;

    private final Segment[] segments;
    final LiquidTable liquid;
    private final Limits limits;
    private final double tankC;
    private final double tankDensity;
    private final Firing firing;
    /** Push of the tank's own column between its ports, over one as dense as the water that enters; 0 in a uniform tank. */
    private final double columnPa;

    final double[] startC;
    final double[] endC;
    /** Mean temperature of each run. */
    final double[] midC;

    /** Density and viscosity of water as warm as the surroundings of each leg. */
    private final double[] aroundDensity;

    private final double[] aroundKinematic;

    private double density;
    private double kinematic;
    private double meanDensity;
    private double meanKinematic;
    double drivePa;
    double frictionPa;
    double coilReynolds;
    double returnC;
    private int evaluations;
    private int passes;
    private int lastDirection = Direction.FORWARD;
    private double lastFlow;
    private double exchange;
    private double leastExchange;
    /** Push of each leg at the last flow, forward, Pa. */
    private final double[] legPa;

    private final boolean evenlyAround;

    March(Segment[] segments, Limits limits, Setting setting, double portsApartM, LiquidTable liquid) {
        this.segments = segments;
        this.liquid = liquid;
        this.limits = limits;
        this.tankC = setting.tankC();
        this.tankDensity = liquid.densityKgPerM3(tankC);
        this.firing = setting.firing();
        this.columnPa = Constants.GRAVITY_M_PER_S2 * (setting.columnKgPerM3() - tankDensity) * portsApartM;
        this.startC = new double[segments.length];
        this.endC = new double[segments.length];
        this.midC = new double[segments.length];
        this.lossPerHeat = new double[segments.length];
        this.lossPower = new double[segments.length];
        this.legPa = new double[segments.length];
        this.aroundDensity = new double[segments.length];
        this.aroundKinematic = new double[segments.length];
        for (int i = 0; i < segments.length; i++) {
            aroundDensity[i] = liquid.densityKgPerM3(segments[i].loss.aroundC());
            aroundKinematic[i] = liquid.kinematicM2PerS(segments[i].loss.aroundC());
        }
        this.evenlyAround = !firing.lit()
                && Arrays.stream(segments)
                                .mapToDouble(leg -> leg.loss.aroundC())
                                .distinct()
                                .count()
                        == 1
                && Math.min(tankC, segments[0].loss.aroundC()) > DENSEST_C;
    }

    /** Trial flows followed round the loop since it was made. */
    int evaluations() {
        return evaluations;
    }

    /** Flow of the last trial, kg/s, forward positive; 0 where there was none. */
    double signedFlow() {
        return lastFlow;
    }

    /** Loss over heat carried of all legs together at the last flow: where it is under 1, water reaches no leg's surroundings. */
    double exchange() {
        return exchange;
    }

    /**
     * Whether each leg pushes the one way alone the faster the water is: the fire is out and the surroundings are equally warm all round, so that
     * every place of the loop comes nearer to the tank's temperature, and its water, warmer than where it is densest, nearer to the tank's
     * density.
     */
    boolean evenlyAround() {
        return evenlyAround;
    }

    /** Push of each leg at the last flow, forward, Pa; a copy. */
    double[] legPa() {
        return legPa.clone();
    }

    /**
     * Loss over heat carried of the leg that has the least of those that are entered by water not as warm as around them; infinite where
     * there is none. Where it is large, water is as warm as its surroundings all along but for the beginning of legs.
     */
    double leastExchange() {
        return leastExchange;
    }

    /** Settlings of a leg's own mean temperature since it was made; each reads the loss and the heat of its water once. */
    int passes() {
        return passes;
    }

    /** Drive minus resistance, both forward, Pa, at a flow (kg/s, not 0, forward positive). */
    double residualPa(double signedFlow) {
        same = SAME;
        return follow(signedFlow);
    }

    /**
     * The same with the means of legs settled to a ten thousandth, in two thirds of the work; whether that tells the sign, {@link #sureOfSign} says.
     */
    double roughlyPa(double signedFlow) {
        same = ROUGHLY_SAME;
        return follow(signedFlow);
    }

    /** Whether the sign of a residual that was found roughly is that of the true one. */
    boolean sureOfSign(double residualPa) {
        return Math.abs(residualPa) > OPEN * (frictionPa + weightPa);
    }

    private double follow(double signedFlow) {
        int direction = signedFlow > 0 ? Direction.FORWARD : Direction.BACKWARD;
        double flow = Math.abs(signedFlow);
        evaluations++;
        lastFlow = signedFlow;
        exchange = 0;
        leastExchange = firing.lit() ? 0 : Double.POSITIVE_INFINITY;
        if (direction != lastDirection) {
            Arrays.fill(lossPerHeat, 0);
            lastDirection = direction;
        }
        limits.begin(direction);
        drivePa = columnPa;
        weightPa = Math.abs(columnPa);
        frictionPa = 0;
        double tempC = tankC;
        for (int step = 0; step < segments.length; step++) {
            int i = direction == Direction.FORWARD ? step : segments.length - 1 - step;
            Segment segment = segments[i];
            double leavingC = segment.coil && firing.lit() ? throughFire(i, flow, tempC) : throughLeg(i, flow, tempC);
            startC[i] = direction == Direction.FORWARD ? tempC : leavingC;
            endC[i] = direction == Direction.FORWARD ? leavingC : tempC;
            if (step == 0) {
                limits.entering(i, tempC);
            }
            limits.leaving(i, leavingC);
            double pushPa = Constants.GRAVITY_M_PER_S2 * (meanDensity - tankDensity) * segment.riseM;
            legPa[i] = -pushPa;
            drivePa -= pushPa;
            weightPa += Math.abs(pushPa);
            double reynolds = flow * segment.borePerAreaPerM / (meanKinematic * meanDensity);
            frictionPa += segment.resistancePa(flow, reynolds, meanDensity, direction);
            if (segment.coil) {
                coilReynolds = reynolds;
            }
            tempC = leavingC;
        }
        returnC = tempC;
        return drivePa - Direction.sign(direction) * frictionPa;
    }

    /** Push of the tank's own column over one as dense as the water that enters, Pa. */
    double columnPa() {
        return columnPa;
    }

    /** Heat that run lost at the last flow, W: its coefficient at its mean temperature over its length. */
    double lostW(int i) {
        Segment segment = segments[i];
        return segment.coil && firing.lit()
                ? 0
                : segment.loss.wPerMK(midC[i]) * segment.lengthM * (midC[i] - segment.loss.aroundC());
    }

    /** How far all water stays inside what can be computed at the last flow, K; negative where it boils or freezes. */
    double boilMarginK() {
        return limits.boilMarginK();
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
        double outC = liquid.warmedC(inC, firing.heatW() / flow);
        midC[i] = (inC + outC) / 2;
        density = 0;
        kinematic = 0;
        for (int n = 0; n < FINE.length; n++) {
            add(FINE_WEIGHT[n], inC + (outC - inC) * FINE[n]);
        }
        meanDensity = density;
        meanKinematic = kinematic;
        return outC;
    }

    private double throughLeg(int i, double flow, double inC) {
        Segment segment = segments[i];
        double aroundC = segment.loss.aroundC();
        double apart = inC - aroundC;
        double perHeat = segment.lengthM / flow;
        // Loss and heat hardly change from one trial flow to the next.
        double loss = lossPerHeat[i];
        double units = loss * perHeat;
        double decay = Math.exp(-units);
        double part = meanPart(units, decay);
        double meanApart = apart * part;
        boolean settled = false;
        double lossFound = 0;
        double meanOfThat = 0;
        for (int pass = 0; pass < MOST_PASSES && !settled; pass++) {
            double found = segment.loss.wPerMK(aroundC + meanApart) / meanHeat(inC, aroundC + apart * decay);
            if (pass > 0 && Math.abs(meanApart - meanOfThat) > TELLS_OF_POWER * Math.abs(meanOfThat)) {
                double power = (found / lossFound - 1) / (meanApart / meanOfThat - 1);
                lossPower[i] = Math.min(Math.max(power, 0), MOST_POWER);
            }
            lossFound = found;
            meanOfThat = meanApart;
            // A greater loss brings the mean nearer to the surroundings, and so a smaller loss: Newton's step along
            // that.
            loss += (found - loss) / (1 + lossPower[i] * (1 - decay / part));
            double more = loss * perHeat - units;
            units += more;
            decay = Math.abs(more) < SERIES_TO ? decay * littleDecay(more) : Math.exp(-units);
            part = meanPart(units, decay);
            meanApart = apart * part;
            settled = Math.abs(meanApart - meanOfThat) * Math.min(units, 1) <= same * Math.abs(meanApart);
            passes++;
        }
        lossPerHeat[i] = loss;
        exchange += units;
        if (units < leastExchange && Math.abs(apart) > HARDLY_APART_K) {
            leastExchange = units;
        }
        double outC = aroundC + apart * decay;
        midC[i] = aroundC + meanApart;
        means(i, meanApart, apart, decay);
        if (outC > inC && aroundC > WARM_ENOUGH_TO_BOIL_C) {
            limits.seenInside(i, new Limits.Warming(aroundC, apart, units));
        }
        return outC;
    }

    /**
     * Mean density and viscosity along a leg. With y = exp(−units x) the integral of f(T) over the leg is
     * {@code f(Ta) + apart/units ∫ (f(T) − f(Ta))/(T − Ta) dy} from exp(−units) to 1: smooth however short the leg's
     * exponential is, where nodes spread evenly along the leg would miss a steep beginning. Two nodes do where the leg
     * changes by a few kelvin. From there to where four are needed both are taken in growing shares: a jump from one to the other
     * would leave a flow at which drive and resistance never meet.
     */
    private void means(int i, double meanApart, double apart, double decay) {
        double aroundC = segments[i].loss.aroundC();
        double baseDensity = aroundDensity[i];
        double baseKinematic = aroundKinematic[i];
        meanDensity = baseDensity;
        meanKinematic = baseKinematic;
        double changeK = Math.abs(apart * (1 - decay));
        double fine = Math.max(0, Math.min(1, (changeK - COARSE_TO_K) / (FINE_FROM_K - COARSE_TO_K)));
        for (int n = 0; fine < 1 && n < COARSE.length; n++) {
            addNode(
                    (1 - fine) * COARSE_WEIGHT[n] * meanApart,
                    aroundC,
                    apart * (decay + (1 - decay) * COARSE[n]),
                    baseDensity,
                    baseKinematic);
        }
        for (int n = 0; fine > 0 && n < FINE.length; n++) {
            addNode(
                    fine * FINE_WEIGHT[n] * meanApart,
                    aroundC,
                    apart * (decay + (1 - decay) * FINE[n]),
                    baseDensity,
                    baseKinematic);
        }
    }

    private void addNode(double weight, double aroundC, double difference, double baseDensity, double baseKinematic) {
        if (Math.abs(difference) > 1e-9) {
            density = 0;
            kinematic = 0;
            add(1, aroundC + difference);
            double share = weight / difference;
            meanDensity += share * (density - baseDensity);
            meanKinematic += share * (kinematic - baseKinematic);
        }
    }

    private void add(double weight, double tempC) {
        int cell = LiquidTable.cell(tempC);
        double x = LiquidTable.within(tempC, cell);
        density += weight * liquid.density(cell, x);
        kinematic += weight * liquid.kinematic(cell, x);
    }

    /** exp(−n) of a number under a thousandth, to 1e-14. */
    private static double littleDecay(double n) {
        return 1 - n * (1 - n * (0.5 - n * (1.0 / 6 - n / 24)));
    }

    /** (1 − exp(−n))/n from n and its exp(−n). */
    private static double meanPart(double units, double decay) {
        return units < 1e-4 ? 1 - units / 2 + units * units / 6 : (1 - decay) / units;
    }

    private double meanHeat(double oneC, double otherC) {
        double difference = oneC - otherC;
        return Math.abs(difference) < SMALL_CHANGE_K
                ? liquid.specificHeatJPerKgK((oneC + otherC) / 2)
                : (liquid.enthalpyJPerKg(oneC) - liquid.enthalpyJPerKg(otherC)) / difference;
    }

    private static double[] points(int count, IntToDoubleFunction one) {
        return IntStream.range(0, count).mapToDouble(one).toArray();
    }
}

package loftcoil.engine.run;

import java.util.stream.IntStream;
import loftcoil.engine.sun.WindowYear;
import loftcoil.engine.tank.LayerPlan;
import loftcoil.engine.tank.TankLoss;
import loftcoil.engine.tank.WaterHeat;
import loftcoil.engine.water.Water;
import org.hipparchus.ode.OrdinaryDifferentialEquation;

/**
 * The equations of tank and loop that the march steps through, written as rates for a general integrator: heat per kilogram of each
 * layer. Plug flow with the same limited slopes at vanishing step, the same loop table, the same losses and conduction. What
 * the march does at once, turning over where warm water lies under cold, is a strong exchange here.
 */
final class TankLoopEquations implements OrdinaryDifferentialEquation {

    /** Exchange of layers the wrong way round, W/K: an inversion of a tenth of a kelvin carries 50 W. */
    private static final double TURNOVER_W_PER_K = 500;

    private static final double[] CONDUCTIVITY = IntStream.range(0, 110)
            .mapToDouble(c -> Water.conductivityWPerMK(c + 0.5))
            .toArray();

    private final LoopTable table;
    private final LoopReading reading = new LoopReading();
    private final SystemPlan plan;
    private final int layers;
    private final double[] kg;
    private final double[] shareOfKg;
    private final double[] tempC;
    private final double[] heatW;
    private final double[] areaOverThicknessM;
    private final boolean cutAtPorts;
    private final int cold;
    private final int coldFromBelow;
    private final int back;
    private final int backFromBelow;
    private final double[] columnShare;

    boolean lit;
    /** Minute of the year, for the sun; it does not change within a piece. */
    int minute;

    TankLoopEquations(SystemPlan plan) {
        this.plan = plan;
        table = plan.loop().cold();
        LayerPlan cut = plan.layers();
        layers = cut.layers();
        double[] levels = cut.cutsM();
        double[] below = cut.cutsM3();
        kg = new double[layers];
        shareOfKg = new double[layers];
        areaOverThicknessM = new double[layers];
        for (int i = 0; i < layers; i++) {
            kg[i] = (below[i + 1] - below[i]) * Water.densityKgPerM3(10);
            shareOfKg[i] = (below[i + 1] - below[i]) / below[layers];
            if (i > 0) {
                areaOverThicknessM[i] = cut.shape().footprintM2() / ((levels[i + 1] - levels[i - 1]) / 2);
            }
        }
        tempC = new double[layers];
        heatW = new double[layers];
        cutAtPorts = cut.cutAtPorts();
        int under = cutAtPorts ? 1 : 0;
        cold = layerAbove(cut.ports().coldM(), levels);
        coldFromBelow = Math.max(0, cold - under);
        back = layerAbove(cut.ports().returnM(), levels);
        backFromBelow = Math.max(0, back - under);
        columnShare = new double[layers];
        for (int i = 0; i < layers; i++) {
            double low = Math.max(cut.ports().coldM(), levels[i]);
            double high = Math.min(cut.ports().returnM(), levels[i + 1]);
            columnShare[i] =
                    Math.max(0, high - low) / (cut.ports().returnM() - cut.ports().coldM());
        }
    }

    /** The layer at a port; where layers end at the ports, the one above the end nearest to it. */
    private int layerAbove(double portM, double[] levels) {
        int at = 0;
        while (at + 1 < layers && levels[at + 1] <= portM + 1e-9) {
            at++;
        }
        return cutAtPorts && levels[at + 1] - portM < portM - levels[at] ? Math.min(layers - 1, at + 1) : at;
    }

    @Override
    public int getDimension() {
        return layers;
    }

    @Override
    public double[] computeDerivatives(double seconds, double[] jPerKg) {
        double[] rates = new double[layers];
        double mean = 0;
        for (int i = 0; i < layers; i++) {
            tempC[i] = WaterHeat.tempC(jPerKg[i]);
            heatW[i] = 0;
            mean += tempC[i] * shareOfKg[i];
        }
        double meanC = mean;
        losses(plan.losses().at(meanC));
        plan.window().ifPresent(window -> sun(window, meanC));
        conduction();
        loop(jPerKg);
        for (int i = 0; i < layers; i++) {
            rates[i] = heatW[i] / kg[i];
        }
        return rates;
    }

    private void losses(TankLoss loss) {
        double aroundC = plan.design().tank().aroundC();
        for (int i = 0; i < layers; i++) {
            double wPerK = loss.sideWPerK() * shareOfKg[i]
                    + (i == layers - 1 ? loss.topWPerK() : 0)
                    + (i == 0 ? loss.bottomWPerK() : 0);
            heatW[i] -= wPerK * (tempC[i] - aroundC);
        }
    }

    /** As the march: the loss through the panes straight over six kelvin about the mean. */
    private void sun(WindowYear window, double meanC) {
        double creditedM2 = plan.design().creditedM2();
        double losingM2 = plan.design().seenFace().orElseThrow().losingM2(plan.design().window().orElseThrow().areaM2());
        double lowC = Math.min(Math.max(meanC - 3, 0), 104);
        double low = window.lossAtMinuteWPerM2(minute, lowC);
        double slope = (window.lossAtMinuteWPerM2(minute, lowC + 6) - low) / 6;
        double gain = window.absorbedWPerM2(minute);
        for (int i = 0; i < layers; i++) {
            heatW[i] += (creditedM2 * gain - losingM2 * (low + slope * (tempC[i] - lowC))) * shareOfKg[i];
        }
    }

    private void conduction() {
        int middleC = (int) Math.max(0, Math.min(109, tempC[layers / 2]));
        double perM = CONDUCTIVITY[middleC];
        for (int i = 1; i < layers; i++) {
            double difference = tempC[i] - tempC[i - 1];
            double still = perM * areaOverThicknessM[i];
            double down = (difference < 0 ? still + TURNOVER_W_PER_K : still) * difference;
            heatW[i - 1] += down;
            heatW[i] -= down;
        }
    }

    private void loop(double[] jPerKg) {
        double column = 0;
        for (int i = 0; i < layers; i++) {
            column += columnShare[i] * TankColumn.density(tempC[i]);
        }
        double coldJPerKg = leaving(jPerKg, cold, -1);
        double backJPerKg = leaving(jPerKg, backFromBelow, 1);
        double coldC = WaterHeat.tempC(coldJPerKg);
        double backC = WaterHeat.tempC(backJPerKg);
        double coldDensity = TankColumn.density(coldC);
        double backDensity = TankColumn.density(backC);
        if (lit) {
            table.lit().read(coldC, column - coldDensity, reading);
            if (reading.boilMarginK() > 0) {
                pass(jPerKg, back, cold, coldJPerKg, reading.heatW() - reading.lostW());
            }
        } else if (table.staticDrivePa(coldDensity, column) > 0) {
            table.outForward().read(coldC, column - coldDensity, reading);
            pass(jPerKg, back, cold, coldJPerKg, -reading.lostW());
        } else if (table.staticDrivePa(backDensity, column) < 0) {
            table.outBackward().read(backC, column - backDensity, reading);
            pass(jPerKg, coldFromBelow, backFromBelow, backJPerKg, -reading.lostW());
        }
    }

    /** Heat of what leaves by a layer: its mean, or what is at its far edge where the port is there. */
    private double leaving(double[] jPerKg, int out, int way) {
        double own = jPerKg[out];
        int behind = out - way;
        int ahead = out + way;
        return cutAtPorts && behind >= 0 && ahead >= 0 && behind < layers && ahead < layers
                ? own + slope(own - jPerKg[behind], jPerKg[ahead] - own) / 2
                : own;
    }

    private void pass(double[] jPerKg, int near, int out, double leavingTank, double heat) {
        double flow = reading.flowKgPerS();
        if (!(flow > 0)) {
            return;
        }
        double entering = leavingTank + heat / flow;
        int i = near;
        while (i + 1 < layers && jPerKg[i + 1] < entering) {
            i++;
        }
        while (i > 0 && jPerKg[i - 1] > entering) {
            i--;
        }
        int way = Integer.signum(out - i);
        double arriving = entering;
        double behind = entering;
        for (; i != out; i += way) {
            double own = jPerKg[i];
            double leaving = own + slope(own - behind, jPerKg[i + way] - own) / 2;
            heatW[i] += flow * (arriving - leaving);
            behind = own;
            arriving = leaving;
        }
        heatW[out] += flow * (arriving - leavingTank);
    }

    private static double slope(double behind, double ahead) {
        if (!(behind * ahead > 0)) {
            return 0;
        }
        double least = Math.min(2 * Math.min(Math.abs(behind), Math.abs(ahead)), Math.abs(behind + ahead) / 2);
        return Math.copySign(least, behind);
    }
}

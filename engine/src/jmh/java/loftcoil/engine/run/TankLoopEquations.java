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
    private final double layerKg;
    private final double[] tempC;
    private final double[] heatW;
    private final double areaOverThicknessM;
    private final int cold;
    private final int back;
    private final double[] columnShare;

    boolean lit;
    /** Minute of the year, for the sun; it does not change within a piece. */
    int minute;

    TankLoopEquations(SystemPlan plan) {
        this.plan = plan;
        table = plan.loop().cold();
        LayerPlan cut = plan.layers();
        layers = cut.layers();
        double thicknessM = cut.ports().waterlineM() / layers;
        layerKg = cut.shape().footprintM2() * Water.densityKgPerM3(10) * thicknessM;
        tempC = new double[layers];
        heatW = new double[layers];
        areaOverThicknessM = cut.shape().footprintM2() / thicknessM;
        cold = (int) (cut.ports().coldM() / thicknessM);
        back = (int) (cut.ports().returnM() / thicknessM);
        columnShare = new double[layers];
        for (int i = cold; i <= back; i++) {
            double low = Math.max(cut.ports().coldM(), i * thicknessM);
            double high = Math.min(cut.ports().returnM(), (i + 1) * thicknessM);
            columnShare[i] =
                    Math.max(0, high - low) / (cut.ports().returnM() - cut.ports().coldM());
        }
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
            mean += tempC[i] / layers;
        }
        losses(plan.losses().at(mean));
        plan.window().ifPresent(window -> sun(window, mean(tempC)));
        conduction();
        loop(jPerKg);
        for (int i = 0; i < layers; i++) {
            rates[i] = heatW[i] / layerKg;
        }
        return rates;
    }

    private void losses(TankLoss loss) {
        double aroundC = plan.design().tank().aroundC();
        for (int i = 0; i < layers; i++) {
            double wPerK = loss.sideWPerK() / layers
                    + (i == layers - 1 ? loss.topWPerK() : 0)
                    + (i == 0 ? loss.bottomWPerK() : 0);
            heatW[i] -= wPerK * (tempC[i] - aroundC);
        }
    }

    private static double mean(double[] tempC) {
        double sum = 0;
        for (double one : tempC) {
            sum += one;
        }
        return sum / tempC.length;
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
            heatW[i] += (creditedM2 * gain - losingM2 * (low + slope * (tempC[i] - lowC))) / layers;
        }
    }

    private void conduction() {
        int middleC = (int) Math.max(0, Math.min(109, tempC[layers / 2]));
        double still = CONDUCTIVITY[middleC] * areaOverThicknessM;
        for (int i = 1; i < layers; i++) {
            double difference = tempC[i] - tempC[i - 1];
            double down = (difference < 0 ? still + TURNOVER_W_PER_K : still) * difference;
            heatW[i - 1] += down;
            heatW[i] -= down;
        }
    }

    private void loop(double[] jPerKg) {
        double column = 0;
        for (int i = cold; i <= back; i++) {
            column += columnShare[i] * TankColumn.density(tempC[i]);
        }
        double coldDensity = TankColumn.density(tempC[cold]);
        double backDensity = TankColumn.density(tempC[back]);
        if (lit) {
            table.lit().read(tempC[cold], column - coldDensity, reading);
            if (reading.boilMarginK() > 0) {
                double entering = jPerKg[cold] + (reading.heatW() - reading.lostW()) / reading.flowKgPerS();
                pass(jPerKg, back, cold, entering);
            }
        } else if (table.staticDrivePa(coldDensity, column) > 0) {
            table.outForward().read(tempC[cold], column - coldDensity, reading);
            if (reading.flowKgPerS() > 0) {
                pass(jPerKg, back, cold, jPerKg[cold] - reading.lostW() / reading.flowKgPerS());
            }
        } else if (table.staticDrivePa(backDensity, column) < 0) {
            table.outBackward().read(tempC[back], column - backDensity, reading);
            if (reading.flowKgPerS() > 0) {
                pass(jPerKg, cold, back, jPerKg[back] - reading.lostW() / reading.flowKgPerS());
            }
        }
    }

    private void pass(double[] jPerKg, int near, int out, double entering) {
        double flow = reading.flowKgPerS();
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
        heatW[out] += flow * (arriving - jPerKg[out]);
    }

    private static double slope(double behind, double ahead) {
        if (!(behind * ahead > 0)) {
            return 0;
        }
        double least = Math.min(2 * Math.min(Math.abs(behind), Math.abs(ahead)), Math.abs(behind + ahead) / 2);
        return Math.copySign(least, behind);
    }
}

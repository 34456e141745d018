package loftcoil.engine.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.water.Water;
import org.junit.jupiter.api.Test;

/** How far the table of a march is from the search it is made of, at random places between its nodes. */
class LoopTableLawTest {

    private static final int PLACES = 300;
    private static final double BOIL_C = 97.8;
    private static final Design BOTHY = Example.orchardBothy();
    private static final double HEAT_W = 2000;
    private static final Circuit LIT = BOTHY.circuit(40);
    private static final Circuit OUT = BOTHY.circuitFireOut(40);
    private static final LoopTable TABLE = LoopTable.of(LIT, OUT, CoilHeating.stated(HEAT_W), BOIL_C);

    private final Random random = new Random(20_240_601);
    private final LoopReading reading = new LoopReading();

    /** A place as a tank in layers can have it: column anywhere from cold to boiling, lighter going up. */
    private double column(double enteringC, boolean forward) {
        double otherC =
                forward ? enteringC + (BOIL_C - enteringC) * random.nextDouble() : enteringC * random.nextDouble();
        return Water.densityKgPerM3(otherC);
    }

    @Test
    void litFlowIsWithinOnePercentAndTheEdgeOfBoilingWithinAQuarterOfAKelvin() {
        int flowing = 0;
        int still = 0;
        for (int i = 0; i < PLACES; i++) {
            double coldC = BOIL_C * random.nextDouble();
            double column = column(coldC, true);
            Optional<LoopPoint> real = LoopTable.lit(LIT.onLayers(coldC, column), CoilHeating.stated(HEAT_W));
            TABLE.lit().read(coldC, column - Water.densityKgPerM3(coldC), reading);
            String place = coldC + " °C, column " + column;
            if (real.isEmpty()) {
                still++;
                assertTrue(reading.boilMarginK() < 0.25, "boils in the search, not in the table: " + place);
                continue;
            }
            flowing++;
            assertEquals(real.get().boilMarginK(), reading.boilMarginK(), 0.25, "room at " + place);
            assertEquals(1, reading.flowKgPerS() / real.get().flowKgPerS(), 0.01, "flow at " + place);
            assertEquals(real.get().lostW(), reading.lostW(), 0.005 * HEAT_W, "loss at " + place);
            assertEquals(HEAT_W, reading.heatW(), 1e-6, "heat at " + place);
        }
        assertTrue(flowing > PLACES / 4 && still > 5, flowing + " flow, " + still + " do not");
    }

    /** The worst is where water near 4 °C is heaviest and the drift sets in at once; the rest is within tenths of a watt. */
    @Test
    void nightLossIsWithinThreeWattsAndATenthOnAverage() {
        int drifting = 0;
        double worstW = 0;
        double sumW = 0;
        for (int i = 0; i < PLACES; i++) {
            boolean forward = random.nextBoolean();
            double enteringC = BOIL_C * random.nextDouble();
            double column = column(enteringC, forward);
            double density = Water.densityKgPerM3(enteringC);
            Circuit layered = OUT.onLayers(enteringC, column);
            double staticPa = layered.search().staticDrivePa();
            assertEquals(staticPa, TABLE.staticDrivePa(density, column), 1e-3, "static drive");
            if (staticPa > 0 != forward) {
                continue;
            }
            Optional<LoopPoint> real = LoopTable.out(layered, forward);
            (forward ? TABLE.outForward() : TABLE.outBackward()).read(enteringC, column - density, reading);
            double realLostW = real.map(LoopPoint::lostW).orElse(0.0);
            double apartW = Math.abs(reading.lostW() - realLostW);
            worstW = Math.max(worstW, apartW);
            sumW += apartW;
            drifting++;
        }
        assertTrue(drifting > PLACES / 8, drifting + " drift");
        assertTrue(worstW < 3, worstW + " W at worst");
        assertTrue(sumW / drifting < 0.15, sumW / drifting + " W on average");
    }
}

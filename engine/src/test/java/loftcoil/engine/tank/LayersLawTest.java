package loftcoil.engine.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.water.Water;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

/** The layers against closed solutions of the heat and transport equations. */
class LayersLawTest {

    private static final UprightCylinder TALL = new UprightCylinder(0.2, 1.0);

    private static Layers tank(int layers, double startC) {
        return new Layers(new LayerPlan(TALL, new Ports(0, 0.9, 0.995, 1.0, 0), layers, startC, 100));
    }

    /** A stirred tank cools by T − T∞ ~ exp(−UA t / (m cp)), with cp at the mean temperature: cp moves 0.1 % over 20 K. */
    @Test
    void stirredTankCoolsExponentially() {
        Layers tank = tank(1, 60);
        TankSurroundings around = new TankSurroundings(1).loss(new TankLoss(3, 1, 1), 15);
        double tau = tank.massKg() * Water.specificHeatJPerKgK(50) / 5;
        for (int minute = 1; minute <= 36 * 60; minute++) {
            tank.rest(60, around);
            if (minute % 360 == 0) {
                assertEquals(15 + 45 * Math.exp(-minute * 60 / tau), tank.meanC(), 0.02);
            }
        }
    }

    @Test
    void oneLongRestIsAsGoodAsManyShortOnes() {
        Layers once = tank(1, 80);
        Layers often = tank(1, 80);
        TankSurroundings around = new TankSurroundings(1)
                .loss(new TankLoss(20, 5, 5), 10)
                .window(3, -10)
                .sun(400);
        once.rest(36_000, around);
        for (int i = 0; i < 36_000; i++) {
            often.rest(1, around);
        }
        assertEquals(often.meanC(), once.meanC(), 0.01);
    }

    /** With sun on it a stirred tank settles where gain equals loss: T∞ = (ΣGT + P)/ΣG. */
    @Test
    void stirredTankSettlesWhereGainEqualsLoss() {
        Layers tank = tank(1, 20);
        TankSurroundings around = new TankSurroundings(1)
                .loss(new TankLoss(8, 1, 1), 15)
                .window(5, -5)
                .sun(300);
        for (int i = 0; i < 60; i++) {
            tank.rest(86_400, around);
        }
        assertEquals((10 * 15 + 5 * -5 + 300) / 15.0, tank.meanC(), 1e-6);
    }

    /** A front pushed up from the base reaches the port when as much has been drawn as stood below it: t = V/Q. */
    @Test
    void frontArrivesAsAPlug() {
        double before = Double.POSITIVE_INFINITY;
        for (int layers : new int[] {20, 40, 80, 160}) {
            Layers tank = tank(layers, 60);
            double below = tank.massKg() * (1 - 0.5 / layers);
            double arrival = 0;
            double early = 0;
            double late = 0;
            for (double drawn = 0; drawn < 1.5 * below; drawn += 0.25) {
                double c = tank.drawC();
                early = c > 59 ? drawn : early;
                arrival = c > 35 ? drawn : arrival;
                late = c > 11 ? drawn : late;
                assertEquals(0.25, tank.drawRefilling(0.25, 10));
            }
            assertEquals(1, arrival / below, 0.8 / layers, layers + " layers: arrival");
            double layersThick = (late - early) * layers / tank.massKg();
            assertTrue(layersThick < 10, layers + " layers: front of " + layersThick + " layers from 2 to 98 %");
            assertTrue(late - early < 0.65 * before, "twice the layers, little over half the front");
            before = late - early;
        }
    }

    /** Two stirred tanks that swap water: the difference decays as exp(−2 w t / m), the sum stays. */
    @Test
    void twoTanksSwapTheirHeat() {
        Layers warm = tank(1, 60);
        Layers cool = tank(1, 20);
        double step = warm.massKg() / 20_000;
        double sum = warm.energyJ() + cool.energyJ();
        double difference = warm.energyJ() - cool.energyJ();
        for (int i = 0; i < 20_000; i++) {
            double toCool = warm.coldPortC();
            double toWarm = cool.coldPortC();
            warm.circulate(step, toWarm);
            cool.circulate(step, toCool);
        }
        assertEquals(sum, warm.energyJ() + cool.energyJ(), 1e-9 * sum);
        assertEquals(Math.exp(-2), (warm.energyJ() - cool.energyJ()) / difference, 2e-4);
    }

    /** Warm on cold water without flow: T = Tm + ΔT/2 erf(z / 2√(αt)). Carslaw and Jaeger, 2nd ed., section 2.4. */
    @Test
    void conductionSpreadsAFrontAsTheErrorFunction() {
        int layers = 100;
        Layers tank = tank(layers, 30);
        for (int i = layers - 1; i >= layers / 2; i--) {
            tank.warm(i, 40);
        }
        TankSurroundings still = new TankSurroundings(layers);
        double seconds = 6 * 3600;
        for (int i = 0; i < 360; i++) {
            tank.rest(60, still);
        }
        double alpha = Water.conductivityWPerMK(35) / (Water.densityKgPerM3(10) * Water.specificHeatJPerKgK(35));
        for (int i = 0; i < layers; i++) {
            double z = (i + 0.5 - layers / 2.0) / layers;
            double exact = 35 + 5 * Erf.erf(z / (2 * Math.sqrt(alpha * seconds)));
            assertEquals(exact, tank.tempC(i), 0.02, "layer " + i);
        }
    }

    /** A return warmer than all rises to the top; one colder than all sinks to the base; one between stays between. */
    @Test
    void returnComesToRestWhereItFits() {
        Layers tank = tank(10, 30);
        for (int i = 0; i < 10; i++) {
            tank.warm(9 - i, 50 - 2 * i);
        }
        assertTrue(tank.circulate(0.001, 90));
        assertTrue(tank.tempC(9) > 50, "the hottest goes to the top");
        double base = tank.tempC(0);
        assertTrue(tank.circulate(-0.001, 5));
        assertTrue(tank.tempC(0) < base, "the coldest goes to the base");
        double third = tank.tempC(3);
        double fourth = tank.tempC(4);
        double fifth = tank.tempC(5);
        tank.circulate(0.001, (third + fourth) / 2);
        assertTrue(tank.tempC(4) < fourth && tank.tempC(4) > third, "from above it sinks to the last warmer layer");
        assertEquals(fifth, tank.tempC(5), 1e-9, "and leaves those above it alone");
    }

    @Test
    void aHeaterAtTheBaseStirsAllAboveItUpToTheFirstWarmerLayer() {
        Layers tank = tank(10, 20);
        tank.warm(9, 60);
        TankSurroundings heater = new TankSurroundings(10).heater(0, 2000);
        tank.rest(600, heater);
        for (int i = 1; i < 9; i++) {
            assertEquals(tank.tempC(0), tank.tempC(i), 0.3, "layer " + i);
        }
        assertTrue(tank.tempC(0) > 20.5);
        // Conduction over 0.1 m of water takes 0.6 W/(m K) × 0.2 m² / 0.1 m × 40 K × 600 s = 29 kJ, 0.34 K of 20 kg.
        assertEquals(60 - 0.34, tank.tempC(9), 0.03);
    }

    @Test
    void levelFallsAndRisesAndTheLoopBreaksWhenItsPortIsDry() {
        Layers tank = new Layers(new LayerPlan(TALL, new Ports(0.05, 0.5, 0.3, 0.9, 0.02), 30, 50, 100));
        assertEquals(0.9, tank.levelM(), 1e-12);
        double toPort = (0.9 - 0.51) * 0.2 * Water.densityKgPerM3(10);
        assertEquals(toPort - 0.1, tank.drawDown(toPort - 0.1));
        assertTrue(tank.loopCovered());
        tank.drawDown(0.2);
        assertTrue(!tank.loopCovered() && !tank.circulate(1, 60), "a broken loop moves nothing");
        double rest = tank.drawDown(1000);
        assertEquals(0.3, tank.levelM(), 1e-9);
        assertEquals((0.9 - 0.3) * 0.2 * Water.densityKgPerM3(10), toPort + 0.1 + rest, 1e-9);
        assertEquals(0, tank.drawDown(1), 1e-9);
        assertEquals(0, tank.drawRefilling(1, 10));
        tank.fill(1000, 12);
        assertEquals(0.9, tank.levelM(), 1e-9);
        assertEquals(30, tank.wet());
    }

    @Test
    void boilingLeavesAsSteamAndFreezingIsBooked() {
        Layers tank = tank(5, 95);
        tank.rest(36_000, new TankSurroundings(5).sun(5000));
        assertEquals(100, tank.topC(), 1e-9);
        assertTrue(tank.ledger().steamJ() > 1e8);
        Layers cold = tank(5, 1);
        cold.rest(86_400, new TankSurroundings(5).loss(new TankLoss(20, 5, 5), -20));
        assertEquals(0, cold.topC(), 1e-9);
        assertTrue(cold.ledger().iceJ() > 0);
        assertEquals(
                cold.ledger().expectedJ(), cold.energyJ(), 1e-9 * cold.ledger().movedJ());
    }

    /** More layers change what a draw delivers by less and less. */
    @Test
    void deliveryTendsToALimitAsLayersGrow() {
        double[] hot = new double[5];
        for (int k = 0; k < hot.length; k++) {
            hot[k] = kgAbove40(10 << k);
        }
        for (int k = 2; k < hot.length; k++) {
            double finer = Math.abs(hot[k] - hot[k - 1]);
            assertTrue(finer <= 0.8 * Math.abs(hot[k - 1] - hot[k - 2]) + 0.3, java.util.Arrays.toString(hot));
        }
        assertEquals(hot[4], hot[2], 0.03 * hot[4], "40 layers against 160");
    }

    private static double kgAbove40(int layers) {
        Layers tank = tank(layers, 60);
        TankSurroundings around = new TankSurroundings(layers).loss(new TankLoss(2, 0.5, 0.5), 15);
        for (int hour = 0; hour < 12; hour++) {
            tank.rest(3600, around);
        }
        double drawn = 0;
        while (tank.drawC() > 40) {
            drawn += tank.drawRefilling(0.1, 10);
        }
        return drawn;
    }

    /** Measured by the thread's own counter, after warming up. */
    @Test
    void aStepAllocatesNothing() {
        Layers tank = tank(24, 50);
        TankSurroundings around = new TankSurroundings(24).loss(new TankLoss(2, 0.5, 0.5), 15);
        var threads = (com.sun.management.ThreadMXBean) java.lang.management.ManagementFactory.getThreadMXBean();
        minutes(tank, around, 20_000);
        long before = threads.getCurrentThreadAllocatedBytes();
        minutes(tank, around, 50_000);
        long bytes = threads.getCurrentThreadAllocatedBytes() - before;
        assertTrue(bytes < 50_000, bytes + " bytes in 50,000 steps");
    }

    private static void minutes(Layers tank, TankSurroundings around, int count) {
        for (int i = 0; i < count; i++) {
            around.window(1, i % 20).sun(i % 700);
            tank.circulate(0.6, 45 + i % 10);
            tank.drawRefilling(0.15, 10);
            tank.drawDown(0.3);
            tank.fill(0.3, 10);
            tank.rest(60, around);
        }
    }

    /** What a layer is set to is booked as the heat it took, so that the account still closes. */
    @Test
    void warmingALayerIsBookedAsItsHeat() {
        Layers tank = tank(10, 20);
        double before = tank.energyJ();

        tank.warm(9, 60);

        assertEquals(tank.energyJ() - before, tank.ledger().heatJ(), 1e-6);
        // A tenth of the water by 40 K, at 4182 J/(kg K) (handbook, 20 to 60 °C).
        assertEquals(
                tank.massKg() / 10 * 4182 * 40,
                tank.ledger().heatJ(),
                0.002 * tank.ledger().heatJ());
    }
}

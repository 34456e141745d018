package loftcoil.engine.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.LaggingChoice;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.Site;
import loftcoil.engine.design.Tank;
import loftcoil.engine.tank.CoatFit;
import loftcoil.engine.tank.CoatedTank;
import loftcoil.engine.tank.Standing;
import loftcoil.engine.tank.TankLagging;
import loftcoil.engine.tank.TankLoss;
import loftcoil.engine.water.Water;
import org.junit.jupiter.api.Test;

/** The march against solutions in closed form. */
class CoolingReferenceTest {

    private static final Design BOTHY = Example.orchardBothy();
    private static final double START_C = 35;
    private static final double AROUND_C = 5;
    private static final double PORTS_APART_M = 0.001;

    /** A tank that starts at 35 °C in a house of 5 °C, no fire, sun or use, and ports so close that the loop hardly drifts. */
    private static Design standing(LaggingChoice lagging) {
        Design started = Changes.apply(BOTHY, "site.coldSupplyC", Double.toString(START_C));
        Site site =
                Changes.apply(started, "site.roomC", Double.toString(AROUND_C)).site();
        Tank tank = BOTHY.tank();
        Leg riser = BOTHY.hotLegs().get(0);
        double usualM = tank.returnPortM() - tank.coldPortM();
        return new Design(
                        BOTHY.name(),
                        site,
                        new Tank(
                                tank.volumeL(),
                                tank.heightM(),
                                tank.baseM(),
                                tank.waterlineM(),
                                tank.coldPortM(),
                                tank.coldPortM() + PORTS_APART_M,
                                tank.drawPortM(),
                                Optional.of(lagging),
                                tank.emptyMassKg(),
                                AROUND_C,
                                OptionalDouble.empty()),
                        BOTHY.coil(),
                        Optional.empty(),
                        BOTHY.coldLegs(),
                        List.of(
                                riser.withRiseM(riser.riseM() + PORTS_APART_M - usualM),
                                BOTHY.hotLegs().get(1)),
                        Optional.empty(),
                        BOTHY.taps(),
                        List.of(),
                        BOTHY.safety(),
                        BOTHY.notes())
                .checked();
    }

    /**
     * A stirred tank cools as T − T∞ = (T0 − T∞) exp(−U A t / m c): Newton's law of cooling, any heat transfer text. The layers differ
     * from one another by less than a kelvin, the wall above the waterline is counted with the water.
     */
    @Test
    void aTankLeftAloneCoolsAsTheExponential() {
        LaggingChoice lagging = new LaggingChoice("stone wool", 50);
        Design design = standing(lagging);
        SystemPlan plan = SystemPlan.of(design, Pace.USUAL, Heatings.of(design));
        SystemMarch march = new SystemMarch(plan);
        TankLoss loss = CoatedTank.without(
                        plan.layers().shape(), TankLagging.allRound(lagging.lagging()), CoatFit.CLOSE_FITTING)
                .lossAt(new Standing(20, AROUND_C));
        double capacity = march.tank().massKg() * Water.specificHeatJPerKgK(25);
        for (int day = 0; day < 5; day++) {
            march.day(day);
            double seconds = 86_400.0 * (day + 1);
            double expected = AROUND_C + (START_C - AROUND_C) * Math.exp(-loss.totalWPerK() * seconds / capacity);
            assertEquals(expected, march.tank().meanC(), 0.15, "day " + day);
        }
        assertEquals(
                0, march.totals().lossesJ().legsOut() / march.totals().lossesJ().tank(), 0.01, "drift");
    }

    /** Heat that cannot get out stays: fire, no use, hardly any loss for one evening. */
    @Test
    void heatOfOneEveningStaysInALaggedTank() {
        Design design = BOTHY;
        SystemPlan plan = SystemPlan.of(design, Pace.USUAL, Heatings.of(design)).with(Optional.empty());
        SystemMarch march = new SystemMarch(plan);
        Totals start = march.totals();
        int until = 21 * 60;
        for (int step = 12 * 60 + 31; step < until; step++) {
            march.step(0, step);
        }
        EnergyBook book = march.totals().since(start).book();
        assertEquals(8.0, book.coilKWh(), 1e-9);
        assertEquals(8.0 - book.lossKWh() - book.usedKWh(), book.storedKWh(), 1e-9);
    }
}

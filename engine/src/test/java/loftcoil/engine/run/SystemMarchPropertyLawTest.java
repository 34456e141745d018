package loftcoil.engine.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Coil;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.Fire;
import loftcoil.engine.design.Site;
import loftcoil.engine.design.Tank;
import loftcoil.engine.design.Use;
import loftcoil.engine.sun.WindowYear;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;

/** Whatever is built, lit, drawn and shone upon: the account closes, and nothing leaves its bounds. */
class SystemMarchPropertyLawTest {

    private static final Design BOTHY = Example.orchardBothy();
    private static final LoopAxes.Mesh COARSE = new LoopAxes.Mesh(20, 4);
    private static final Optional<WindowYear> SUN =
            SystemPlan.of(BOTHY, Pace.USUAL, Heatings.of(BOTHY)).window();
    private static final List<String> TUBES = List.of("EN1057 15x0.7", "EN1057 22x0.9", "EN1057 28x0.9");

    /** A design and the days it is run on. */
    private record Case(Design design, boolean sunny, int firstDay) {}

    private record Heater(double heatKW, double fromH, double forH, int month) {}

    @Provide
    Arbitrary<Case> cases() {
        Arbitrary<Heater> heaters = Combinators.combine(
                        Arbitraries.doubles().between(0, 8),
                        Arbitraries.doubles().between(0, 24),
                        Arbitraries.doubles().between(0, 24),
                        Arbitraries.integers().between(1, 12))
                .as(Heater::new);
        Arbitrary<Use> draws = Combinators.combine(
                        Arbitraries.doubles().between(0, 24),
                        Arbitraries.doubles().between(0, 300),
                        Arbitraries.doubles().between(5, 90),
                        Arbitraries.of("kitchen sink", "wash tub", "laundry hose"))
                .as(Use::new);
        Arbitrary<Tank> tanks = Combinators.combine(
                        Arbitraries.doubles().between(20, 2000),
                        Arbitraries.doubles().between(-30, 60),
                        Arbitraries.doubles().between(0, 24),
                        Arbitraries.of(true, false),
                        Arbitraries.of(true, false))
                .as(SystemMarchPropertyLawTest::tank);
        return Combinators.combine(
                        tanks,
                        heaters,
                        draws.list().ofMaxSize(4),
                        Combinators.combine(
                                        Arbitraries.doubles().between(0, 35),
                                        Arbitraries.doubles().between(-400, 5000))
                                .as(SystemMarchPropertyLawTest::site),
                        Arbitraries.of(TUBES),
                        Arbitraries.doubles().between(-2, 4),
                        Arbitraries.of(true, false),
                        Arbitraries.integers().between(0, 364))
                .as(SystemMarchPropertyLawTest::made);
    }

    private static Tank tank(double volumeL, double aroundC, double refillH, boolean byHand, boolean lagged) {
        Tank tank = BOTHY.tank();
        return new Tank(
                volumeL,
                tank.heightM(),
                tank.baseM(),
                tank.waterlineM(),
                tank.coldPortM(),
                tank.returnPortM(),
                tank.drawPortM(),
                lagged ? tank.lagging() : Optional.empty(),
                tank.emptyMassKg(),
                aroundC,
                byHand ? OptionalDouble.of(refillH) : OptionalDouble.empty());
    }

    private static Site site(double coldC, double altitudeM) {
        Design cold = Changes.apply(BOTHY, "site.coldSupplyC", Double.toString(coldC));
        return Changes.apply(cold, "site.altitudeM", Double.toString(altitudeM)).site();
    }

    private static Case made(
            Tank tank, Heater heater, List<Use> use, Site site, String tube, double baseM, boolean sunny, int day) {
        Coil coil = BOTHY.withBurnKgPerH(4).withCoilHeatKW(heater.heatKW()).coil();
        Fire fire = new Fire("hardwood", 18, 4, heater.fromH(), heater.forH(), List.of(heater.month()));
        Design design = new Design(
                        "random",
                        site,
                        tank,
                        coil,
                        Optional.of(fire),
                        BOTHY.coldLegs(),
                        BOTHY.hotLegs(),
                        BOTHY.window(),
                        BOTHY.taps(),
                        use,
                        BOTHY.safety(),
                        BOTHY.notes())
                .withLoopTube(tube)
                .withTankBaseM(baseM);
        return new Case(design, sunny, day);
    }

    @Property(tries = 1000)
    void threeDaysOfAnySystemBalance(@ForAll("cases") Case one) {
        Design design = one.design();
        SystemPlan plan = SystemPlan.of(design, new Pace(60, 8, 0), Heatings.of(design), COARSE)
                .with(one.sunny() ? SUN : Optional.empty());
        SystemMarch march = new SystemMarch(plan);
        Totals start = march.totals();
        double boilC = plan.layers().boilC();
        for (int day = one.firstDay(); day < one.firstDay() + 3; day++) {
            march.day(day);
            EnergyBook book = march.totals().since(start).book();
            double moved = book.solarKWh() + book.coilKWh() + Math.abs(book.lossKWh()) + Math.abs(book.usedKWh()) + 1;
            assertEquals(0, book.gapKWh(), 1e-9 * moved, "account");
            for (int i = 0; i < march.tank().wet(); i++) {
                double tempC = march.tank().tempC(i);
                assertTrue(tempC >= -1e-9 && tempC <= boilC + 1e-9, "layer " + i + " at " + tempC);
            }
        }
        Totals counted = march.totals();
        assertTrue(counted.coilJ() >= 0 && counted.solarJ() >= 0 && counted.shortJ() >= -1e-6, counted.toString());
        assertTrue(counted.lossesJ().steam() >= 0, "steam");
        assertTrue(counted.times().boiledS() <= 3 * 86_400, "time");
        double wantedL = 3 * design.use().stream().mapToDouble(Use::litres).sum();
        Litres came = counted.litres();
        assertEquals(wantedL, came.asWanted() + came.tooCool() + came.missing(), 1e-6 * (1 + wantedL), "litres");
        Statistics.label("boils").collect(counted.times().boiledS() > 0);
        Statistics.label("refilled").collect(plan.refilledAsDrawn());
    }
}

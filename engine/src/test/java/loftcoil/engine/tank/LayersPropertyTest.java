package loftcoil.engine.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.fault.RefusedException;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Whatever is done to a tank in whatever order: its account closes, nothing passes the bounds, no inversion is left. */
class LayersPropertyTest {

    private static final double BOIL_C = 98;

    /** One thing done to a tank. */
    private record Deed(int what, double size, double tempC) {}

    @Provide
    Arbitrary<Deed> deeds() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 5),
                        Arbitraries.doubles().between(0, 1),
                        Arbitraries.doubles().between(0, BOIL_C))
                .as(Deed::new);
    }

    @Provide
    Arbitrary<List<Deed>> days() {
        return deeds().list().ofMinSize(1).ofMaxSize(60);
    }

    @Property(tries = 2000)
    void everyOrderOfDeedsKeepsTheLaws(
            @ForAll("days") List<Deed> day,
            @ForAll @IntRange(min = 1, max = 60) int layers,
            @ForAll boolean cutAtPorts) {
        Ports ports = new Ports(0.03, 0.35, 0.2, 0.66, 0.02);
        Layers tank = new Layers(new LayerPlan(new UprightCylinder(0.12, 0.7), ports, layers, 40, BOIL_C, cutAtPorts));
        TankSurroundings around = new TankSurroundings(layers).loss(new TankLoss(20, 3, 3), 15);
        double full = tank.massKg();
        for (Deed deed : day) {
            act(tank, around, deed);
            Ledger ledger = tank.ledger();
            assertEquals(ledger.expectedJ(), tank.energyJ(), 1e-9 * ledger.movedJ(), "account after " + deed);
            assertEquals(full + ledger.refillKg() - ledger.drawnKg(), tank.massKg(), 1e-9 * full, "mass");
            for (int i = 0; i < tank.wet(); i++) {
                assertTrue(tank.tempC(i) >= -1e-9 && tank.tempC(i) <= BOIL_C + 1e-9, "layer " + i);
                assertTrue(tank.massKg(i) > 0, "mass of layer " + i);
                assertTrue(i == 0 || tank.tempC(i) >= tank.tempC(i - 1), "inversion at " + i + " after " + deed);
            }
        }
    }

    /** Flow alone mixes: no temperature leaves the range of what was there and what came in. */
    @Property(tries = 1000)
    void flowNeverOvershoots(
            @ForAll("days") List<Deed> day,
            @ForAll @IntRange(min = 2, max = 60) int layers,
            @ForAll boolean cutAtPorts) {
        Ports ports = new Ports(0.03, 0.35, 0.2, 0.66, 0.02);
        Layers tank = new Layers(new LayerPlan(new UprightCylinder(0.12, 0.7), ports, layers, 40, BOIL_C, cutAtPorts));
        double low = 40;
        double high = 40;
        for (Deed deed : day) {
            if (deed.what() < 4) {
                act(tank, new TankSurroundings(layers), deed);
                low = Math.min(low, deed.tempC());
                high = Math.max(high, deed.tempC());
                assertTrue(tank.tempC(0) >= low - 1e-9 && tank.topC() <= high + 1e-9, low + " to " + high);
            }
        }
    }

    private static void act(Layers tank, TankSurroundings around, Deed deed) {
        switch (deed.what()) {
            case 0 -> tank.drawRefilling(300 * deed.size(), deed.tempC());
            case 1 -> tank.drawDown(100 * deed.size() * deed.size());
            case 2 -> tank.fill(100 * deed.size(), deed.tempC());
            case 3 -> tank.circulate(100 * (deed.size() - 0.4), deed.tempC());
            case 4 ->
                tank.rest(20_000 * deed.size(), around.sun(40 * deed.tempC()).window(2, deed.tempC() - 40));
            default ->
                tank.rest(
                        600 * deed.size(), around.heater(0, 3000 * deed.size()).sun(0));
        }
    }

    @Property(tries = 200)
    void refusesWhatIsNotANumberAndStaysAsItWas(@ForAll @IntRange(min = 0, max = 4) int what) {
        Layers tank = new Layers(
                new LayerPlan(new UprightCylinder(0.12, 0.7), new Ports(0.03, 0.35, 0.6, 0.66, 0.02), 8, 40, 98));
        double before = tank.energyJ();
        assertThrows(RefusedException.class, () -> {
            switch (what) {
                case 0 -> tank.drawRefilling(Double.NaN, 10);
                case 1 -> tank.drawRefilling(1, 99);
                case 2 -> tank.circulate(1, Double.NaN);
                case 3 -> tank.rest(-1, new TankSurroundings(8));
                default -> tank.rest(60, new TankSurroundings(9));
            }
        });
        assertEquals(before, tank.energyJ());
    }
}

package loftcoil.engine.fire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.gas.FlueGas;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The gas along the coil, against following it in small steps. */
class GasSideLawTest {

    private static final int STEPS = 4000;

    /**
     * One film at the mean gas temperature stands for a film that changes along the tube, and one exponential for a heat capacity
     * that does: followed in 4000 steps with both as they are on the spot, the heat differs by less than 2 %.
     */
    @ParameterizedTest
    @CsvSource({"0.3,60", "1.6,60", "1.6,150", "4,90", "12,60"})
    void meanFilmStandsForAll(double lengthM, double surfaceC) {
        CoilInFire fire = TestFires.with(TestFires.burn(), lengthM);
        GasSide gasSide = new GasSide(fire);
        FlueGas gas = fire.burn().flueGas();
        double stepM2 = fire.coil().surfaceM2() / STEPS;
        double gasC = fire.gasBeforeC();
        double taken = 0;
        for (int i = 0; i < STEPS; i++) {
            double stepW = gasSide.filmWPerM2K(gasC, surfaceC) * stepM2 * (gasC - surfaceC);
            taken += stepW;
            gasC -= stepW / (fire.burn().flueKgPerS() * gas.specificHeatJPerKgK(gasC));
        }
        assertEquals(taken, gasSide.takenW(surfaceC), 0.02 * taken);
    }

    /** Faster and more glowing gas gives more; a surface as hot as the gas takes nothing. */
    @ParameterizedTest
    @CsvSource({"0.2", "1.6", "6"})
    void whatHelps(double lengthM) {
        CoilInFire fire = TestFires.with(TestFires.burn(), lengthM);
        FireboxSize size = fire.firebox().size();
        double now = new GasSide(fire).takenW(80);
        assertTrue(taken(fire, size.withPassageM2(size.passageM2() / 2)) > now);
        assertTrue(taken(fire, size.withFlameEmissivity(0.5)) > now);
        assertTrue(taken(fire, size.withFlameEmissivity(0)) < now);
        assertEquals(0, new GasSide(fire).takenW(fire.gasBeforeC()));
    }

    private static double taken(CoilInFire fire, FireboxSize size) {
        Firebox box = fire.firebox().withSize(size);
        return new GasSide(new CoilInFire(fire.coil(), fire.burn(), box)).takenW(80);
    }
}

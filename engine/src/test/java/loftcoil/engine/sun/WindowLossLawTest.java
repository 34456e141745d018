package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.heat.GreyRadiation;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class WindowLossLawTest {

    private static final double PRESSURE_PA = 94_000;
    private static final Shutter BOARD = new Shutter(1.1, 20, 12);

    /** What leaves the tank passes every gap and leaves the outermost pane. */
    @Property(tries = 1000)
    void theSameHeatPassesEveryGap(
            @ForAll @IntRange(min = 1, max = 6) int panes,
            @ForAll @DoubleRange(min = 0, max = 90) double tilt,
            @ForAll @Scale(4) @DoubleRange(min = 0.003, max = 0.2) double gap,
            @ForAll @DoubleRange(min = 0, max = 110) double surface,
            @ForAll @DoubleRange(min = -60, max = 60) double air) {
        Glazing window = Glazing.salvaged(panes, gap, 0.92, new Facing(tilt, 180));
        HeatLoss loss = new WindowLoss(window, PRESSURE_PA).open(surface, air);
        AirGap between = new AirGap(gap, tilt, PRESSURE_PA);
        double glass = Glass.SALVAGED_FLOAT.emissivity();
        double inner = surface;
        for (int pane = panes - 1; pane >= 0; pane--) {
            double outer = loss.paneC().get(pane);
            double emissivity = 1 / (1 / (pane == panes - 1 ? 0.95 : glass) + 1 / glass - 1);
            double passes = between.convectionWPerM2K(inner, outer) * (inner - outer)
                    + GreyRadiation.fluxWPerM2(inner, outer, emissivity);
            assertEquals(loss.wPerM2(), passes, 1e-5 + 1e-6 * Math.abs(passes), "behind pane " + pane);
            inner = outer;
        }
        double sky = window.facing().skyShare();
        double leaves = 10 * (inner - air)
                + sky * GreyRadiation.fluxWPerM2(inner, air - 10, glass)
                + (1 - sky) * GreyRadiation.fluxWPerM2(inner, air, glass);
        assertEquals(loss.wPerM2(), leaves, 1e-5 + 1e-6 * Math.abs(leaves));
    }

    @Property(tries = 300)
    void aWarmerTankLosesMore(
            @ForAll @IntRange(min = 1, max = 4) int panes,
            @ForAll @DoubleRange(min = 0, max = 105) double surface,
            @ForAll @DoubleRange(min = -60, max = 60) double air) {
        WindowLoss loss = new WindowLoss(Glazing.salvaged(panes, 0.012, 0.92, new Facing(35, 180)), PRESSURE_PA);
        assertTrue(
                loss.open(surface + 5, air).wPerM2() > loss.open(surface, air).wPerM2());
    }

    @Property(tries = 300)
    void anotherPaneOrAShutterSpares(
            @ForAll @IntRange(min = 1, max = 5) int panes,
            @ForAll @DoubleRange(min = 40, max = 110) double surface,
            @ForAll @DoubleRange(min = -30, max = 30) double air) {
        Glazing window =
                Glazing.salvaged(panes, 0.012, 0.92, new Facing(35, 180)).with(BOARD);
        WindowLoss loss = new WindowLoss(window, PRESSURE_PA);
        WindowLoss more = new WindowLoss(Glazing.salvaged(panes + 1, 0.012, 0.92, new Facing(35, 180)), PRESSURE_PA);
        double open = loss.open(surface, air).wPerM2();
        assertTrue(more.open(surface, air).wPerM2() < open);
        assertTrue(loss.shut(surface, air).wPerM2() < open);
        // The board alone passes no more than its own resistance lets through.
        assertTrue(loss.shut(surface, air).wPerM2() < (surface - air + 10) / BOARD.resistanceM2KPerW());
    }

    @Test
    void noDifferenceNoLoss() {
        Glazing window = Glazing.salvaged(2, 0.02, 0.92, new Facing(40, 180)).with(new Surroundings(10, 0, 0.2));
        assertEquals(0, new WindowLoss(window, PRESSURE_PA).open(20, 20).wPerM2(), 1e-9);
    }

    @Test
    void aColdSkyCoolsAndAWarmOutsideWarms() {
        Glazing window = Glazing.salvaged(2, 0.02, 0.92, new Facing(40, 180));
        assertTrue(new WindowLoss(window, PRESSURE_PA).open(20, 20).wPerM2() > 0);
        assertTrue(new WindowLoss(window, PRESSURE_PA).open(5, 40).wPerM2() < 0);
    }

    @Test
    void airUnderAWarmPlateStaysStill() {
        // Level, warm above: pure conduction, as for the same air at rest.
        AirGap level = new AirGap(0.02, 0, PRESSURE_PA);
        assertEquals(loftcoil.engine.gas.Air.conductivityWPerMK(30) / 0.02, level.convectionWPerM2K(20, 40), 1e-12);
    }

    @Test
    void theBranchesOfTheGapMeet() {
        for (double rayleigh = 100; rayleigh < 1e6; rayleigh *= 1.3) {
            double below = new AirGap(0.02, 75, PRESSURE_PA).nusseltWarmBelow(rayleigh);
            double above = new AirGap(0.02, 75.0001, PRESSURE_PA).nusseltWarmBelow(rayleigh);
            assertEquals(below, above, 1e-3 * below);
        }
    }
}

package loftcoil.engine.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import loftcoil.engine.pipe.Lagging;
import loftcoil.engine.pipe.PipeLoss;
import loftcoil.engine.tank.WaterHeat;
import loftcoil.engine.water.Water;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;

class LiquidTableTest {

    @Test
    void cubicsAreWithinOneInTenMillionOfTheFormulas() {
        for (double t = 0; t <= 110; t += 0.0371) {
            assertEquals(1, LiquidTable.WATER.densityKgPerM3(t) / Water.densityKgPerM3(t), 1e-8);
            assertEquals(1, LiquidTable.WATER.specificHeatJPerKgK(t) / Water.specificHeatJPerKgK(t), 1e-7);
            double kinematic = Water.viscosityPaS(t) / Water.densityKgPerM3(t);
            assertEquals(1, LiquidTable.WATER.kinematicM2PerS(t) / kinematic, 1e-6);
        }
    }

    @Test
    void readByItsHeatWaterIsTheSame() {
        for (double t = 0; t <= 110; t += 0.0371) {
            double place = WaterByHeat.place(WaterHeat.jPerKg(t));
            int piece = WaterByHeat.piece(place);
            double along = place - piece;
            assertEquals(t, WaterByHeat.tempC(piece, along), 1e-5);
            assertEquals(LiquidTable.WATER.densityKgPerM3(t), WaterByHeat.densityKgPerM3(piece, along), 3e-5);
            assertEquals(
                    1,
                    WaterByHeat.kinematicM2PerS(piece, along) / LiquidTable.WATER.kinematicM2PerS(t),
                    3e-6,
                    t + " °C");
        }
    }

    @Test
    void enthalpyIsTheIntegralOfTheSpecificHeat() {
        double integral = new IterativeLegendreGaussIntegrator(10, 1e-12, 1e-12)
                .integrate(10_000, Water::specificHeatJPerKgK, 12.3, 97.7);
        double table = LiquidTable.WATER.enthalpyJPerKg(97.7) - LiquidTable.WATER.enthalpyJPerKg(12.3);
        assertEquals(integral, table, 1e-8 * integral);
    }

    @Test
    void warmingTakesUpExactlyTheHeat() {
        for (double heat = -100_000; heat <= 250_000; heat += 12_345) {
            double warmed = LiquidTable.WATER.warmedC(40, heat);
            assertEquals(heat, LiquidTable.WATER.enthalpyJPerKg(warmed) - LiquidTable.WATER.enthalpyJPerKg(40), 1e-6);
        }
    }

    @Test
    void lossTableIsWithinItsStatedError() {
        Lagging foam = new Lagging("elastomeric foam", 0.013);
        for (Lagging lagging : new Lagging[] {Lagging.NONE, foam}) {
            for (double aroundC : new double[] {-20, 5, 19, 60, 150}) {
                LossTable table = LossTable.of(Loops.TUBE_22, lagging, aroundC);
                for (double waterC = 0.5; waterC <= 110; waterC += 1.3) {
                    double exact = PipeLoss.wPerMK(Loops.TUBE_22, lagging, waterC, aroundC);
                    assertEquals(1, table.wPerMK(waterC) / exact, 0.005, waterC + " in " + aroundC + " " + lagging);
                    double lostW = table.wPerMK(waterC) * (waterC - aroundC);
                    assertEquals(lostW, LossTable.at(table.lostWPerM(), waterC), 0.03);
                }
            }
        }
    }
}

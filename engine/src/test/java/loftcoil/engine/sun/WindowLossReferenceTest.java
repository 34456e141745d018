package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindowLossReferenceTest {

    private static final Glass GLASS = new Glass(0.003, 16, 1.526, 0.88);

    @Test
    void onePaneOverAPlateAtOneHundredDegrees() {
        // Duffie and Beckman, 4th ed., Example 6.4.1 (from memory, recomputed): gap 25 mm, 45 degrees, plate emittance
        // 0.95,
        // glass 0.88, wind film 10, air and sky 10 °C: 6.6 W/(m² K), cover at 48.5 °C.
        HeatLoss loss = window(1, 45, 10, 0.95).open(100, 10);
        assertEquals(6.6, loss.wPerM2() / 90, 0.05);
        assertEquals(48.5, loss.paneC().get(0), 0.5);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 45, 10, 0.95, 100, 10", "2, 45, 10, 0.95, 100, 10", "3, 45, 10, 0.95, 100, 10",
        "1, 45, 5, 0.95, 60, 10", "2, 45, 5, 0.95, 60, 10", "1, 30, 20, 0.95, 90, 25",
        "2, 60, 10, 0.10, 100, 10", "1, 20, 10, 0.10, 80, 20", "2, 45, 10, 0.95, 60, -10"
    })
    void withinWhatKleinStates(int panes, double tiltDeg, double wind, double emittance, double plateC, double airC) {
        // Klein (1979), Duffie and Beckman equation 6.4.9 (from memory): an empirical fit that lies within 0.3 W/(m² K)
        // of the
        // iterated loss for plate temperatures up to 200 °C.
        double ours = window(panes, tiltDeg, wind, emittance).open(plateC, airC).wPerM2() / (plateC - airC);
        assertEquals(klein(panes, tiltDeg, wind, emittance, plateC, airC), ours, 0.3);
    }

    private static WindowLoss window(int panes, double tiltDeg, double wind, double emittance) {
        return new WindowLoss(
                new Glazing(
                        new PaneStack(panes, GLASS),
                        0.025,
                        new TankFace(0.95, emittance, 0.025),
                        new Facing(tiltDeg, 180),
                        new Surroundings(wind, 0, 0.2),
                        Shutter.NONE),
                101_325);
    }

    private static double klein(
            int panes, double tiltDeg, double wind, double plateEmittance, double plateC, double airC) {
        double plate = plateC + 273.15;
        double air = airC + 273.15;
        double f = (1 + 0.089 * wind - 0.1166 * wind * plateEmittance) * (1 + 0.07866 * panes);
        double c = 520 * (1 - 0.000051 * tiltDeg * tiltDeg);
        double e = 0.430 * (1 - 100 / plate);
        double convection = panes / (c / plate * Math.pow((plate - air) / (panes + f), e)) + 1 / wind;
        double radiation = 5.67e-8
                * (plate + air)
                * (plate * plate + air * air)
                / (1 / (plateEmittance + 0.00591 * panes * wind)
                        + (2 * panes + f - 1 + 0.133 * plateEmittance) / GLASS.emissivity()
                        - panes);
        return 1 / convection + radiation;
    }
}

package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindowLightReferenceTest {

    @ParameterizedTest
    @CsvSource({"1, 0.92, 0", "1, 0.95, 45", "2, 0.95, 0", "2, 0.92, 45"})
    void aboutOnePerCentMoreThanTheProduct(int panes, double absorptance, double incidenceDeg) {
        // Duffie and Beckman, 4th ed., equation 5.5.2: 1.01 times transmittance times absorptance for most collectors.
        PaneStack stack = new PaneStack(panes, new Glass(0.0023, 16, 1.526, 0.837));
        double product = stack.at(incidenceDeg).transmitted() * absorptance;
        assertEquals(1.01, new WindowLight(stack, absorptance).at(incidenceDeg).tank() / product, 0.01);
    }
}

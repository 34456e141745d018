package loftcoil.engine.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.SafeBothy;
import loftcoil.engine.sheet.Figures;
import org.junit.jupiter.api.Test;

/** The whole sheet of designs that may be built and of ones that must not. */
class BuildSheetTest {

    /** Nothing dangerous said, and a small fire behind a tank without sun, so that the year stays cool. */
    private static final BuildSheet SAFE =
            BuildSheet.of(SafeBothy.edited(List.of("/coil/heatKW", "1.0", "/window", "null")));

    @Test
    void aDesignWithNothingDangerousMayBeBuilt() {
        assertEquals(List.of(), SAFE.reasons());
        assertTrue(SAFE.buildable());
        assertTrue(
                SAFE.verdict().metric().contains("circulates"), SAFE.verdict().metric());
    }

    @Test
    void aDesignThatStandsStillMustNotBeBuilt() {
        BuildSheet low = BuildSheet.of(Example.orchardBothy().withTankBaseM(-0.6));
        assertFalse(low.buildable());
        assertTrue(
                low.verdict().metric().contains("must not be built"),
                low.verdict().metric());
        assertTrue(low.firstHour().isEmpty());
        assertFalse(low.reasons().isEmpty());
    }

    /** No water loop with a measured flow proves the model better, whatever the doubts drawn come to. */
    @Test
    void noFlowIsToldSurerThanToFifteenPercent() {
        for (BuildSheet sheet : List.of(SAFE, BuildSheet.of(Example.orchardBothy()))) {
            BuildFigure flow = sheet.figures().stream()
                    .filter(figure -> figure.label().equals(Figures.FLOW.label()))
                    .findFirst()
                    .orElseThrow();
            double value = flow.value().value();
            assertTrue(flow.low().orElseThrow().value() <= 0.85 * value + 1e-12, flow.toString());
            assertTrue(flow.high().orElseThrow().value() >= 1.15 * value - 1e-12, flow.toString());
            assertTrue(flow.doubt().metric().contains("15"), flow.doubt().metric());
        }
    }

    @Test
    void aKnownDangerIsAReasonNotToLightIt() {
        BuildSheet shut = BuildSheet.of(
                SafeBothy.edited(List.of("/coil/heatKW", "1.0", "/window", "null", "/safety/vent/valve", "true")));
        assertFalse(shut.buildable());
        assertEquals(1, shut.reasons().size());
        assertTrue(shut.reasons().get(0).metric().contains("valve"));
        assertTrue(
                shut.verdict().metric().contains("Do not light"), shut.verdict().metric());
    }
}

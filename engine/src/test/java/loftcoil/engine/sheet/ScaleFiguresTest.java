package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import org.junit.jupiter.api.Test;

class ScaleFiguresTest {

    private static final Design BOTHY = Example.orchardBothy();

    /** What the log shows: the same heat in less water, so the outlet is hotter over the inlet. */
    @Test
    void aNarrowedCoilIsSlowerAndHotter() {
        Sheet sheet = Sheet.of(Changes.apply(BOTHY, "site.hardnessMgPerL", "300"));
        ScaleFigures scale = sheet.scale().orElseThrow();
        LoopFigures loop = sheet.loop();
        assertTrue(scale.flowLPerMin() > 0 && scale.flowLPerMin() < loop.flowLPerMin());
        double coolerK = loop.coilOutC() - loop.coilInC();
        assertEquals(loop.flowLPerMin() / scale.flowLPerMin(), scale.riseK() / coolerK, 0.03);
    }

    @Test
    void softOrUnsaidWaterHasNoFigures() {
        assertEquals(Optional.empty(), Sheet.of(BOTHY).scale());
        assertEquals(
                Optional.empty(),
                Sheet.of(Changes.apply(BOTHY, "site.hardnessMgPerL", "40")).scale());
    }
}

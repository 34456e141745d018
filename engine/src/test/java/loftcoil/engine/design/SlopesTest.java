package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class SlopesTest {

    /** A pipe that stands upright has no slope, whichever way it goes. */
    @Test
    void anUprightPieceIsNoFlatPipe() {
        Design bothy = Example.orchardBothy();
        Leg riser = bothy.hotLegs().get(0);
        Leg along = bothy.hotLegs().get(1);
        Leg drop = new Leg(
                "drop", riser.tube(), 0.04, -0.04, riser.fittings(), riser.lagging(), 19, riser.aroundFireOutC());
        Design dropping = bothy.withLegs(bothy.coldLegs(), List.of(riser.withRiseM(riser.riseM() + 0.04), along, drop));

        assertEquals(1000 * along.riseM() / along.levelRunM(), Slopes.leastHotMmPerM(dropping), 1e-9);
    }
}

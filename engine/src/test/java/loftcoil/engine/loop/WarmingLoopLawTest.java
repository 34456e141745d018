package loftcoil.engine.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loftcoil.engine.pipe.Lagging;
import loftcoil.engine.tank.WaterHeat;
import org.junit.jupiter.api.Test;

/** The loop through time with the fire out: the coil is a bare tube in the room. */
class WarmingLoopLawTest {

    private static final double TANK_C = 60;
    private static final double ROOM_C = 19;
    private static final double NIGHT_S = 8 * 3600;

    @Test
    void anUnlitCoilCoolsToTheRoom() {
        WarmingLoop loop = fireOut().warming();
        rest(loop, NIGHT_S);
        // Every part is bare and resting: the copper left alone for a night is as cold as the room.
        assertEquals(ROOM_C, loop.coilOutC(), 0.5);
        assertEquals(ROOM_C, loop.coilInC(), 0.5);
    }

    @Test
    void whatTheUnlitLoopLosesIsMissingFromItsWater() {
        WarmingLoop loop = fireOut().warming();
        double before = loop.heldJ();
        rest(loop, NIGHT_S);
        assertTrue(loop.lostJ() > 0, "it loses heat");
        assertEquals(before - loop.heldJ(), loop.lostJ(), 1e-6 * before);
        assertEquals(0, loop.coilJ());
    }

    private static void rest(WarmingLoop loop, double seconds) {
        loop.stop();
        for (double at = 0; at < seconds; at += 10) {
            loop.carry(10, 0, WaterHeat.jPerKg(TANK_C));
        }
    }

    /** A bare coil of 1.6 m that rises half a metre, 2 m of bare pipe on either side, in a room of 19 °C. */
    private static Circuit fireOut() {
        CircuitPlan plan = new CircuitPlan(
                new LoopHeights(2, 2.3, 2.6),
                List.of(new Pipe("down", Loops.TUBE_22, 2, -1.7, Map.of(), Lagging.NONE, ROOM_C)),
                new Pipe("coil", Loops.TUBE_22, 1.6, 0.5, Map.of(), Lagging.NONE, ROOM_C),
                List.of(new Pipe("up", Loops.TUBE_22, 2, 1.5, Map.of(), Lagging.NONE, ROOM_C)),
                LoopKind.REAL);
        return Circuit.of(plan, new Setting(TANK_C, 600, Firing.out()));
    }
}

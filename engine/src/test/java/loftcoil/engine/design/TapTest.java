package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.supply.TapFlow;
import org.junit.jupiter.api.Test;

class TapTest {

    private static final Tap SINK = new Tap("sink", 1.05, "EN1057 22x0.9", 4, Map.of("elbow90", 5), 6);

    @Test
    void onAnotherTubeTheTapItselfTakesAsMuchHeadAtTheSameFlow() {
        for (String tube : new String[] {"EN1057 18x1.0", "EN1057 28x0.9", "B88 L 1", "EN1057 54x1.2"}) {
            assertEquals(tapHeadM(SINK), tapHeadM(SINK.onTube(tube)), 1e-12, tube);
        }
    }

    @Test
    void awayAndBackIsTheSameTap() {
        assertEquals(6, SINK.onTube("EN1057 28x0.9").onTube(SINK.tube()).outletK(), 1e-9);
    }

    @Test
    void anUnknownTubeLeavesTheTapForTheDesignToRefuse() {
        Tap unknown = SINK.onTube("lead");

        assertEquals(6, unknown.outletK());
        assertEquals("lead", unknown.tube());
    }

    @Test
    void aWideTapOnAThinTubeTakesNothingRatherThanLessThanNothing() {
        assertEquals(0, SINK.onTube("EN1057 10x1.0").outletK());
    }

    @Test
    void aPipeHoweverWideLetsNoMoreThroughThanTheTap() {
        Design piped = Changes.apply(Example.orchardBothy(), "taps.tube", "EN1057 54x1.2");
        TapFlow flow = piped.supply(piped.taps().get(0), 60).alone("kitchen sink");
        double mostLPerMin =
                60_000 * TubeTable.find(SINK.tube()).orElseThrow().areaM2() * Math.sqrt(2 * 9.81 * 1.81 / 7);

        assertTrue(flow.flowLPerMin() < mostLPerMin && flow.flowLPerMin() > 0.95 * mostLPerMin, flow.toString());
    }

    /** Head of the tap and its jet at a litre a second, m. */
    private static double tapHeadM(Tap tap) {
        double speed = 0.001 / TubeTable.find(tap.tube()).orElseThrow().areaM2();
        return (tap.outletK() + 1) * speed * speed / (2 * 9.80665);
    }
}

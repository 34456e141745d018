package loftcoil.engine.loop;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import org.junit.jupiter.api.Test;

/** What a search takes, counted: the counts hang on nothing but the design, so that a slowdown of kind fails on any computer. */
class LoopWorkTest {

    private static final Design BOTHY = Example.orchardBothy();
    private static final Circuit LIT = BOTHY.circuit(40);
    private static final Circuit OUT = BOTHY.circuitFireOut(40);

    /** A few more may come of another rounding. */
    private static final double MOST_TIMES = 1.15;

    private static void assertWork(March march, int flowsKept, int passesKept) {
        String made = march.evaluations() + " trial flows, " + march.passes() + " settlings";
        assertTrue(march.evaluations() > flowsKept / 2 && march.evaluations() <= MOST_TIMES * flowsKept, made);
        assertTrue(march.passes() > passesKept / 2 && march.passes() <= MOST_TIMES * passesKept, made);
    }

    private static Searching searching(Circuit circuit, March march) {
        return new Searching(circuit.plan(), circuit.setting(), circuit.segments(), march);
    }

    @Test
    void allFlowsWithTheFireLit() {
        March march = LIT.march();
        assertTrue(searching(LIT, march).search().circulates());
        assertWork(march, 25, 110);
    }

    @Test
    void allFlowsWithTheFireOut() {
        March march = OUT.march();
        assertTrue(searching(OUT, march).search().fromRest().isPresent());
        assertWork(march, 26, 198);
    }

    /** The flow that a table asks for, without the others, is the one that the whole search tells. */
    @Test
    void theForwardFlowAlone() {
        March march = LIT.march();
        Optional<SteadyFlow> alone = searching(LIT, march).slowestStable(Direction.FORWARD);
        assertWork(march, 12, 70);
        double whole = LIT.search().forward().orElseThrow().flowKgPerS();
        assertTrue(Math.abs(alone.orElseThrow().flowKgPerS() - whole) < 1e-8 * whole, alone + " against " + whole);
    }
}

package loftcoil.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;

/** The tries of a property are a fiftieth by default and all of them where all are asked for. */
class FewerTriesTest {

    private static final int ASKED = 1000;
    private static int tried;

    @Property(seed = "20261128", tries = ASKED)
    void isTried(@ForAll double any) {
        tried++;
        assertEquals(any, any);
    }

    @AfterContainer
    static void asOftenAsItShould() {
        assertEquals(Boolean.getBoolean("loftcoil.thorough") ? 1000 : 20, tried);
    }
}

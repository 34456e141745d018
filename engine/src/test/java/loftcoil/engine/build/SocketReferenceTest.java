package loftcoil.engine.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import loftcoil.engine.pipe.TubeTable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Depth of solder sockets. Copper Development Association, Copper Tube Handbook (A4015), table 14.10: cup depth of fittings in
 * inches. The sizes of EN 1254-1 are from memory and not asserted here.
 */
class SocketReferenceTest {

    private static final double INCH_MM = 25.4;

    @ParameterizedTest
    @CsvSource({"1/2, 0.500", "3/4, 0.750", "1, 0.910", "1-1/4, 0.970"})
    void cupDepthsOfTheHandbook(String size, double inches) {
        // Ours is rounded to a hundredth of a millimetre.
        assertEquals(
                inches * INCH_MM,
                TakeOffs.socketMm(TubeTable.find("B88 L " + size).orElseThrow()),
                0.0051);
    }
}

package loftcoil.engine.fault;

import static loftcoil.engine.fault.Given.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.fire.WoodTable;
import loftcoil.engine.pipe.LaggingTable;
import loftcoil.engine.pipe.TubeTable;
import org.junit.jupiter.api.Test;

class GivenTest {

    @Test
    void whatThereIsIsGiven() {
        assertEquals("a coil", given(Optional.of("a coil")));
        assertEquals(2.5, given(OptionalDouble.of(2.5)));
    }

    @Test
    void nothingIsRefusedAndSaysWhatToAskFirst() {
        RefusedException none = assertThrows(RefusedException.class, () -> given(Optional.empty()));
        assertTrue(none.getMessage().contains("ask isPresent() first"), none.getMessage());
        assertThrows(RefusedException.class, () -> given(OptionalDouble.empty()));
    }

    @Test
    void aRowIsTakenByItsNameAndAnUnknownNameIsRefusedWithTheNearest() {
        assertEquals(0.0202, TubeTable.tube("EN1057 22x0.9").boreM(), 1e-12);
        assertEquals("stone wool", LaggingTable.material("stone wool").name());
        assertEquals("hardwood", WoodTable.wood("hardwood").name());
        RefusedException tube = assertThrows(RefusedException.class, () -> TubeTable.tube("EN1057 22x9"));
        assertTrue(tube.getMessage().contains("EN1057 22x0.9"), tube.getMessage());
        assertThrows(RefusedException.class, () -> LaggingTable.material("wool of sheep"));
        assertThrows(RefusedException.class, () -> WoodTable.wood(""));
    }
}

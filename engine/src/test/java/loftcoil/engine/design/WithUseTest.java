package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;

class WithUseTest {

    private static final Design BOTHY = Example.orchardBothy();

    @Test
    void otherDrawsTakeThePlaceOfTheOldOnes() {
        List<Use> one = List.of(new Use(15, 60, 40, "wash tub"));
        assertEquals(one, BOTHY.withUse(one).use());
        assertEquals(BOTHY, BOTHY.withUse(one).withUse(BOTHY.use()));
    }

    @Test
    void aDrawFromATapThatIsNotThereIsRefusedAtItsPlace() {
        List<Use> lost = List.of(new Use(15, 60, 40, "bath"));
        RefusedException refused = assertThrows(RefusedException.class, () -> BOTHY.withUse(lost));
        assertEquals("use[0].tap", refused.faults().get(0).path());
    }
}

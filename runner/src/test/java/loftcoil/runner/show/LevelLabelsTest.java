package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class LevelLabelsTest {

    @Test
    void labelsFarApartStayWhereTheyBelong() {
        assertEquals(List.of(0.0, 50.0, 100.0), LevelLabels.spread(List.of(0.0, 50.0, 100.0), 20));
    }

    @Test
    void twoCloseLabelsMoveApartEvenly() {
        assertEquals(List.of(41.0, 61.0), LevelLabels.spread(List.of(50.0, 52.0), 20));
    }

    @Property(tries = 500)
    void noTwoLabelsTouchAndNoneIsLost(@ForAll @Size(max = 12) List<@DoubleRange(min = 0, max = 300) Double> places) {
        List<Double> wanted = places.stream().sorted().toList();

        List<Double> placed = LevelLabels.spread(wanted, 20);

        assertEquals(wanted.size(), placed.size());
        for (int i = 1; i < placed.size(); i++) {
            assertTrue(placed.get(i) - placed.get(i - 1) >= 20 - 1e-6, placed.toString());
        }
    }
}

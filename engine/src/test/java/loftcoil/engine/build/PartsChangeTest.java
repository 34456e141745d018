package loftcoil.engine.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.build.PartsChange.Fate;
import loftcoil.engine.build.PartsChange.Line;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import org.junit.jupiter.api.Test;

/** What a rebuild buys and leaves over. */
class PartsChangeTest {

    private static final Design BOTHY = Example.orchardBothy();

    private static PartsChange to(Design after) {
        return PartsChange.between(PartsList.of(BOTHY), PartsList.of(after));
    }

    private static List<Line> of(PartsChange change, Fate fate) {
        return change.lines().stream().filter(line -> line.fate() == fate).toList();
    }

    @Test
    void theSameDesignKeepsAll() {
        PartsChange change = to(BOTHY);

        assertEquals(List.of(), change.lines());
        assertTrue(change.kept().size() > 20);
    }

    @Test
    void aLargerTankIsBoughtAndTheOldOneLeftOver() {
        PartsChange change = to(Changes.apply(BOTHY, "tank.volumeL", "200"));

        assertTrue(of(change, Fate.ADD).stream()
                .anyMatch(line -> line.part().what().code().startsWith("parts.tank.")
                        && Math.abs(line.difference().value() - 200) < 1e-9));
        assertTrue(of(change, Fate.LEFT).stream()
                .anyMatch(line -> line.part().what().code().startsWith("parts.tank.")
                        && Math.abs(line.difference().value() - BOTHY.tank().volumeL()) < 1e-9));
    }

    @Test
    void whatIsMoreThanNeededIsLeftOverByTheDifference() {
        PartsChange there = to(Changes.apply(BOTHY, "window.panes", "4"));
        PartsChange back =
                PartsChange.between(PartsList.of(Changes.apply(BOTHY, "window.panes", "4")), PartsList.of(BOTHY));

        assertEquals(there.lines().size(), back.lines().size());
        for (Line line : of(there, Fate.ADD)) {
            assertTrue(of(back, Fate.LEFT).stream()
                    .anyMatch(other -> other.part()
                                    .what()
                                    .metric()
                                    .equals(line.part().what().metric())
                            && other.difference().equals(line.difference())));
        }
    }
}

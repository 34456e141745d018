package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.words.Measure;
import org.junit.jupiter.api.Test;

/** The house in signs has all that the drawing has, within a narrow terminal. */
class HouseTextTest {

    @Test
    void everythingIsThereAndEachLevelOnce() {
        for (Design design : RandomHouses.withDwellings(20, 4)) {
            Drawing drawing = Drawing.of(design);
            List<String> lines = HouseText.of(drawing, Measure::metric);
            String all = String.join("\n", lines);
            for (String sign : List.of("c", "h", "#", "~", "o", "^")) {
                assertTrue(lines.stream().anyMatch(line -> line.contains(sign)), sign + "\n" + all);
            }
            for (Drawing.Level level : drawing.levels()) {
                long found = lines.stream()
                        .filter(line -> line.endsWith(" " + level.label()))
                        .count();
                assertEquals(
                        drawing.levels().stream()
                                .filter(other -> other.label().equals(level.label()))
                                .count(),
                        found,
                        level.label() + "\n" + all);
            }
            lines.subList(0, lines.size() - 1).forEach(line -> assertTrue(line.length() <= 100, line));
        }
    }

    @Test
    void theTankOfTheBothyStandsAboveItsHeater() {
        List<String> lines = HouseText.of(Drawing.of(Example.orchardBothy()), Measure::metric);
        int water = row(lines, "~");
        int fire = row(lines, "^");
        assertTrue(water >= 0 && water < fire, String.join("\n", lines));
    }

    private static int row(List<String> lines, String sign) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).contains(sign)) {
                return i;
            }
        }
        return -1;
    }
}

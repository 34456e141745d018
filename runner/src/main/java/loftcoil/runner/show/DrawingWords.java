package loftcoil.runner.show;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import loftcoil.engine.sheet.Drawing;

/** What every picture of a loop says of its drawing, on the page as on paper. */
public final class DrawingWords {

    private DrawingWords() {}

    /** The pipes in the order in which the water goes round. */
    public static String roundFromTank(Drawing drawing) {
        return drawing.pipes().stream()
                .map(line -> switch (line.role()) {
                    case COLD -> "cold: " + line.name();
                    case COIL -> "the coil in the fire";
                    case HOT -> "hot: " + line.name();
                    case TAP -> "tap: " + line.name();
                })
                .collect(Collectors.joining("; "));
    }

    /** The levels from the highest to the lowest. */
    public static List<Drawing.Level> levelsDown(Drawing drawing) {
        return drawing.levels().stream()
                .sorted(Comparator.comparingDouble(Drawing.Level::heightM).reversed())
                .toList();
    }
}

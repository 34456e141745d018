package loftcoil.engine.build;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import loftcoil.engine.design.Safety;
import loftcoil.engine.design.Vent;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.pipe.TubeTrade;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;

/**
 * A tube of a design in the size that a merchant knows.
 *
 * @param name its name on the sheet
 * @param ask what to ask for, in the words of its standard
 * @param outside outer diameter
 * @param wall thickness of the wall
 * @param bore inner diameter
 * @param elsewhere what comes near it in each of the other standards, with its bore
 */
public record TubeSize(
        String name, String ask, Measure outside, Measure wall, Measure bore, List<MeasuredText> elsewhere) {

    private static final double MM_PER_M = 1000;

    /** Keeps a copy of the list. */
    public TubeSize {
        elsewhere = List.copyOf(elsewhere);
    }

    /** Those of a sheet, each once: what is cut, and the vent. */
    public static List<TubeSize> of(BuildSheet sheet) {
        Set<String> names = new LinkedHashSet<>();
        sheet.cuts().bars().forEach(bar -> names.add(bar.tube()));
        sheet.design().safety().flatMap(Safety::vent).flatMap(Vent::tube).ifPresent(names::add);
        return names.stream().map(name -> of(TubeTable.require("tube", name))).collect(Collectors.toList());
    }

    private static TubeSize of(Tube tube) {
        return new TubeSize(
                tube.name(),
                TubeTrade.asked(tube),
                size(tube.outerM()),
                size(tube.wallM()),
                size(tube.boreM()),
                TubeTrade.elsewhere(tube).stream()
                        .map(other -> MeasuredText.of(TubeTrade.asked(other) + " (", size(other.boreM()), ")"))
                        .toList());
    }

    private static Measure size(double metres) {
        return Measure.millimetres(metres * MM_PER_M).finer(1);
    }
}

package loftcoil.engine.sheet;

import java.util.Locale;
import java.util.Optional;
import loftcoil.engine.caution.Limescale;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.loop.SteadyFlow;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;

/**
 * Lime in the coil, and what a thermometer shows when it has taken half the bore.
 *
 * @param lime what settles
 * @param narrowed the loop with half the bore in the coil and the same tank; empty where nothing flows then
 */
public record ScaleFigures(Limescale lime, Optional<SteadyFlow> narrowed) {

    private static final double MM_PER_M = 1000;

    /** The lime of a design; empty where nobody said how hard its water is, or none settles. */
    static Optional<ScaleFigures> of(Design design, double tankC) {
        return Limescale.of(design)
                .filter(lime -> lime.kgPerYear() > 0)
                .map(lime -> new ScaleFigures(
                        lime, narrowed(design).circuit(tankC).search().forward()));
    }

    private static Design narrowed(Design design) {
        Tube tube = TubeTable.require("coil.tube", design.coil().tube());
        double wallMm = (tube.wallM() + tube.boreM() / 4) * MM_PER_M;
        return Changes.apply(
                design,
                "coil.tube",
                String.format(
                        Locale.ROOT,
                        "%.3fx%.3f %s",
                        tube.outerM() * MM_PER_M,
                        wallMm,
                        tube.metal().code()));
    }

    double flowLPerMin() {
        return narrowed.map(SteadyFlow::flowLPerMin).orElse(0.0);
    }

    double riseK() {
        return narrowed.map(flow -> flow.coil().endC() - flow.coil().startC()).orElse(Double.NaN);
    }
}

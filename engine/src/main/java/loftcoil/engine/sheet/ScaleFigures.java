package loftcoil.engine.sheet;

import java.util.Optional;
import loftcoil.engine.caution.Limescale;
import loftcoil.engine.design.Design;
import loftcoil.engine.loop.SteadyFlow;

/**
 * Lime in the coil, and what a thermometer shows when it has taken half the bore.
 *
 * @param lime what settles
 * @param narrowed the loop with half the bore in the coil and the same tank; empty where nothing flows then
 */
public record ScaleFigures(Limescale lime, Optional<SteadyFlow> narrowed) {

    private static final double HALF = 0.5;

    /** The lime of a design; empty where nobody said how hard its water is, or none settles. */
    static Optional<ScaleFigures> of(Design design, double tankC) {
        return Limescale.of(design)
                .filter(lime -> lime.kgPerYear() > 0)
                .map(lime -> new ScaleFigures(
                        lime,
                        Limescale.narrowed(design, HALF).circuit(tankC).search().forward()));
    }

    double flowLPerMin() {
        return narrowed.map(SteadyFlow::flowLPerMin).orElse(0.0);
    }

    double riseK() {
        return narrowed.map(flow -> flow.coil().endC() - flow.coil().startC()).orElse(Double.NaN);
    }
}

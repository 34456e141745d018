package loftcoil.engine.sheet;

import loftcoil.engine.design.Window;
import loftcoil.engine.sun.Glass;
import loftcoil.engine.sun.GlazingU;
import loftcoil.engine.sun.PaneStack;

/**
 * The panes by themselves.
 *
 * @param uValueWPerM2K declared U value by EN 673, W/(m² K): upright, air between, heat from room to outside
 * @param transmittanceNormal share of sun square on to them that passes
 */
public record WindowFigures(double uValueWPerM2K, double transmittanceNormal) {

    private static final double M_PER_MM = 0.001;

    static WindowFigures of(Window window) {
        PaneStack panes = new PaneStack(window.panes(), Glass.SALVAGED_FLOAT);
        return new WindowFigures(
                GlazingU.declaredWPerM2K(panes, window.gapMm() * M_PER_MM), panes.transmittanceNormal());
    }
}

package loftcoil.engine.sheet;

import loftcoil.engine.design.Design;
import loftcoil.engine.design.Window;
import loftcoil.engine.sun.Glass;
import loftcoil.engine.sun.GlazingU;
import loftcoil.engine.sun.PaneStack;

/**
 * The panes by themselves.
 *
 * @param uValueWPerM2K declared U value by EN 673, W/(m² K): upright, air between, heat from room to outside
 * @param transmittanceNormal share of sun square on to them that passes
 * @param faceM2 what the sun that shines straight through them sees of the tank, m²
 * @param sunnyM2 area of the panes whose sun reaches the tank, reflectors counted, m²
 */
public record WindowFigures(double uValueWPerM2K, double transmittanceNormal, double faceM2, double sunnyM2) {

    private static final double M_PER_MM = 0.001;

    static WindowFigures of(Design design, Window window) {
        PaneStack panes = new PaneStack(window.panes(), Glass.SALVAGED_FLOAT);
        return new WindowFigures(
                GlazingU.declaredWPerM2K(panes, window.gapMm() * M_PER_MM),
                panes.transmittanceNormal(),
                design.tank().shape().seenFrom(window.tiltDeg()).outlineM2(),
                design.sunnyM2());
    }
}

package loftcoil.engine.sheet;

import loftcoil.engine.design.Design;
import loftcoil.engine.design.Window;
import loftcoil.engine.gas.Atmosphere;
import loftcoil.engine.sun.Glazing;
import loftcoil.engine.sun.GlazingU;
import loftcoil.engine.sun.HottestPanes;
import loftcoil.engine.water.Saturation;

/**
 * What the panes do, by their make alone.
 *
 * @param uValueWPerM2K declared U value by EN 673, W/(m² K): upright, air between, heat from room to outside
 * @param transmittanceNormal share of sun square on to them that passes
 * @param faceM2 what the sun that shines straight through them sees of the tank, m²
 * @param creditedAreaM2 area of the panes whose sun reaches the tank, reflectors counted, m²
 * @param hottest the panes in full sun and cold air, the tank boiling
 */
public record WindowFigures(
        double uValueWPerM2K, double transmittanceNormal, double faceM2, double creditedAreaM2, HottestPanes hottest) {

    static WindowFigures of(Design design, Window window) {
        Glazing glazing = design.glazing().orElseThrow();
        double boilC = Saturation.tempC(Atmosphere.pressurePa(design.site().altitudeM()));
        return new WindowFigures(
                GlazingU.declaredWPerM2K(glazing.panes(), glazing.paneGapM()),
                glazing.panes().transmittanceNormal(),
                design.tank().shape().seenFrom(window.tiltDeg()).outlineM2(),
                design.creditedM2(),
                design.hottestPanes(boilC).orElseThrow());
    }

    /** Hottest of one pane, counted from the tank, °C; NaN where there are not as many. */
    double paneC(int fromTank) {
        int pane = hottest.middleC().size() - fromTank;
        return pane < 0 ? Double.NaN : hottest.middleC().get(pane);
    }
}

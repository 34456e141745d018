package loftcoil.engine.run;

import loftcoil.engine.design.Design;

/** The heat of a design's coil. */
final class Heatings {

    private static final double W_PER_KW = 1000;

    private Heatings() {}

    static CoilHeating of(Design design) {
        return CoilHeating.stated(design.coil().heatKW().orElse(0) * W_PER_KW);
    }
}

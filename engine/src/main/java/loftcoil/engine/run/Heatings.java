package loftcoil.engine.run;

import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.design.Design;
import loftcoil.engine.fire.CoilTable;

/** The heat of a design's coil, ready for the many questions of a table. */
public final class Heatings {

    private Heatings() {}

    /** Heat of a design's coil, as stated where it is stated, else as best estimated; 0 without a fire. */
    public static CoilHeating of(Design design) {
        if (design.coil().heatKW().isPresent()) {
            return design.coilHeating();
        }
        return design.coilInFire()
                .map(CoilTable::of)
                .map(table -> (CoilHeating) (flow, inletC) -> table.heatW(flow, Math.min(Math.max(inletC, 0), 110)))
                .orElse(CoilHeating.stated(0));
    }
}

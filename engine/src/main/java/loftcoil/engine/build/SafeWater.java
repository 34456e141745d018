package loftcoil.engine.build;

import loftcoil.engine.design.Design;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.tank.SafeLevel;

/** The least water level of a design's tank at which a fire may burn. */
final class SafeWater {

    private SafeWater() {}

    /** Above the tank's base, m: the top of the return port and the usual cover. */
    static double leastM(Design design) {
        Tube last = TubeTable.require(
                "hotLegs.tube",
                design.hotLegs().get(design.hotLegs().size() - 1).tube());
        return design.tank().returnPortM() + last.boreM() / 2 + SafeLevel.USUAL_COVER_M;
    }
}

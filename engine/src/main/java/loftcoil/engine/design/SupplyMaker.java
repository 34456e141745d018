package loftcoil.engine.design;

import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.supply.GravitySupply;
import loftcoil.engine.supply.Outlet;
import loftcoil.engine.supply.SupplyPipe;

/** Makes the supply of a tap on its own pipe from a full tank. */
final class SupplyMaker {

    private SupplyMaker() {}

    static GravitySupply of(Design design, Tap tap, double waterC) {
        SupplyPipe pipe = SupplyPipe.copper(TubeTable.require("taps.tube", tap.tube()), tap.lengthM(), tap.fittings());
        Outlet outlet = new Outlet(tap.name(), tap.levelM(), tap.outletK());
        return GravitySupply.single(design.tank().waterlineLevelM(), waterC, pipe, outlet);
    }
}

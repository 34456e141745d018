package loftcoil.engine.design;

import loftcoil.engine.fire.Burn;
import loftcoil.engine.fire.CoilInFire;
import loftcoil.engine.fire.FireCoil;
import loftcoil.engine.fire.Firebox;
import loftcoil.engine.fire.RoomAir;
import loftcoil.engine.fire.WaterFlow;
import loftcoil.engine.fire.WoodTable;
import loftcoil.engine.gas.Atmosphere;
import loftcoil.engine.pipe.TubeTable;

/** Makes the fire of a design with the coil in it: a room heater of common size, the coil free in the flame with common soot. */
final class FireMaker {

    private FireMaker() {}

    static CoilInFire coilInFire(Design design, Fire fire) {
        double pressurePa = Atmosphere.pressurePa(design.site().altitudeM());
        return new CoilInFire(
                coil(design),
                Burn.common(WoodTable.require("fire.wood", fire.wood()), fire.moisturePct(), fire.burnKgPerH()),
                Firebox.common(new RoomAir(design.site().roomC(), pressurePa)));
    }

    /** The coil of the design. */
    static FireCoil coil(Design design) {
        Coil coil = design.coil();
        return FireCoil.common(TubeTable.require("coil.tube", coil.tube()), coil.lengthM())
                .withWindingM(coil.windingM());
    }

    /** Heat of the coil asked of the fire itself, each time anew. */
    static CoilHeating heating(CoilInFire fire) {
        return (flow, inletC) -> fire.at(WaterFlow.within(flow, inletC)).heatW();
    }
}

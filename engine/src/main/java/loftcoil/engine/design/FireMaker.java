package loftcoil.engine.design;

import loftcoil.engine.fire.Burn;
import loftcoil.engine.fire.CoilInFire;
import loftcoil.engine.fire.FireCoil;
import loftcoil.engine.fire.Firebox;
import loftcoil.engine.fire.FireboxSize;
import loftcoil.engine.fire.RoomAir;
import loftcoil.engine.fire.WaterFlow;
import loftcoil.engine.fire.WoodTable;
import loftcoil.engine.gas.Atmosphere;
import loftcoil.engine.pipe.TubeTable;

/** Makes the fire of a design with the coil in it: where the design does not say more, a room heater of common size, the coil free in the flame with common soot. */
final class FireMaker {

    private static final double MM_PER_M = 1000;
    private static final double CM2_PER_M2 = 1e4;

    private FireMaker() {}

    static CoilInFire coilInFire(Design design, Fire fire) {
        double pressurePa = Atmosphere.pressurePa(design.site().altitudeM());
        return new CoilInFire(
                coil(design),
                Burn.common(WoodTable.require("fire.wood", fire.wood()), fire.moisturePct(), fire.burnKgPerH())
                        .withExcessAir(fire.excessAir().orElse(Burn.COMMON_EXCESS_AIR)),
                Firebox.common(new RoomAir(design.site().roomC(), pressurePa)).withSize(size(fire)));
    }

    private static FireboxSize size(Fire fire) {
        FireboxSize common = FireboxSize.COMMON;
        return new FireboxSize(
                fire.fireboxM2().orElse(common.wallM2()),
                fire.passageCm2().orElse(common.passageM2() * CM2_PER_M2) / CM2_PER_M2,
                common.meanBeamM(),
                common.flameEmissivity());
    }

    /** The coil of the design. */
    static FireCoil coil(Design design) {
        Coil coil = design.coil();
        return FireCoil.common(TubeTable.require("coil.tube", coil.tube()), coil.lengthM())
                .withWindingM(coil.windingM())
                .withSootM(coil.sootMm().orElse(FireCoil.COMMON_SOOT_M * MM_PER_M) / MM_PER_M);
    }

    /** Heat of the coil asked of the fire itself, each time anew. */
    static CoilHeating heating(CoilInFire fire) {
        return (flow, inletC) -> fire.at(WaterFlow.within(flow, inletC)).heatW();
    }
}

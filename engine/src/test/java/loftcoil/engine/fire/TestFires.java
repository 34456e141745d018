package loftcoil.engine.fire;

import loftcoil.engine.pipe.TubeTable;

/** Fires the tests of this room share. */
final class TestFires {

    static final WaterFlow WATER = new WaterFlow(0.015, 45);
    static final RoomAir ROOM = new RoomAir(19, 94_100);

    private TestFires() {}

    static Burn burn() {
        return Burn.common(WoodTable.require("wood", "hardwood"), 18, 1.4);
    }

    static CoilInFire with(Burn burn, double lengthM) {
        return new CoilInFire(coil(lengthM), burn, Firebox.common(ROOM));
    }

    static FireCoil coil(double lengthM) {
        return FireCoil.common(TubeTable.require("tube", "EN1057 22x0.9"), lengthM);
    }
}

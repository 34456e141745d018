package loftcoil.engine.design;

import java.util.Optional;
import java.util.OptionalDouble;

/** The ways to change the tank of a design, legs and coil following so that the loop stays closed. */
public sealed interface WithTank permits Design {

    /** The tank is kept full: cold water follows every draw. */
    String AS_DRAWN = "by itself, as water is drawn";

    /** The tank is filled up by hand once a day. */
    String ONCE_A_DAY = "by hand, once a day";

    /** Hour at which a tank is filled by hand where nothing else is said: before the fire is lit. */
    double USUAL_REFILL_H = 16;

    /** Lagging that a bare tank gets when only its material is named, mm. */
    double BARE_TANK_GETS_MM = 50;

    /** The design itself. */
    private Design self() {
        return (Design) this;
    }

    /** The same design with the tank moved to this level, m above the floor; the longest rises follow. */
    default Design withTankBaseM(double baseM) {
        return Stretch.toTank(self(), self().tank().withBaseM(baseM));
    }

    /** The same design with a tank that holds this much when full to the brim, L; its height stays, so it gets wider. */
    default Design withTankVolumeL(double volumeL) {
        return self().withTank(self().tank().withVolumeL(volumeL));
    }

    /**
     * The same design with a tank of this inside height, m. It holds as much as before, so it gets narrower or wider; the
     * waterline keeps its distance from the rim, the ports stay.
     */
    default Design withTankHeightM(double heightM) {
        return self().withTank(self().tank().withHeightM(heightM));
    }

    /** The same design filled to this level, m above the tank's base. */
    default Design withWaterlineM(double waterlineM) {
        return self().withTank(self().tank().withWaterlineM(waterlineM));
    }

    /** The same design with the port to the coil at this level, m above the tank's base; the cold legs follow. */
    default Design withColdPortM(double coldPortM) {
        Tank tank = self().tank();
        return Stretch.toTank(self(), tank.withPorts(coldPortM, tank.returnPortM(), tank.drawPortM()));
    }

    /** The same design with the port of the hot legs at this level, m above the tank's base; the hot legs follow. */
    default Design withReturnPortM(double returnPortM) {
        Tank tank = self().tank();
        return Stretch.toTank(self(), tank.withPorts(tank.coldPortM(), returnPortM, tank.drawPortM()));
    }

    /** The same design with the port to the taps at this level, m above the tank's base. */
    default Design withDrawPortM(double drawPortM) {
        Tank tank = self().tank();
        return Stretch.toTank(self(), tank.withPorts(tank.coldPortM(), tank.returnPortM(), drawPortM));
    }

    /** The same design with this thickness of lagging round the tank, mm; a bare tank gets stone wool; 0 takes it off. */
    default Design withTankLaggingMm(double thicknessMm) {
        LaggingChoice lagging = self().tank().lagging().orElse(LaggingChoice.stoneWool(thicknessMm));
        return self().withTank(self().tank().withLagging(lagging.withThicknessMm(thicknessMm)));
    }

    /** The same design with this material round the tank, {@code none} to take it off; a bare tank gets 50 mm of it. */
    default Design withTankLaggingMaterial(String material) {
        double thicknessMm =
                self().tank().lagging().map(LaggingChoice::thicknessMm).orElse(BARE_TANK_GETS_MM);
        Optional<LaggingChoice> lagging = material.equals(TankChanges.BARE)
                ? Optional.empty()
                : Optional.of(new LaggingChoice(material, thicknessMm));
        return self().withTank(self().tank().withLaggingOrNone(lagging));
    }

    /** The same design filled up {@link #AS_DRAWN} or {@link #ONCE_A_DAY}. */
    default Design withTankRefill(String refill) {
        OptionalDouble atH = refill.equals(ONCE_A_DAY)
                ? OptionalDouble.of(self().tank().refillAtH().orElse(USUAL_REFILL_H))
                : OptionalDouble.empty();
        return self().withTank(self().tank().withRefillAtH(atH));
    }
}

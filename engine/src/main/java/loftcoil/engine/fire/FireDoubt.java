package loftcoil.engine.fire;

/**
 * Something not known of a fire, with its ends. The ends are common practice, no source; correlations of heat transfer
 * themselves are good to 20 %, which the wide ends of the gas passage include.
 */
public enum FireDoubt {
    /** Excess air, times 0.73 to 1.45: 1.6 to 3.2 for the common 2.2. */
    EXCESS_AIR("air beyond its need", 1.6 / 2.2, 3.2 / 2.2),
    /** Unburnt share, times a third to two and a half. */
    UNBURNT("what leaves unburnt", 1.0 / 3, 2.5),
    /** Radiated share, less or more. */
    RADIATED("glow of the embers", -0.1, 0.1),
    /** Passage of the gas, times a half to two: how fast it sweeps over the tube. */
    PASSAGE("passage of the gas", 0.5, 2),
    /** Emissivity that soot adds to the flame, less or more: blue or smoky. */
    FLAME("colour of the flame", -0.2, 0.2),
    /** Soot on the tube, times a third to three. */
    SOOT("soot on the tube", 1.0 / 3, 3),
    /** Length of tube that is reached: a quarter hidden by logs, brackets and itself, or a tenth more. */
    REACHED("tube that is reached", 0.75, 1.1),
    /** Share the heater's body takes, less or more; it moves the flue, not the coil. */
    BODY("what the heater takes", -0.15, 0.15);

    private final String words;
    private final double low;
    private final double high;

    FireDoubt(String words, double low, double high) {
        this.words = words;
        this.low = low;
        this.high = high;
    }

    /** What is not known, in words. */
    public String words() {
        return words;
    }

    /** The fire with this doubt at its low end. */
    public CoilInFire atLow(CoilInFire fire) {
        return moved(fire, low);
    }

    /** The fire with this doubt at its high end. */
    public CoilInFire atHigh(CoilInFire fire) {
        return moved(fire, high);
    }

    private CoilInFire moved(CoilInFire fire, double by) {
        Burn burn = fire.burn();
        Firebox box = fire.firebox();
        FireboxSize size = box.size();
        FireCoil coil = fire.coil();
        return switch (this) {
            case EXCESS_AIR ->
                with(
                        fire,
                        burn.withExcessAir(
                                clamp(burn.excessAir() * by, Burn.EXCESS_AIR.low(), Burn.EXCESS_AIR.high())));
            case UNBURNT -> with(fire, burn.withUnburntShare(Math.min(burn.unburntShare() * by, Burn.UNBURNT.high())));
            case RADIATED ->
                with(
                        fire,
                        box.withRadiatedShare(
                                clamp(box.radiatedShare() + by, Firebox.RADIATED.low(), Firebox.RADIATED.high())));
            case PASSAGE ->
                with(
                        fire,
                        box.withSize(size.withPassageM2(
                                clamp(size.passageM2() * by, FireboxSize.PASSAGE.low(), FireboxSize.PASSAGE.high()))));
            case FLAME ->
                with(
                        fire,
                        box.withSize(size.withFlameEmissivity(
                                clamp(size.flameEmissivity() + by, 0, FireboxSize.EMISSIVITY.high()))));
            case SOOT -> with(fire, coil.withSootM(Math.min(coil.sootM() * by, FireCoil.SOOT.high())));
            case REACHED -> with(fire, coil.withLengthM(Math.min(coil.lengthM() * by, FireCoil.LENGTH.high())));
            case BODY -> with(fire, box.withBodyShare(clamp(box.bodyShare() + by, 0, Firebox.BODY.high())));
        };
    }

    /** A fire that would go out at the end of a doubt stays as it is: that end cannot be the truth. */
    private static CoilInFire with(CoilInFire fire, Burn burn) {
        return burn.adiabaticC() < CoilInFire.LEAST_FLAME_C ? fire : new CoilInFire(fire.coil(), burn, fire.firebox());
    }

    private static CoilInFire with(CoilInFire fire, Firebox firebox) {
        return new CoilInFire(fire.coil(), fire.burn(), firebox);
    }

    private static CoilInFire with(CoilInFire fire, FireCoil coil) {
        return new CoilInFire(coil, fire.burn(), fire.firebox());
    }

    private static double clamp(double value, double low, double high) {
        return Math.min(Math.max(value, low), high);
    }
}

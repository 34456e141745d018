package loftcoil.engine.fire;

import loftcoil.engine.fault.Allowed;

/**
 * The heater the coil sits in, as two shares: what embers and flame radiate at once, and what the body of the heater takes
 * from the gas after the coil.
 *
 * <p>The common shares make a heater without a coil give the room 66 % of the wood's net heat, which is 61 % of its gross heat
 * at 20 % moisture; 63 % of the gross heat is the default efficiency the US EPA took for wood heaters without a catalyst. The
 * split between the two is common practice, no source.
 *
 * @param size sizes of the firebox
 * @param radiatedShare share of the released heat that embers and flame radiate to walls and coil, 0.05 to 0.7
 * @param bodyShare share of the heat left in the gas after the coil that the heater's body gives to the room, 0 to 0.9
 * @param air the air of the room
 */
public record Firebox(FireboxSize size, double radiatedShare, double bodyShare, RoomAir air) {

    /** Radiated share where nothing better is known; 0.25 to 0.45 in others. Common practice, no source. */
    public static final double COMMON_RADIATED = 0.35;

    /** Share the body takes where nothing better is known; 0.35 to 0.65 in others. Common practice, no source. */
    public static final double COMMON_BODY = 0.55;

    /** The radiated shares accepted. */
    public static final Allowed RADIATED = new Allowed(0.05, 0.7, "");
    /** The shares of the body accepted. */
    public static final Allowed BODY = new Allowed(0, 0.9, "");

    /**
     * Checks the shares.
     *
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public Firebox {
        RADIATED.require("radiatedShare", radiatedShare);
        BODY.require("bodyShare", bodyShare);
    }

    /** A room heater of common size and shares in this air. */
    public static Firebox common(RoomAir air) {
        return new Firebox(FireboxSize.COMMON, COMMON_RADIATED, COMMON_BODY, air);
    }

    /** The same heater with other sizes. */
    public Firebox withSize(FireboxSize newSize) {
        return new Firebox(newSize, radiatedShare, bodyShare, air);
    }

    /** The same heater with another radiated share. */
    public Firebox withRadiatedShare(double newRadiatedShare) {
        return new Firebox(size, newRadiatedShare, bodyShare, air);
    }

    /** The same heater with another share taken by its body. */
    public Firebox withBodyShare(double newBodyShare) {
        return new Firebox(size, radiatedShare, newBodyShare, air);
    }
}

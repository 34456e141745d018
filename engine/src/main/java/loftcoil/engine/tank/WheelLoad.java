package loftcoil.engine.tank;

import loftcoil.engine.constant.Constants;

/**
 * Statics of a dwelling on wheels with its tank, standing on level ground on axle and hitch: moments about the axle for the
 * hitch, about the middle line for left and right, and the side tilt at which the resultant passes over the tyres of one side.
 *
 * <p>Simple statics of rigid bodies: no springs, no tyre give, no corner, no gust, and water that does not move. A part-full
 * tank sloshes and tips sooner than this. Drain the tank before towing; axle, hitch and tyre limits are the maker's and the
 * road authority's.
 *
 * @param axleN weight on the axle in N
 * @param hitchN weight on the hitch in N; negative where it lifts
 * @param heavierSideN weight on the wheels of the heavier side in N
 * @param lighterSideN weight on those of the lighter side in N; negative where it already tips
 * @param tipsAtDeg side tilt at which it tips toward the heavier side, in degrees; 0 or less where it already tips
 */
public record WheelLoad(double axleN, double hitchN, double heavierSideN, double lighterSideN, double tipsAtDeg) {

    /**
     * Adds a tank to a trailer.
     *
     * @param trailer the dwelling without it
     * @param tank what the tank weighs, full or not
     * @param place where its centre of mass is
     */
    public static WheelLoad of(Trailer trailer, FullWeight tank, TankPlace place) {
        double dwellingN = trailer.massKg() * Constants.GRAVITY_M_PER_S2;
        double tankN = tank.forceN();
        double totalN = dwellingN + tankN;
        double hitchN = (dwellingN * trailer.centreAheadM() + tankN * place.aheadM()) / trailer.hitchAheadM();
        double axleN = totalN - hitchN;
        double asideM = tankN * Math.abs(place.asideM()) / totalN;
        double heightM = (dwellingN * trailer.centreHeightM() + tankN * place.heightM()) / totalN;
        double halfTrackM = trailer.trackM() / 2;
        // The hitch carries no sideways moment, so both sides of the axle share the whole of it.
        double shiftN = totalN * asideM / trailer.trackM();
        double tipsAtDeg = Math.toDegrees(Math.atan2(halfTrackM - asideM, heightM));
        return new WheelLoad(axleN, hitchN, axleN / 2 + shiftN, axleN / 2 - shiftN, tipsAtDeg);
    }

    /** Share of the whole weight that the axle carries, 1 where the hitch carries none. */
    public double axleShare() {
        return axleN / (axleN + hitchN);
    }
}

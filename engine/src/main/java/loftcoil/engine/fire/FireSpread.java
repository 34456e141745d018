package loftcoil.engine.fire;

import java.util.function.ToDoubleFunction;

/**
 * How far what is not known of a fire moves a figure of it. Each {@link FireDoubt} is taken to its low and its high end alone,
 * and the effects are added as the root of the sum of squares (first-order propagation without correlation, JCGM 100:2008,
 * section 5.1).
 */
public final class FireSpread {

    private FireSpread() {}

    /**
     * A figure of the fire with its spread over all doubts.
     *
     * @param fire the fire as best known
     * @param figure what is asked of it
     */
    public static LowMidHigh of(CoilInFire fire, ToDoubleFunction<CoilInFire> figure) {
        double mid = figure.applyAsDouble(fire);
        double down = 0;
        double up = 0;
        for (FireDoubt doubt : FireDoubt.values()) {
            double one = figure.applyAsDouble(doubt.atLow(fire)) - mid;
            double other = figure.applyAsDouble(doubt.atHigh(fire)) - mid;
            double least = Math.min(0, Math.min(one, other));
            double most = Math.max(0, Math.max(one, other));
            down += least * least;
            up += most * most;
        }
        return new LowMidHigh(mid - Math.sqrt(down), mid, mid + Math.sqrt(up));
    }

    /**
     * Heat to the water, W, with its spread; never below zero nor above what the fire releases.
     *
     * @param fire the fire as best known
     * @param water the water that enters the coil
     */
    public static LowMidHigh coilW(CoilInFire fire, WaterFlow water) {
        return of(fire, one -> one.at(water).heatW()).within(0, fire.burn().releasedW());
    }

    /**
     * Temperature of the gas as it leaves the heater, °C, with its spread; never below the air of the room.
     *
     * @param fire the fire as best known
     * @param water the water that enters the coil
     */
    public static LowMidHigh flueC(CoilInFire fire, WaterFlow water) {
        return of(fire, one -> one.balance(water).flueC())
                .within(fire.firebox().air().tempC(), Double.MAX_VALUE);
    }

    /**
     * The same where the coil's heat is known: then only the fire is in doubt. A fire that cannot give that heat leaves the gas
     * as cold as the room.
     *
     * @param fire the fire as best known
     * @param coilW heat the water takes up in W, 0 to 200 000
     * @param water the water that enters the coil
     * @throws loftcoil.engine.fault.RefusedException where the heat is outside its range or not a number
     */
    public static LowMidHigh flueC(CoilInFire fire, double coilW, WaterFlow water) {
        double roomC = fire.firebox().air().tempC();
        return of(fire, one -> one.accountOf(coilW, water).match(FireBalance::flueC, overdrawn -> roomC))
                .within(roomC, Double.MAX_VALUE);
    }
}

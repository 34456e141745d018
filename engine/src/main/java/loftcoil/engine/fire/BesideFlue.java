package loftcoil.engine.fire;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.heat.GreyRadiation;

/**
 * How warm it is for a pipe that runs beside a single-wall flue: an estimate for the surroundings of a leg where nobody has
 * hung a thermometer.
 *
 * <p>The flue's outer surface lies between gas and room by a film of {@value #INSIDE_W_PER_M2_K} inside and {@value
 * #OUTSIDE_W_PER_M2_K} W/(m² K) outside. The pipe sees the flue under the angle of a parallel cylinder and the room for the
 * rest; a sheet-metal shield halves what the flue sends. What it feels lies between the air of the room and that radiant
 * temperature, halfway. Films and halves are common practice, no source: take it to 15 K.
 *
 * @param flueOuterM outer diameter of the flue in m, 0.05 to 0.6
 * @param gapM clear distance between flue and pipe in m, 0.005 to 3
 * @param shielded whether a sheet of metal stands between them with air on both sides
 */
public record BesideFlue(double flueOuterM, double gapM, boolean shielded) {

    /** Film between gas and flue, convection and glow, W/(m² K). */
    public static final double INSIDE_W_PER_M2_K = 10;

    /** Film between flue and room, convection and radiation, W/(m² K). */
    public static final double OUTSIDE_W_PER_M2_K = 15;

    private static final Allowed OUTER = new Allowed(0.05, 0.6, "m");
    private static final Allowed GAP = new Allowed(0.005, 3, "m");
    private static final Allowed GAS = new Allowed(-40, 1200, "°C");
    private static final Allowed ROOM = new Allowed(-40, 60, "°C");

    /**
     * Checks the sizes.
     *
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public BesideFlue {
        OUTER.require("flueOuterM", flueOuterM);
        GAP.require("gapM", gapM);
    }

    /**
     * Temperature of the flue's outer surface.
     *
     * @param gasC temperature of the flue gas in °C, -40 to 1200
     * @param roomC temperature of the room in °C, -40 to 60
     * @return °C
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public static double surfaceC(double gasC, double roomC) {
        double gas = GAS.require("gasC", gasC);
        double room = ROOM.require("roomC", roomC);
        return (INSIDE_W_PER_M2_K * gas + OUTSIDE_W_PER_M2_K * room) / (INSIDE_W_PER_M2_K + OUTSIDE_W_PER_M2_K);
    }

    /**
     * Share of the pipe's view that the flue fills: half the angle it subtends over half a turn, {@code asin(r / (r + gap)) / π}.
     *
     * @return 0 to 0.5
     */
    public double viewShare() {
        double radius = flueOuterM / 2;
        return Math.asin(radius / (radius + gapM)) / Math.PI;
    }

    /**
     * Temperature the pipe has around it.
     *
     * @param gasC temperature of the flue gas in °C, -40 to 1200
     * @param roomC temperature of the room in °C, -40 to 60
     * @return °C
     * @throws loftcoil.engine.fault.RefusedException where a value is outside its range or not a number
     */
    public double aroundC(double gasC, double roomC) {
        double share = shielded ? viewShare() / 2 : viewShare();
        double radiant = share * fourth(surfaceC(gasC, roomC)) + (1 - share) * fourth(roomC);
        double radiantC = Math.sqrt(Math.sqrt(radiant)) - Constants.KELVIN_AT_ZERO_C;
        return (roomC + GreyRadiation.TEMPERATURE.require("radiantC", radiantC)) / 2;
    }

    private static double fourth(double tempC) {
        double kelvin = tempC + Constants.KELVIN_AT_ZERO_C;
        return kelvin * kelvin * kelvin * kelvin;
    }
}

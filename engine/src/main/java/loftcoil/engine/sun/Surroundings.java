package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * What the outermost pane faces.
 *
 * @param windFilmWPerM2K convection to the air in W/(m² K), 2 to 50: about 5 in still air, 10 in a light breeze; by McAdams
 *     (1954) 5.7 + 3.8 times the wind in m/s
 * @param skyBelowAirK how much colder than the air the sky radiates, in K, 0 to 40: 0 under cloud, about 20 on a clear night
 *     (Swinbank, 1963)
 * @param albedo share of the sun the ground throws back, 0 to 1
 */
public record Surroundings(double windFilmWPerM2K, double skyBelowAirK, double albedo) {

    private static final Allowed WIND_FILM = new Allowed(2, 50, "W/(m² K)");
    private static final Allowed SKY_BELOW = new Allowed(0, 40, "K");

    /** A light breeze, a sky half clouded over the year, grass (common practice, no source). */
    public static final Surroundings USUAL = new Surroundings(10, 10, 0.2);

    /**
     * Checks every part.
     *
     * @throws RefusedException with all faults, where a part is outside its range or not a number
     */
    public Surroundings {
        new FaultList()
                .check("windFilmWPerM2K", windFilmWPerM2K, WIND_FILM)
                .check("skyBelowAirK", skyBelowAirK, SKY_BELOW)
                .check("albedo", albedo, HdkrSky.ALBEDO)
                .refuseIfAny();
    }
}

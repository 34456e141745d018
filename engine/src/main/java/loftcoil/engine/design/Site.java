package loftcoil.engine.design;

import java.util.OptionalDouble;

/**
 * Where the dwelling stands.
 *
 * @param latitudeDeg latitude, degrees, north positive; −90 to 90
 * @param longitudeDeg longitude, degrees, east positive; −180 to 180
 * @param altitudeM altitude above the sea, m; −400 to 5000
 * @param utcOffsetH standard time minus UTC, h; −12 to 14
 * @param monthly monthly climate
 * @param coldSupplyC temperature of the cold supply, °C; 0 to 35
 * @param roomC temperature of the rooms, °C; 0 to 40
 * @param coldestNightC air on the coldest night that happens in some ten years, °C; −70 to 30; empty where nobody said it
 * @param hardnessMgPerL hardness of the water that fills the tank, mg/L as CaCO₃; 0 to 1000; empty where nobody said it
 */
public record Site(
        double latitudeDeg,
        double longitudeDeg,
        double altitudeM,
        double utcOffsetH,
        Monthly monthly,
        double coldSupplyC,
        double roomC,
        OptionalDouble coldestNightC,
        OptionalDouble hardnessMgPerL) {}

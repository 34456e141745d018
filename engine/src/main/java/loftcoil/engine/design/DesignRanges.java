package loftcoil.engine.design;

import loftcoil.engine.fault.Allowed;

/**
 * Allowed ranges of the numbers in a design: wide enough for anything a self-builder would make, tight enough to catch a
 * wrong unit (millimetres for metres, watts for kilowatts).
 */
final class DesignRanges {

    static final Allowed LATITUDE = new Allowed(-90, 90, "degrees");
    static final Allowed LONGITUDE = new Allowed(-180, 180, "degrees");
    static final Allowed ALTITUDE = new Allowed(-400, 5000, "m");
    static final Allowed UTC_OFFSET = new Allowed(-12, 14, "h");
    static final Allowed SUN = new Allowed(0, 12, "kWh/m² a day");
    static final Allowed AIR = new Allowed(-50, 45, "°C");
    static final Allowed COLD_SUPPLY = new Allowed(0, 35, "°C");
    static final Allowed ROOM = new Allowed(0, 40, "°C");
    static final Allowed VOLUME = new Allowed(10, 5000, "L");
    static final Allowed IN_TANK = new Allowed(0, 5, "m");
    static final Allowed TANK_HEIGHT = new Allowed(0.1, 5, "m");
    static final Allowed LEVEL = new Allowed(-10, 15, "m");
    static final Allowed LAGGING = new Allowed(0, 300, "mm");
    static final Allowed EMPTY_MASS = new Allowed(0, 3000, "kg");
    static final Allowed TANK_AROUND = new Allowed(-30, 60, "°C");
    static final Allowed COIL_LENGTH = new Allowed(0.1, 50, "m");
    static final Allowed HEAT = new Allowed(0, 50, "kW");
    static final Allowed LEG_LENGTH = new Allowed(0.01, 100, "m");
    static final Allowed LEG_AROUND = new Allowed(-30, 250, "°C");
    static final Allowed FITTINGS = new Allowed(0, 50, "");
    static final Allowed RUN = new Allowed(0, 60, "m");
    static final Allowed SLOPE = new Allowed(-1000, 1000, "mm/m");
    static final Allowed VALVES = new Allowed(0, 10, "");
    static final Allowed LEGS = new Allowed(1, 20, "legs");
    static final Allowed MOISTURE = new Allowed(0, 60, "%");
    static final Allowed BURN = new Allowed(0.1, 20, "kg/h");
    static final Allowed HOUR = new Allowed(0, 24, "h");
    static final Allowed MONTH = new Allowed(1, 12, "");
    static final Allowed PANES = new Allowed(1, 4, "");
    static final Allowed PANE_AREA = new Allowed(0.05, 20, "m²");
    static final Allowed TILT = new Allowed(0, 90, "degrees");
    static final Allowed AZIMUTH = new Allowed(0, 360, "degrees");
    static final Allowed GAP = new Allowed(3, 60, "mm");
    static final Allowed ABSORPTANCE = new Allowed(0, 1, "");
    static final Allowed SHUTTER = new Allowed(0, 5, "m² K/W");
    static final Allowed TAP_LENGTH = new Allowed(0.01, 200, "m");
    static final Allowed OUTLET_K = new Allowed(0, 1000, "");
    static final Allowed MIXER = new Allowed(20, 70, "°C");
    static final Allowed LITRES = new Allowed(0, 2000, "L");
    static final Allowed MIXED = new Allowed(5, 90, "°C");

    private DesignRanges() {}
}

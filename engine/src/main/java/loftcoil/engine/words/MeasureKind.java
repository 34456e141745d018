package loftcoil.engine.words;

/** What a measure is, and the metric unit its number is in. */
public enum MeasureKind {
    /** A length or level in m. */
    LENGTH_M("m", 2),
    /** A small length in mm: cuts, bores, lagging. */
    SMALL_LENGTH_MM("mm", 0),
    /** A slope in mm of rise for each m of level run. */
    SLOPE_MM_PER_M("mm/m", 0),
    /** An area in m². */
    AREA_M2("m²", 2),
    /** A small area in cm²: openings for air. */
    SMALL_AREA_CM2("cm²", 0),
    /** A volume in L. */
    VOLUME_L("L", 1),
    /** A mass in kg. */
    MASS_KG("kg", 1),
    /** A small mass in g, for a kitchen scale. */
    SMALL_MASS_G("g", 0),
    /** A mass of each metre of tube, kg/m. */
    MASS_KG_PER_M("kg/m", 2),
    /** A density in kg/m³. */
    DENSITY_KG_PER_M3("kg/m³", 0),
    /** A mass in each hour, kg/h. */
    MASS_KG_PER_H("kg/h", 1),
    /** A flow by mass in kg/s. */
    FLOW_KG_PER_S("kg/s", 4),
    /** A flow in L/min. */
    FLOW_L_PER_MIN("L/min", 1),
    /** A flow in L/min, its unit in words as in the first sentence on a loop. */
    FLOW_LITRES_A_MINUTE("litres a minute", 2),
    /** A temperature in °C. */
    TEMP_C("°C", 0),
    /** A difference of temperatures in K. */
    TEMP_DIFF_K("K", 0),
    /** A difference of temperatures, said in °C as builders do. */
    TEMP_DIFF_C("°C", 1),
    /** A resistance of an area to heat in m² K/W. */
    RESISTANCE_M2K_PER_W("m² K/W", 2),
    /** A heat flow in W. */
    POWER_W("W", 0),
    /** The heat flow of a fire or a coil in kW. */
    POWER_KW("kW", 1),
    /** Heat passed by an area for each kelvin, W/(m² K). */
    U_VALUE("W/(m² K)", 2),
    /** Heat in kWh. */
    ENERGY_KWH("kWh", 1),
    /** A pressure in Pa. */
    PRESSURE_PA("Pa", 0),
    /** The pressure at a tap in kPa. */
    PRESSURE_KPA("kPa", 0),
    /** A weight as a force in N. */
    FORCE_N("N", 0),
    /** A load on an area in kN/m². */
    LOAD_KN_PER_M2("kN/m²", 2),
    /** A short time in s. */
    TIME_S("s", 0),
    /** A time in min. */
    TIME_MIN("min", 0),
    /** A time in h, or the hour of the day. */
    TIME_H("h", 1),
    /** An angle in degrees. */
    ANGLE_DEG("°", 0),
    /** A share in percent. */
    PERCENT("%", 0),
    /** A share of one, 0 to 1, that is written in percent. */
    SHARE("%", 0),
    /** A number of pieces. */
    COUNT("", 0),
    /** A plain number. */
    NONE("", 2);

    private final String unit;
    private final int decimals;

    MeasureKind(String unit, int decimals) {
        this.unit = unit;
        this.decimals = decimals;
    }

    /** Metric unit as written; empty for plain numbers. */
    public String unit() {
        return unit;
    }

    /** Metric unit of the number itself: that of {@link #unit}, but a share has none. */
    public String ownUnit() {
        return this == SHARE ? "" : unit;
    }

    /** Decimal places that a builder can use. */
    public int decimals() {
        return decimals;
    }
}

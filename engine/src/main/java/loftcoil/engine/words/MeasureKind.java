package loftcoil.engine.words;

import static loftcoil.engine.words.UsUnit.Style.FEET;
import static loftcoil.engine.words.UsUnit.Style.INCHES;

import java.util.Optional;
import java.util.stream.Stream;

/** What a measure is: the metric unit its number is in, how that is written, and what a US workshop writes in its place. */
public enum MeasureKind {
    /** A length or level in m. */
    LENGTH_M("m", 2, UsUnit.tape(FEET, "ft", UsUnit.M_PER_FT)),
    /** A length in m that somebody holds a tape to: from 10 cm in cm, below that in mm, as a builder says it. */
    TAPE_M("m", 2, UsUnit.tape(FEET, "ft", UsUnit.M_PER_FT)),
    /** A small length in mm: cuts, bores, lagging. */
    SMALL_LENGTH_MM("mm", 0, UsUnit.tape(INCHES, "in", UsUnit.M_PER_IN * 1000)),
    /** A slope in mm of rise for each m of level run. */
    SLOPE_MM_PER_M("mm/m", 0, UsUnit.places(2, "in/ft", 1000.0 / 12)),
    /** An area in m². */
    AREA_M2("m²", 2, UsUnit.places(1, "ft²", UsUnit.M_PER_FT * UsUnit.M_PER_FT)),
    /** A small area in cm²: openings for air. */
    SMALL_AREA_CM2("cm²", 0, UsUnit.places(1, "in²", 2.54 * 2.54)),
    /** A volume in L. */
    VOLUME_L("L", 1, UsUnit.places(1, "US gal", UsUnit.L_PER_GAL).finerBelow(3)),
    /** A mass in kg. */
    MASS_KG("kg", 1, UsUnit.places(0, "lb", UsUnit.KG_PER_LB).finerBelow(20)),
    /** A small mass in g, for a kitchen scale. */
    SMALL_MASS_G("g", 0, UsUnit.places(1, "oz", UsUnit.KG_PER_LB * 1000 / 16)),
    /** A mass of each metre of tube, kg/m. */
    MASS_KG_PER_M("kg/m", 2, UsUnit.places(2, "lb/ft", UsUnit.KG_PER_LB / UsUnit.M_PER_FT)),
    /** A density in kg/m³. */
    DENSITY_KG_PER_M3("kg/m³", 0, UsUnit.digits("lb/ft³", UsUnit.KG_PER_LB / Math.pow(UsUnit.M_PER_FT, 3))),
    /** A mass in each hour, kg/h. */
    MASS_KG_PER_H("kg/h", 1, UsUnit.places(1, "lb/h", UsUnit.KG_PER_LB)),
    /** A flow by mass in kg/s. */
    FLOW_KG_PER_S("kg/s", 4, UsUnit.digits("lb/min", UsUnit.KG_PER_LB / 60)),
    /** A flow in L/min. */
    FLOW_L_PER_MIN("L/min", 1, UsUnit.coarse("US gal/min", UsUnit.L_PER_GAL)),
    /** A flow in L/min, its unit in words as in the first sentence on a loop. */
    FLOW_LITRES_A_MINUTE(
            "litres a minute",
            2,
            UsUnit.coarse("US gallons a minute", UsUnit.L_PER_GAL).typedAs("US gal/min")),
    /** A temperature in °C. */
    TEMP_C("°C", 0, UsUnit.places(0, "°F", UsUnit.K_PER_F).from(-UsUnit.FREEZING_F * UsUnit.K_PER_F)),
    /** A difference of temperatures in K, which is shown as builders and the course say it, in °C. */
    TEMP_DIFF_K("°C", 0, UsUnit.places(0, "°F", UsUnit.K_PER_F)),
    /** A resistance of an area to heat in m² K/W. */
    RESISTANCE_M2K_PER_W(
            "m² K/W",
            2,
            UsUnit.places(1, "ft² h °F/Btu", UsUnit.K_PER_F * UsUnit.M_PER_FT * UsUnit.M_PER_FT / UsUnit.W_PER_BTU_H)),
    /** A heat flow in W: the same for every reader, as lessons, Java and electricity meters say it; Btu/h can be typed. */
    POWER_W("W", 0, UsUnit.alike()),
    /** The heat flow of a fire or a coil in kW. */
    POWER_KW("kW", 1, UsUnit.alike()),
    /** Heat passed by an area for each kelvin, W/(m² K). */
    U_VALUE(
            "W/(m² K)",
            2,
            UsUnit.digits("Btu/(h ft² °F)", UsUnit.W_PER_BTU_H / (UsUnit.K_PER_F * UsUnit.M_PER_FT * UsUnit.M_PER_FT))),
    /** Heat in kWh. */
    ENERGY_KWH("kWh", 1, UsUnit.alike()),
    /** Heat flow into or out of each metre of pipe, W/m. */
    HEAT_W_PER_M("W/m", 1, UsUnit.digits("W/ft", 1 / UsUnit.M_PER_FT)),
    /** Heat flow through each square metre, W/m². */
    HEAT_W_PER_M2("W/m²", 0, UsUnit.digits("W/ft²", 1 / (UsUnit.M_PER_FT * UsUnit.M_PER_FT))),
    /** Heat of a day in kWh. */
    ENERGY_KWH_A_DAY("kWh a day", 1, UsUnit.alike()),
    /** Sun on an area in a day, kWh/m²: sun maps everywhere say it so. */
    SUN_KWH_PER_M2_DAY("kWh/m² a day", 2, UsUnit.alike()),
    /** Heat in each kilogram of wood, kWh/kg. */
    HEATING_VALUE_KWH_PER_KG("kWh/kg", 2, UsUnit.digits("kWh/lb", 1 / UsUnit.KG_PER_LB)),
    /** Lime in water, as CaCO3, mg/L. */
    HARDNESS_MG_PER_L("mg/L", 0, UsUnit.places(1, "gpg", UsUnit.MG_PER_GRAIN / UsUnit.L_PER_GAL)),
    /** A large mass in t. */
    LARGE_MASS_T("t", 1, UsUnit.digits("lb", UsUnit.KG_PER_LB / 1000)),
    /** A pressure in Pa. */
    PRESSURE_PA("Pa", 0, UsUnit.digits("inH₂O", UsUnit.PA_PER_IN_OF_WATER)),
    /** The pressure at a tap in kPa. */
    PRESSURE_KPA("kPa", 0, UsUnit.places(1, "psi", UsUnit.PA_PER_PSI / 1000).finerBelow(1)),
    /** A weight as a force in N. */
    FORCE_N("N", 0, UsUnit.digits("lbf", UsUnit.N_PER_LBF)),
    /** A load to hand over to whoever reckons what carries it. */
    FORCE_KN("kN", 2, UsUnit.digits("lbf", UsUnit.N_PER_LBF / 1000)),
    /** A load on an area in kN/m². */
    LOAD_KN_PER_M2("kN/m²", 2, UsUnit.digits("lbf/ft²", UsUnit.N_PER_LBF / (1000 * UsUnit.M_PER_FT * UsUnit.M_PER_FT))),
    /** A short time in s. */
    TIME_S("s", 0, UsUnit.alike()),
    /** A time in min. */
    TIME_MIN("min", 0, UsUnit.alike()),
    /** A time in h; of hundreds no tenth counts, however fine it is asked for. */
    TIME_H("h", 1, UsUnit.alike()),
    /** An hour of the day, as a clock shows it. */
    CLOCK_H("", 0, UsUnit.clock()),
    /** An angle in degrees. */
    ANGLE_DEG("°", 0, UsUnit.alike()),
    /** A share in percent. */
    PERCENT("%", 0, UsUnit.alike()),
    /** A share of one, 0 to 1, that is written in percent. */
    SHARE("%", 0, UsUnit.alike()),
    /** A number of pieces. */
    COUNT("", 0, UsUnit.alike()),
    /** A plain number. */
    NONE("", 2, UsUnit.alike());

    private final String unit;
    private final int decimals;

    @SuppressWarnings("ImmutableEnumChecker") // a record of text and numbers
    private final UsUnit us;

    MeasureKind(String unit, int decimals, UsUnit us) {
        this.unit = unit;
        this.decimals = decimals;
        this.us = us;
    }

    /** How a unit says that its number is the difference of two temperatures: 10 °C apart are 18 °F, and not 50 °F. */
    static final String APART = "°C apart";

    /**
     * The kind whose metric unit is written so, the first of them; empty where there is none, or no unit. A number in °C is a
     * temperature; the difference of two is written in {@code °C apart} or {@code K}.
     */
    public static Optional<MeasureKind> ofUnit(String unit) {
        if (unit.equals(APART) || unit.equals("K")) {
            return Optional.of(TEMP_DIFF_K);
        }
        return unit.isEmpty()
                ? Optional.empty()
                : Stream.of(values()).filter(kind -> kind.unit.equals(unit)).findFirst();
    }

    UsUnit us() {
        return us;
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

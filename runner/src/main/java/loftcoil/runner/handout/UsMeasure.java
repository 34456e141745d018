package loftcoil.runner.handout;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Pattern;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.unit.UnitText;
import loftcoil.runner.unit.WrittenUnit;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;

/** A measure in the units of a US workshop, with digits that a builder can use. */
final class UsMeasure {

    private static final double FEW_POUNDS = 20;
    private static final double FEW_GALLONS = 3;
    private static final double FEW_DEGREES = 10;
    private static final double SMALL_FLOW = 0.1;
    private static final int THREE_DIGITS = 3;

    /** Between digits before the point, where so many threes follow up to it. */
    private static final Pattern THOUSANDS = Pattern.compile("(?<=^−?\\d{1,12})(?=(?:\\d{3})+(?:\\.|$))");

    /** The "R-value" of a US merchant in ft² h °F/Btu that is 1 m² K/W. */
    private static final double HOURS_FT2_F_PER_BTU = unit("m²").to(unit("ft²"), 1)
            * unit("K").stepTo(unit("°F"), 1)
            / unit("W").to(unit("BTU/h"), 1);

    private static final WrittenUnit POUND_FORCE = new WrittenUnit("lbf", Imperial.POUND_FORCE);
    private static final WrittenUnit POUNDS_PER_SQUARE_FOOT =
            new WrittenUnit("lbf/ft²", Imperial.POUND_FORCE.divide(USCustomary.SQUARE_FOOT));
    private static final WrittenUnit KILONEWTON_PER_M2 = unit("kPa");

    private UsMeasure() {}

    /** The number with its unit where that is part of it, as with feet and inches. */
    static String number(Measure measure) {
        double value = measure.value();
        int more = measure.finer();
        return switch (measure.kind()) {
            case LENGTH_M -> FeetAndInches.longLength(value);
            case SMALL_LENGTH_MM -> FeetAndInches.smallLength(value);
            case SLOPE_MM_PER_M ->
                decimals(unit("mm").to(unit("in"), value) / unit("m").to(unit("ft"), 1), 2 + more);
            case AREA_M2 -> decimals(unit("m²").to(unit("ft²"), value), 1 + more);
            case SMALL_AREA_CM2 -> decimals(unit("cm²").to(unit("in²"), value), 1 + more);
            case VOLUME_L -> {
                double gallons = unit("L").to(unit("US gal"), value);
                yield decimals(gallons, (Math.abs(gallons) < FEW_GALLONS ? 2 : 1) + more);
            }
            case MASS_KG -> pounds(value, more);
            case SMALL_MASS_G -> decimals(unit("g").to(unit("oz"), value), 1 + more);
            case MASS_KG_PER_M ->
                decimals(unit("kg").to(unit("lb"), value) / unit("m").to(unit("ft"), 1), 2 + more);
            case DENSITY_KG_PER_M3 ->
                digits(unit("kg").to(unit("lb"), value) / Math.pow(unit("m").to(unit("ft"), 1), 3), more);
            case RESISTANCE_M2K_PER_W -> decimals(value * HOURS_FT2_F_PER_BTU, 1 + more);
            case MASS_KG_PER_H -> decimals(unit("kg").to(unit("lb"), value), 1 + more);
            case FLOW_KG_PER_S -> digits(60 * unit("kg").to(unit("lb"), value), more);
            case U_VALUE ->
                digits(
                        unit("W").to(unit("BTU/h"), value)
                                / unit("m²").to(unit("ft²"), 1)
                                / unit("K").stepTo(unit("°F"), 1),
                        more);
            case FLOW_L_PER_MIN, FLOW_LITRES_A_MINUTE -> {
                double flow = unit("L/min").to(unit("US gal/min"), value);
                yield decimals(flow, (flow != 0 && Math.abs(flow) < SMALL_FLOW ? 3 : 2) + more);
            }
            case TEMP_C -> decimals(unit("°C").to(unit("°F"), value), more);
            case TEMP_DIFF_K -> decimals(unit("K").stepTo(unit("°F"), value), more);
            case TEMP_DIFF_C -> {
                double degrees = unit("K").stepTo(unit("°F"), value);
                yield decimals(degrees, (Math.abs(degrees) < FEW_DEGREES ? 1 : 0) + more);
            }
            case POWER_KW -> digits(unit("kW").to(unit("BTU/h"), value), more);
            case PRESSURE_KPA -> digits(unit("kPa").to(unit("psi"), value), more);
            case POWER_W -> digits(unit("W").to(unit("BTU/h"), value), more);
            case ENERGY_KWH -> digits(unit("kWh").to(unit("BTU"), value), more);
            case PRESSURE_PA -> digits(unit("Pa").to(unit("psi"), value), more);
            case FORCE_N -> digits(unit("N").to(POUND_FORCE, value), more);
            case LOAD_KN_PER_M2 -> digits(KILONEWTON_PER_M2.to(POUNDS_PER_SQUARE_FOOT, value), more);
            default -> measure.number();
        };
    }

    /** Unit that the number is in; empty where it is part of the number or there is none. */
    static String unit(MeasureKind kind) {
        return switch (kind) {
            case LENGTH_M, SMALL_LENGTH_MM -> "";
            case SLOPE_MM_PER_M -> "in/ft";
            case AREA_M2 -> "ft²";
            case SMALL_AREA_CM2 -> "in²";
            case VOLUME_L -> "US gal";
            case MASS_KG -> "lb";
            case SMALL_MASS_G -> "oz";
            case MASS_KG_PER_M -> "lb/ft";
            case DENSITY_KG_PER_M3 -> "lb/ft³";
            case RESISTANCE_M2K_PER_W -> "ft² h °F/Btu";
            case MASS_KG_PER_H -> "lb/h";
            case FLOW_KG_PER_S -> "lb/min";
            case U_VALUE -> "Btu/(h ft² °F)";
            case FLOW_L_PER_MIN -> "US gal/min";
            case FLOW_LITRES_A_MINUTE -> "US gallons a minute";
            case TEMP_C, TEMP_DIFF_K, TEMP_DIFF_C -> "°F";
            case POWER_W, POWER_KW -> "Btu/h";
            case ENERGY_KWH -> "Btu";
            case PRESSURE_PA, PRESSURE_KPA -> "psi";
            case FORCE_N -> "lbf";
            case LOAD_KN_PER_M2 -> "lbf/ft²";
            default -> kind.unit();
        };
    }

    /** What a person writes into a column of that kind. */
    static String toWrite(MeasureKind kind) {
        return switch (kind) {
            case LENGTH_M -> "ft, in";
            case SMALL_LENGTH_MM -> "in";
            default -> unit(kind);
        };
    }

    private static String pounds(double kilograms, int more) {
        double pounds = unit("kg").to(unit("lb"), kilograms);
        return decimals(pounds, (Math.abs(pounds) < FEW_POUNDS ? 1 : 0) + more);
    }

    private static WrittenUnit unit(String name) {
        return UnitText.read(name).orElseThrow();
    }

    private static String decimals(double value, int places) {
        return THOUSANDS.matcher(Numeral.fixed(value, Math.max(0, places))).replaceAll(",");
    }

    /** Three digits, thousands set apart. */
    private static String digits(double value, int more) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(THREE_DIGITS + more));
        return decimals(rounded.doubleValue(), Math.max(0, value == 0 ? 0 : rounded.scale()));
    }
}

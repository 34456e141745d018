package loftcoil.runner.unit;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.DECI;
import static javax.measure.MetricPrefix.HECTO;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MILLI;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.DAY;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.JOULE;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.WATT;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.measure.Unit;
import loftcoil.engine.constant.Constants;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;

/**
 * The written names of single units. Values come from the units library; those it lacks are from NIST Special Publication
 * 811 (2008), appendix B.8: the International Table Btu, the conventional metre of water, and from them the rest.
 */
final class UnitNames {

    private static final double BTU_J = 1055.05585262;
    private static final double KILOCALORIE_J = 4186.8;
    private static final double METRE_OF_WATER_PA = 1000 * Constants.GRAVITY_M_PER_S2;

    private static final Map<String, WrittenUnit> EXACT = new HashMap<>();
    private static final Map<String, List<WrittenUnit>> ANY_CASE = new HashMap<>();

    static {
        lengthsAndVolumes();
        massesAndTimes();
        hardness();
        heat();
        pressures();
        temperaturesAndPlain();
    }

    private UnitNames() {}

    private static void lengthsAndVolumes() {
        put(METRE, "m", "metre", "metres", "meter", "meters");
        put(CENTI(METRE), "cm", "centimetre", "centimetres", "centimeter", "centimeters");
        put(DECI(METRE), "dm", "decimetre", "decimetres", "decimeter", "decimeters");
        put(MILLI(METRE), "mm", "millimetre", "millimetres", "millimeter", "millimeters");
        put(KILO(METRE), "km", "kilometre", "kilometres", "kilometer", "kilometers");
        put(USCustomary.INCH, "in", "inch", "inches", "\"", "″", "”");
        put(USCustomary.FOOT, "ft", "foot", "feet", "'", "′", "’");
        put(USCustomary.YARD, "yd", "yard", "yards");
        put(LITRE, "L", "l", "ℓ", "litre", "litres", "liter", "liters", "ltr");
        put(MILLI(LITRE), "mL", "ml", "millilitre", "millilitres", "milliliter", "milliliters", "cc");
        put(HECTO(LITRE), "hL", "hl");
        // As kitchens and pharmacies round them.
        put(MILLI(LITRE).multiply(5), "tsp", "teaspoon", "teaspoons", "teaspoonful", "teaspoonfuls");
        put(MILLI(LITRE).multiply(15), "tbsp", "tablespoon", "tablespoons", "tablespoonful", "tablespoonfuls");
        put(USCustomary.FOOT.pow(3).multiply(128), "cord", "cords");
        put(CUBIC_METRE, "m³", "cbm");
        put(USCustomary.GALLON_LIQUID, "US gal", "gal", "gals", "gallon", "gallons");
        put(USCustomary.GALLON_LIQUID.divide(4), "US qt", "qt", "qts", "quart", "quarts");
        put(USCustomary.GALLON_LIQUID.divide(8), "US pt", "pt", "pint", "pints");
        put(Imperial.GALLON_UK, "UK gal", "impgal", "impgallon", "impgallons");
        put(Imperial.GALLON_UK.divide(4), "UK qt", "impquart");
        put(Imperial.GALLON_UK.divide(8), "UK pt", "imppint");
        put(LITRE.divide(MINUTE), "L/min", "lpm");
        put(LITRE.divide(HOUR), "L/h", "lph");
        put(USCustomary.GALLON_LIQUID.divide(MINUTE), "US gal/min", "gpm");
        put(USCustomary.GALLON_LIQUID.divide(HOUR), "US gal/h", "gph");
    }

    private static void massesAndTimes() {
        put(KILOGRAM, "kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes");
        put(GRAM, "g", "gram", "grams", "gramme", "grammes");
        put(MILLI(GRAM), "mg", "milligram", "milligrams", "milligramme", "milligrammes");
        put(KILOGRAM.multiply(1000), "t", "tonne", "tonnes");
        put(USCustomary.POUND, "lb", "lbs", "pound", "pounds");
        put(USCustomary.OUNCE, "oz", "ounce", "ounces");
        put(SECOND, "s", "sec", "secs", "second", "seconds");
        put(MINUTE, "min", "mins", "minute", "minutes");
        put(HOUR, "h", "hr", "hrs", "hour", "hours");
        put(DAY, "day", "d", "days");
        put(DAY.multiply(7), "week", "weeks", "wk", "wks");
        put(DAY.multiply(365.0 / 12), "month", "months");
        put(DAY.multiply(365), "year", "years", "yr", "yrs");
        put(NEWTON, "N", "newton", "newtons");
        put(KILO(NEWTON), "kN", "kilonewton", "kilonewtons");
        put(Imperial.POUND_FORCE, "lbf", "pound force", "pounds force");
        put(NEWTON.multiply(Constants.GRAVITY_M_PER_S2), "kgf", "kilogram force", "kilograms force");
    }

    /** Hardness of water as calcium carbonate, by the definitions of the degrees; a grain is 64.79891 mg. */
    private static void hardness() {
        Unit<?> mgPerL = MILLI(GRAM).divide(LITRE);
        put(mgPerL, "ppm");
        put(mgPerL.multiply(17.848), "°dH", "dh", "°dgh", "German degrees", "German degree");
        put(mgPerL.multiply(10), "°fH", "fh", "°f", "French degrees", "French degree");
        put(mgPerL.multiply(14.254), "°eH", "°Clark", "English degrees", "English degree");
        put(
                MILLI(GRAM).multiply(64.79891).divide(USCustomary.GALLON_LIQUID),
                "gpg",
                "grains",
                "grain",
                "grains a gallon",
                "grain a gallon",
                "grains per gallon",
                "grains per US gallon",
                "grains / gallon",
                "grains/gallon",
                "grains / gal",
                "grains/gal");
    }

    private static void heat() {
        put(WATT, "W", "watt", "watts");
        put(KILO(WATT), "kW", "kilowatt", "kilowatts");
        put(JOULE, "J", "joule", "joules");
        put(KILO(JOULE), "kJ", "kilojoule", "kilojoules");
        put(MEGA(JOULE), "MJ", "megajoule", "megajoules");
        put(WATT.multiply(HOUR), "Wh", "watt hour", "watt hours");
        put(KILO(WATT).multiply(HOUR), "kWh", "kilowatt hour", "kilowatt hours");
        put(JOULE.multiply(4.1868), "cal", "calorie", "calories");
        put(JOULE.multiply(KILOCALORIE_J), "kcal", "kilocalorie", "kilocalories");
        put(JOULE.multiply(BTU_J), "BTU", "Btu", "btus");
        put(JOULE.multiply(BTU_J * 100_000), "therm", "therms");
        put(JOULE.multiply(BTU_J).divide(HOUR), "BTU/h", "btuh");
        put(USCustomary.HORSEPOWER, "hp", "horsepower");
    }

    private static void pressures() {
        put(PASCAL, "Pa", "pascal", "pascals");
        put(HECTO(PASCAL), "hPa", "hectopascal", "hectopascals");
        put(KILO(PASCAL), "kPa", "kilopascal", "kilopascals");
        put(MEGA(PASCAL), "MPa", "megapascal", "megapascals");
        put(PASCAL.multiply(100), "mbar", "millibar", "millibars");
        put(PASCAL.multiply(100_000), "bar", "bars");
        put(PASCAL.multiply(101_325), "atm", "atmosphere", "atmospheres");
        put(Imperial.POUND_FORCE.divide(USCustomary.INCH.multiply(USCustomary.INCH)), "psi");
        put(PASCAL.multiply(METRE_OF_WATER_PA), "mH₂O", "mwc");
        put(PASCAL.multiply(METRE_OF_WATER_PA / 100), "cmH₂O", "cmwc");
        put(PASCAL.multiply(METRE_OF_WATER_PA / 1000), "mmH₂O", "mmwc");
        put(PASCAL.multiply(METRE_OF_WATER_PA * 0.0254), "inH₂O", "inwc", "inchwc", "incheswc");
        put(PASCAL.multiply(METRE_OF_WATER_PA * 0.3048), "ftH₂O", "ftwc", "footwc", "feetwc");
    }

    private static void temperaturesAndPlain() {
        put(CELSIUS, "°C", "C", "degc", "℃", "celsius", "centigrade", "°celsius", "°centigrade");
        put(KELVIN, "K", "kelvin", "kelvins", "degk", "°K");
        // A difference, said as builders say it.
        put(KELVIN, "°C apart");
        put(USCustomary.RANKINE, "°F apart");
        put(USCustomary.FAHRENHEIT, "°F", "F", "degf", "℉", "fahrenheit", "°fahrenheit");
        put(AbstractUnit.ONE, "drops", "drop");
        put(PERCENT, "%", "percent", "pct");
    }

    private static void put(Unit<?> unit, String shown, String... others) {
        WrittenUnit written = new WrittenUnit(shown, unit);
        List<String> names = new ArrayList<>(List.of(others));
        names.add(shown);
        for (String name : names) {
            EXACT.put(name, written);
            List<WrittenUnit> same = ANY_CASE.computeIfAbsent(name.toLowerCase(Locale.ROOT), n -> new ArrayList<>());
            if (!same.contains(written)) {
                same.add(written);
            }
        }
    }

    /** The unit of that name: as written first, else whatever the case of its letters where only one fits. */
    static Optional<WrittenUnit> find(String name) {
        WrittenUnit exact = EXACT.get(name);
        if (exact != null) {
            return Optional.of(exact);
        }
        List<WrittenUnit> same = ANY_CASE.getOrDefault(name.toLowerCase(Locale.ROOT), List.of());
        return same.size() == 1 ? Optional.of(same.get(0)) : Optional.empty();
    }
}

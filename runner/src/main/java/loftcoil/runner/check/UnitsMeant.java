package loftcoil.runner.check;

import java.util.List;
import java.util.Optional;
import loftcoil.runner.exercise.Quantity.Temperature;
import loftcoil.runner.unit.UnitText;
import loftcoil.runner.unit.WrittenUnit;

/** The units somebody may have had in mind who wrote none. */
final class UnitsMeant {

    /** By what they measure, the likeliest first. */
    private static final List<List<String>> FAMILIES = List.of(
            List.of("m", "cm", "mm", "in", "ft", "km"),
            List.of("m²", "cm²", "mm²", "in²", "ft²"),
            List.of("L", "US gal", "mL", "m³", "UK gal", "ft³"),
            List.of("kg", "g", "lb", "t", "oz"),
            List.of("min", "h", "s", "day", "week"),
            List.of("°C", "°F", "K"),
            List.of("Pa", "kPa", "bar", "mbar", "psi", "mH₂O", "mmH₂O", "inH₂O", "ftH₂O"),
            List.of("L/min", "L/s", "L/h", "US gal/min", "m³/h", "mL/min", "US gal/h"),
            List.of("kg/s", "kg/min", "kg/h", "g/s", "lb/min", "lb/h"),
            List.of("m/s", "cm/s", "mm/s", "ft/s", "m/min", "ft/min"),
            List.of("kW", "W", "BTU/h", "MJ/h"),
            List.of("kWh", "MJ", "kJ", "Wh", "BTU", "J"),
            List.of("W/K", "BTU/h/°F"),
            List.of("mm/m", "%", "cm/m"),
            List.of("N", "kN", "lbf", "kgf"),
            List.of("L/day", "mL/min", "L/h", "US gal/day"),
            List.of("kg/m³", "lb/ft³", "g/cm³"),
            List.of("Pa/m", "kPa/m", "mbar/m"));

    private UnitsMeant() {}

    /**
     * The unit that makes a number without one right, where the number is not right in the wanted unit.
     *
     * @param bare the answer, taken in the wanted unit for want of one
     * @param reference the right value in the wanted unit
     */
    static Optional<WrittenUnit> likely(Measured bare, WrittenUnit wanted, double reference, Temperature temperature) {
        return FAMILIES.stream()
                .flatMap(List::stream)
                .map(name -> UnitText.read(name).orElseThrow(() -> new IllegalStateException("unit " + name)))
                .filter(unit -> unit.fits(wanted) && !unit.unit().equals(wanted.unit()))
                .filter(unit -> {
                    Measured meant = new Measured(bare.given(), bare.step(), unit, false, "");
                    double value = meant.in(wanted, temperature);
                    return meant.rounds(reference, wanted, temperature) && near(value, reference);
                })
                .findFirst();
    }

    /** Rounded to one digit a number may be anything; so much it has to agree. */
    private static boolean near(double value, double reference) {
        return Math.abs(value - reference) <= 0.05 * Math.abs(reference);
    }
}

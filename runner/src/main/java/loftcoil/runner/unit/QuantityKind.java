package loftcoil.runner.unit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** What a unit measures, in words. */
public final class QuantityKind {

    private static final Map<String, String> EXAMPLES = new LinkedHashMap<>();

    static {
        EXAMPLES.put("", "a plain number");
        EXAMPLES.put("m", "a length");
        EXAMPLES.put("m²", "an area");
        EXAMPLES.put("L", "a volume");
        EXAMPLES.put("kg", "a mass");
        EXAMPLES.put("s", "a time");
        EXAMPLES.put("°C", "a temperature");
        EXAMPLES.put("Pa", "a pressure");
        EXAMPLES.put("L/min", "a volume flow");
        EXAMPLES.put("kg/s", "a mass flow");
        EXAMPLES.put("m/s", "a speed");
        EXAMPLES.put("kg/m³", "a density");
        EXAMPLES.put("W", "a power (a flow of heat)");
        EXAMPLES.put("kJ", "an amount of energy");
        EXAMPLES.put("N", "a force");
        EXAMPLES.put("Pa/m", "a pressure drop for each length");
        EXAMPLES.put("W/m", "a heat loss for each length");
        EXAMPLES.put("W/m²", "a flow of heat for each area");
        EXAMPLES.put("W/K", "a heat loss for each degree");
        EXAMPLES.put("W/(m K)", "a conductivity, or a heat loss for each length and degree");
        EXAMPLES.put("W/(m² K)", "a heat transfer coefficient");
        EXAMPLES.put("J/(kg K)", "a specific heat");
        EXAMPLES.put("kJ/kg", "energy for each mass");
        EXAMPLES.put("Pa s", "a viscosity");
        EXAMPLES.put("m²/s", "a kinematic viscosity");
        EXAMPLES.put("1/K", "a change for each degree");
        EXAMPLES.put("kJ/K", "a heat capacity");
        EXAMPLES.put("m/s²", "an acceleration");
    }

    /** Masses in a volume, as densities are, and never said for one. */
    private static final Set<String> HARDNESS = Set.of("mg/L", "gpg", "ppm", "°dH", "°fH", "°eH");

    private QuantityKind() {}

    /** What the unit measures, such as {@code a volume flow}. */
    public static String of(WrittenUnit unit) {
        if (HARDNESS.contains(unit.shown())) {
            return "a hardness of water";
        }
        for (Map.Entry<String, String> example : EXAMPLES.entrySet()) {
            if (UnitText.read(example.getKey()).filter(unit::fits).isPresent()) {
                return example.getValue();
            }
        }
        return "another kind of quantity";
    }

    /** True where the unit measures the same as that example, such as {@code Pa}. */
    public static boolean is(WrittenUnit unit, String example) {
        return UnitText.read(example).filter(unit::fits).isPresent();
    }
}

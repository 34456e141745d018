package loftcoil.engine.design;

import java.util.List;

/**
 * Monthly climate, January first, twelve values each.
 *
 * @param globalKWhPerM2Day mean daily sun on the level, kWh/m² a day; 0 to 12
 * @param meanAirC mean air temperature, °C; −50 to 45
 */
public record Monthly(List<Double> globalKWhPerM2Day, List<Double> meanAirC) {

    /** Keeps copies. */
    public Monthly {
        globalKWhPerM2Day = List.copyOf(globalKWhPerM2Day);
        meanAirC = List.copyOf(meanAirC);
    }
}

package loftcoil.engine.design;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Distances of heater and flue.
 *
 * @param flueToCombustibleMm flue pipe to anything that burns, mm; 0 to 5000
 * @param heaterToCombustibleMm heater to anything that burns, mm; 0 to 5000
 * @param topAboveRoofM top of the flue above where it leaves the roof, m; 0 to 20
 * @param flueNeedsMm distance that the maker's plate or the local code asks for at the flue, mm; 0 to 5000
 * @param heaterNeedsMm distance that they ask for at the heater, mm; 0 to 5000
 * @param heightM height of the flue from heater to top, m; 0 to 30
 * @param diameterMm inner diameter of the flue, mm; 50 to 600; needed with a height
 * @param insulated whether it is an insulated flue; needed with a height
 */
public record Flue(
        double flueToCombustibleMm,
        double heaterToCombustibleMm,
        double topAboveRoofM,
        OptionalDouble flueNeedsMm,
        OptionalDouble heaterNeedsMm,
        OptionalDouble heightM,
        OptionalDouble diameterMm,
        Optional<Boolean> insulated) {

    /** Least distance of the flue from what burns, mm: as its plate or the code asks, else the most that is common. */
    public double flueAtLeastMm() {
        return flueNeedsMm.orElse(SafetyFields.FLUE_DISTANCE_MM.high());
    }

    /** Least distance of the heater from what burns, mm: as its plate or the code asks, else the most that is common. */
    public double heaterAtLeastMm() {
        return heaterNeedsMm.orElse(SafetyFields.HEATER_DISTANCE_MM.high());
    }
}

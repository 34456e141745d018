package loftcoil.engine.study;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;

/**
 * What a search may choose from.
 *
 * @param tubes names of the tubes, one for every leg and the coil; at least one
 * @param lowestBaseM lowest level of the tank's base above the floor, m
 * @param highestBaseM highest level, m; no lower
 * @param mostLaggingMm thickest lagging of the legs, mm; 0 to 300
 */
public record Choices(List<String> tubes, double lowestBaseM, double highestBaseM, double mostLaggingMm) {

    private static final Allowed LEVEL = new Allowed(-10, 15, "m");
    private static final Allowed LAGGING = new Allowed(0, 300, "mm");

    /**
     * Checks the choices.
     *
     * @throws RefusedException where there is no tube, one is unknown, or a value is outside its range; all faults at once
     */
    public Choices {
        tubes = List.copyOf(tubes);
        List<Fault> faults = new ArrayList<>();
        if (tubes.isEmpty()) {
            faults.add(new Fault("tubes", "none", "at least one tube", ""));
        }
        for (int i = 0; i < tubes.size(); i++) {
            if (TubeTable.find(tubes.get(i)).isEmpty()) {
                faults.add(TubeTable.unknown("tubes[" + i + "]", tubes.get(i)));
            }
        }
        LEVEL.faultIn("lowestBaseM", lowestBaseM).ifPresent(faults::add);
        LEVEL.faultIn("highestBaseM", highestBaseM).ifPresent(faults::add);
        LAGGING.faultIn("mostLaggingMm", mostLaggingMm).ifPresent(faults::add);
        if (lowestBaseM > highestBaseM) {
            faults.add(new Fault("highestBaseM", Double.toString(highestBaseM), "at least " + lowestBaseM + " m", ""));
        }
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }

    /**
     * All sizes of the design's own kind of tube, the tank from a metre below to a metre above where it is, and up to 100 mm of
     * lagging.
     */
    public static Choices around(Design design) {
        double baseM = design.tank().baseM();
        List<String> tubes =
                TubeSizes.like(design.coil().tube()).stream().map(Tube::name).toList();
        return new Choices(tubes, Math.max(LEVEL.low(), baseM - 1), Math.min(LEVEL.high(), baseM + 1), 100);
    }
}

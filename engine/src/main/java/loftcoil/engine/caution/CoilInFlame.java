package loftcoil.engine.caution;

import loftcoil.engine.design.Coil;
import loftcoil.engine.design.CoilJoints;
import loftcoil.engine.design.Fire;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/**
 * Joints and thin tube in the fire, where a coil opens on the day it runs dry or in the years in which the fire eats it; and a heat
 * that no such coil takes.
 */
final class CoilInFlame implements CautionRule {

    /** Thinnest wall of a tube in the fire, mm; common practice, no source. */
    static final double THINNEST_MM = 1.0;

    /** Largest share of the fuel that a stated heat may be without doubt; common practice, no source. */
    static final double LARGEST_SHARE = 0.5;

    private static final double MM_PER_M = 1000;
    private static final double ROUNDING_MM = 1e-6;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        if (!facts.heated()) {
            return;
        }
        Coil coil = facts.design().coil();
        int joints = CoilJoints.count(coil);
        if (joints > 0) {
            findings.caution(CautionKind.COIL_JOINT, "count", Measure.count(joints));
        }
        share(facts, findings);
        Tube tube = TubeTable.require("coil.tube", coil.tube());
        double wallMm = tube.wallM() * MM_PER_M;
        if (wallMm < THINNEST_MM - ROUNDING_MM) {
            findings.caution(
                    CautionKind.COIL_WALL,
                    "metal",
                    tube.metal().words(),
                    "wall",
                    new Measure(wallMm, MeasureKind.SMALL_LENGTH_MM),
                    "least",
                    new Measure(THINNEST_MM, MeasureKind.SMALL_LENGTH_MM));
        }
    }

    private static void share(CautionFacts facts, Findings findings) {
        double heatKW = facts.design().coil().heatKW().orElse(0);
        double fuelKW = facts.design().fire().map(Fire::fuelKW).orElse(Double.POSITIVE_INFINITY);
        if (heatKW > LARGEST_SHARE * fuelKW) {
            findings.caution(
                    CautionKind.COIL_SHARE,
                    "heat",
                    new Measure(heatKW, MeasureKind.POWER_KW),
                    "fuel",
                    new Measure(fuelKW, MeasureKind.POWER_KW),
                    "share",
                    new Measure(heatKW / fuelKW * 100, MeasureKind.PERCENT));
        }
    }
}

package loftcoil.engine.caution;

import loftcoil.engine.design.Coil;
import loftcoil.engine.design.CoilJoints;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/** Joints and thin tube in the fire: where a coil opens on the day it runs dry, or in the years in which the fire eats it. */
final class CoilInFlame implements CautionRule {

    /** Thinnest wall of a tube in the fire, mm; common practice, no source. */
    static final double THINNEST_MM = 1.0;

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
        double wallMm = TubeTable.require("coil.tube", coil.tube()).wallM() * MM_PER_M;
        if (wallMm < THINNEST_MM - ROUNDING_MM) {
            findings.caution(
                    CautionKind.COIL_WALL,
                    "wall",
                    new Measure(wallMm, MeasureKind.SMALL_LENGTH_MM),
                    "least",
                    new Measure(THINNEST_MM, MeasureKind.SMALL_LENGTH_MM));
        }
    }
}

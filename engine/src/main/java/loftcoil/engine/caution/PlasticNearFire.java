package loftcoil.engine.caution;

import loftcoil.engine.design.Materials;
import loftcoil.engine.design.PlasticPipe;
import loftcoil.engine.words.Measure;

/** Plastic where a fire that cannot be switched off can heat it. */
final class PlasticNearFire implements CautionRule {

    /** Least distance from the heater along the pipe, m; common practice, no source. */
    static final double LEAST_M = 1;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        facts.safety().materials().ifPresent(materials -> judge(materials, findings));
    }

    private static void judge(Materials materials, Findings findings) {
        for (PlasticPipe pipe : materials.plasticPipes()) {
            if (pipe.inLoop()) {
                findings.cautionAs(
                        CautionKind.PLASTIC,
                        "in-loop",
                        "pipe",
                        pipe.name(),
                        "from",
                        Measure.metres(pipe.fromHeaterM()));
            } else if (pipe.fromHeaterM() < LEAST_M) {
                findings.cautionAs(
                        CautionKind.PLASTIC,
                        "near",
                        "pipe",
                        pipe.name(),
                        "from",
                        Measure.metres(pipe.fromHeaterM()),
                        "least",
                        Measure.metres(LEAST_M));
            }
        }
        if (materials.tank() == Materials.Metal.PLASTIC) {
            findings.cautionAs(CautionKind.PLASTIC, "tank");
        }
    }
}

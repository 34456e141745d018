package loftcoil.engine.caution;

import loftcoil.engine.design.Materials;
import loftcoil.engine.design.PlasticPipe;

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
                findings.caution(
                        "LC-PLASTIC",
                        "'%s' is of plastic and part of the loop, %.1f m from the heater. Water near boiling softens it; it"
                                + " sags into air pockets or bursts.",
                        pipe.name(),
                        pipe.fromHeaterM());
            } else if (pipe.fromHeaterM() < LEAST_M) {
                findings.caution(
                        "LC-PLASTIC",
                        "'%s' is of plastic and only %.1f m from the heater; keep at least %.0f m of copper between.",
                        pipe.name(),
                        pipe.fromHeaterM(),
                        LEAST_M);
            }
        }
        if (materials.tank() == Materials.Metal.PLASTIC) {
            findings.caution(
                    "LC-PLASTIC",
                    "The tank is of plastic. A fire that cannot be switched off can bring its water to boiling, and a"
                            + " softened tank splits.");
        }
    }
}

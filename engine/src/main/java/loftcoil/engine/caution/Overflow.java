package loftcoil.engine.caution;

import loftcoil.engine.design.Tank;
import loftcoil.engine.tank.Expansion;

/** Water that swells over the rim as it warms. */
final class Overflow implements CautionRule {

    private static final double COLD_C = 10;
    private static final double HOT_C = 90;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        Tank tank = facts.design().tank();
        double full = tank.waterlineM() / tank.heightM();
        double growthL = tank.volumeL() * full * Expansion.growthM3(1, COLD_C, HOT_C);
        double roomL = tank.volumeL() * (1 - full);
        if (growthL > roomL) {
            findings.caution(
                    "LC-OVERFLOW",
                    "Filled cold to the waterline the water grows by %.1f L by 90 °C; above the waterline there is room for"
                            + " %.1f L. Hot water runs over unless an overflow leads it outside.",
                    growthL,
                    roomL);
        }
    }
}

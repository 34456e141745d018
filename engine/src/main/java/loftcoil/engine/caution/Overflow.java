package loftcoil.engine.caution;

import loftcoil.engine.design.Tank;
import loftcoil.engine.tank.Expansion;
import loftcoil.engine.words.Measure;

/** Water that swells over the rim as it warms. */
final class Overflow implements CautionRule {

    private static final double COLD_C = 10;
    private static final double HOT_C = 90;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        Tank tank = facts.design().tank();
        double growthL = tank.waterlineL() * Expansion.growthM3(1, COLD_C, HOT_C);
        double roomL = tank.volumeL() - tank.waterlineL();
        if (growthL > roomL) {
            findings.caution(
                    CautionKind.OVERFLOW,
                    "growth",
                    Measure.litres(growthL),
                    "hot",
                    Measure.celsius(HOT_C),
                    "room",
                    Measure.litres(roomL));
        }
    }
}

package loftcoil.engine.caution;

import loftcoil.engine.design.ColdFeed;
import loftcoil.engine.design.Tank;
import loftcoil.engine.tank.Expansion;
import loftcoil.engine.words.Measure;

/** Water that swells over the rim as it warms, and an overflow that cannot carry off what runs in. */
final class Overflow implements CautionRule {

    private static final double COLD_C = 10;
    private static final double HOT_C = 90;

    /** Least bore of an overflow, mm; BS 6700, from memory. */
    private static final double LEAST_BORE_MM = 19;

    /** Play between nominal bores of tube standards, mm, as of the vent. */
    private static final double PLAY_MM = 0.5;

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
        facts.safety().coldFeed().ifPresent(feed -> bore(feed, findings));
    }

    private static void bore(ColdFeed feed, Findings findings) {
        if (feed.overflowBoreMm().isEmpty()) {
            findings.ask("safety.coldFeed.overflowBoreMm");
            return;
        }
        double boreMm = feed.overflowBoreMm().getAsDouble();
        double feedMm = feed.boreMm().orElse(0);
        if (boreMm < LEAST_BORE_MM - PLAY_MM || boreMm <= feedMm) {
            findings.caution(
                    CautionKind.OVERFLOW_BORE,
                    "bore",
                    Measure.millimetres(boreMm),
                    "least",
                    Measure.millimetres(LEAST_BORE_MM));
        }
    }
}

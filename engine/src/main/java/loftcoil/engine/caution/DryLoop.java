package loftcoil.engine.caution;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.ColdFeed;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.Tank;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.tank.SafeLevel;
import loftcoil.engine.words.Measure;

/** Water that does not cover the return port: the loop is broken while the fire burns. */
final class DryLoop implements CautionRule {

    @Override
    public void look(CautionFacts facts, Findings findings) {
        Tank tank = facts.design().tank();
        List<Leg> hot = facts.design().hotLegs();
        double boreM =
                TubeTable.find(hot.get(hot.size() - 1).tube()).orElseThrow().boreM();
        double leastM = tank.returnPortM() + boreM / 2 + SafeLevel.USUAL_COVER_M;
        if (tank.waterlineM() < leastM) {
            findings.caution(
                    CautionKind.DRY_COVER,
                    "stands",
                    Measure.millimetres((tank.waterlineM() - tank.returnPortM()) * 1000),
                    "least",
                    Measure.millimetres((leastM - tank.returnPortM()) * 1000));
        } else if (tank.drawPortM() < leastM) {
            drawnDown(tank, leastM, facts.safety().coldFeed(), findings);
        }
    }

    private static void drawnDown(Tank tank, double leastM, Optional<ColdFeed> feed, Findings findings) {
        boolean byHand = feed.map(said -> said.kind() == ColdFeed.Kind.BY_HAND)
                .orElse(tank.refillAtH().isPresent());
        if (byHand) {
            double litres = tank.waterlineL() - tank.litresBelow(leastM);
            findings.caution(
                    CautionKind.DRY_DRAW,
                    "draw",
                    Measure.metres(tank.drawPortM()),
                    "port",
                    Measure.metres(tank.returnPortM()),
                    "drawn",
                    Measure.litres(litres),
                    "tank",
                    Measure.litres(tank.volumeL()));
        }
    }
}

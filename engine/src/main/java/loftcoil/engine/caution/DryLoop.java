package loftcoil.engine.caution;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.ColdFeed;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.Tank;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.tank.SafeLevel;

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
                    "LC-DRY-COVER",
                    "Even full, the water stands only %.0f mm above the middle of the return port; %.0f mm keep it covered"
                            + " when the tank is out of level. Once the port draws air the loop stops and the coil boils.",
                    (tank.waterlineM() - tank.returnPortM()) * 1000,
                    (leastM - tank.returnPortM()) * 1000);
        } else if (tank.drawPortM() < leastM) {
            drawnDown(tank, leastM, facts.safety().coldFeed(), findings);
        }
    }

    private static void drawnDown(Tank tank, double leastM, Optional<ColdFeed> feed, Findings findings) {
        boolean byHand = feed.map(said -> said.kind() == ColdFeed.Kind.BY_HAND)
                .orElse(tank.refillAtH().isPresent());
        if (byHand) {
            double litres = (tank.waterlineM() - leastM) / tank.heightM() * tank.volumeL();
            findings.caution(
                    "LC-DRY-DRAW",
                    "The tank is filled by hand and its taps draw from %.2f m, below the return port at %.2f m. After %.0f L"
                            + " the port is bare: the loop stops, and a lit fire boils the coil dry (full it holds %.0f L).",
                    tank.drawPortM(),
                    tank.returnPortM(),
                    litres,
                    tank.volumeL());
        }
    }
}

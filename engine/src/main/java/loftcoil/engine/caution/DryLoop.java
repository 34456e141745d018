package loftcoil.engine.caution;

import java.util.List;
import loftcoil.engine.design.ColdFeed;
import loftcoil.engine.design.Fire;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.Tank;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.FlowSearch;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.tank.SafeLevel;
import loftcoil.engine.water.Saturation;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;

/** Water that does not cover the return port: the loop is broken while the fire burns. */
final class DryLoop implements CautionRule {

    /** What a millimetre of hot water weighs on, Pa. */
    private static final double PA_PER_MM = 9.6;

    private static final double S_PER_H = 3600;

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
            drawnDown(tank, leastM, byHand(facts), findings);
        } else if (byHand(facts) && facts.lit().circulates()) {
            sunk(facts, findings);
        }
    }

    private static boolean byHand(CautionFacts facts) {
        return facts.safety()
                .coldFeed()
                .map(said -> said.kind() == ColdFeed.Kind.BY_HAND)
                .orElse(facts.design().tank().refillAtH().isPresent());
    }

    private static void drawnDown(Tank tank, double leastM, boolean byHand, Findings findings) {
        double litres = tank.waterlineL() - tank.litresBelow(leastM);
        Object[] filling = {
            "draw", Measure.metres(tank.drawPortM()),
            "port", Measure.metres(tank.returnPortM()),
            "drawn", Measure.litres(litres),
            "tank", Measure.litres(tank.volumeL())
        };
        if (byHand) {
            findings.cautionAs(CautionKind.DRY_DRAW, "hand", filling);
        } else {
            // A feed makes up what is drawn, as long as there is water in it.
            findings.milderAs(CautionKind.DRY_DRAW, Severity.WARNING, "fed", filling);
        }
    }

    /** The water at the return port, the tank hot and the fire as usual: nothing but a look refills it. */
    private static void sunk(CautionFacts facts, Findings findings) {
        Circuit sunk = facts.circuit().withTankC(HarderCase.HOT_C).sunkToReturnPort();
        FlowSearch search = sunk.search();
        MeasuredText when = HarderCase.tankAt(HarderCase.HOT_C, search).when();
        Tank tank = facts.design().tank();
        Measure spare = Measure.litres(
                tank.litresBelow(Math.min(tank.drawPortM(), tank.waterlineM())) - tank.litresBelow(tank.returnPortM()));
        search.forward()
                .ifPresentOrElse(
                        flow -> findings.cautionAs(
                                CautionKind.LEVEL,
                                "runs",
                                "spare",
                                spare,
                                "margin",
                                Measure.kelvins(flow.boilMargin().marginK()),
                                "when",
                                when,
                                "sink",
                                Measure.millimetres(flow.drivePa() / PA_PER_MM),
                                "evening",
                                Measure.litres(eveningL(facts))),
                        () -> findings.cautionAs(
                                CautionKind.LEVEL,
                                "stops",
                                "spare",
                                spare,
                                "when",
                                when,
                                "finding",
                                search.circulation().finding()));
    }

    /** Water that the coil's heat of one lighting evaporates, L. */
    private static double eveningL(CautionFacts facts) {
        double hours = facts.design().fire().map(Fire::longestLitH).orElse(1.0);
        double heatW = facts.circuit().setting().firing().heatW();
        return heatW * hours * S_PER_H / Saturation.evaporationJPerKg(100);
    }
}

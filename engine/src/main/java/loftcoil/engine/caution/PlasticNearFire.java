package loftcoil.engine.caution;

import loftcoil.engine.design.ColdFeed;
import loftcoil.engine.design.Materials;
import loftcoil.engine.design.PlasticPipe;
import loftcoil.engine.words.Measure;

/** Plastic where a fire that cannot be switched off can heat it. */
final class PlasticNearFire implements CautionRule {

    /** Least distance from the heater along the pipe, m; common practice, no source. */
    static final double LEAST_M = 1;

    /** Hottest water that plastic hot-water pipe is made for, °C: application class 2 of ISO 10508 (80 °C for a year in all), from memory. */
    static final double MOST_C = 80;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        facts.safety().materials().ifPresent(materials -> judge(materials, facts, findings));
        facts.safety()
                .coldFeed()
                .filter(feed -> feed.kind() == ColdFeed.Kind.FEED_CISTERN)
                .ifPresent(feed -> cistern(feed, findings));
    }

    private static void cistern(ColdFeed feed, Findings findings) {
        if (feed.plasticCistern().isEmpty()) {
            findings.ask("safety.coldFeed.plasticCistern");
        } else if (feed.plasticCistern().get()) {
            findings.cautionAs(CautionKind.PLASTIC, "cistern");
        }
    }

    /** Draw pipes, vent and overflow: they take what the tank comes to, and a tank that boils sends steam. */
    private static void hot(PlasticPipe pipe, CautionFacts facts, Findings findings) {
        if (pipe.hotWater().isEmpty()) {
            findings.ask("safety.materials.plasticPipes");
        } else if (pipe.hotWater().get()) {
            double hottestC = facts.hottestTankC().orElse(facts.hottestDrawC());
            if (hottestC + YearFacts.BLUR_K > MOST_C) {
                findings.cautionAs(
                        CautionKind.PLASTIC,
                        "hot",
                        "pipe",
                        pipe.name(),
                        "hottest",
                        Measure.celsius(hottestC),
                        "most",
                        Measure.celsius(MOST_C));
            }
        }
    }

    private static void judge(Materials materials, CautionFacts facts, Findings findings) {
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
            } else {
                hot(pipe, facts, findings);
            }
        }
        if (materials.tank() == Materials.Metal.PLASTIC) {
            findings.cautionAs(CautionKind.PLASTIC, "tank");
        }
    }
}

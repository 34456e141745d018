package loftcoil.engine.caution;

import java.util.Optional;
import java.util.stream.Stream;
import loftcoil.engine.design.ColdNight;
import loftcoil.engine.design.ColdNight.Frozen;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;

/** Water that may freeze where people live in the house: ice bursts pipes, and an ice plug seals a loop under the next fire. */
final class Frost implements CautionRule {

    /** Surroundings below this count as frost: a draught is colder than the room; common practice, no source. */
    static final double FROST_C = 3;

    /** A cold spell is seldom longer than this, h; common practice, no source. */
    private static final double LONG_H = 48;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        ColdNight night = ColdNight.of(facts.design());
        boolean guessed = loop(night, findings);
        guessed |= tank(facts, night, findings);
        if (guessed && !night.isSaid()) {
            findings.ask("site.coldestNightC", "guess", Measure.celsius(night.nightC()));
        }
        if (facts.safety().antifreeze().orElse(false)) {
            findings.caution(
                    CautionKind.ANTIFREEZE,
                    "tank",
                    Measure.litres(facts.design().tank().volumeL()));
        }
    }

    /** Whether the coldest night decided over a leg. */
    private static boolean loop(ColdNight night, Findings findings) {
        Design design = night.design();
        boolean byNight = false;
        for (Leg leg : Stream.concat(design.coldLegs().stream(), design.hotLegs().stream())
                .toList()) {
            double usualC = fireOutC(leg, night);
            if (usualC < FROST_C) {
                findings.cautionAs(
                        CautionKind.FROST_LOOP,
                        "around",
                        "around",
                        Measure.celsius(usualC),
                        "leg",
                        leg.name(),
                        "freezes",
                        freezes(night.freezes(leg)));
            } else if (night.around(leg) < FROST_C) {
                byNight = true;
                leg(night, leg, findings);
            }
        }
        return byNight;
    }

    private static void leg(ColdNight night, Leg leg, Findings findings) {
        Object[] filling = {
            "night", Measure.celsius(night.nightC()),
            "around", Measure.celsius(night.around(leg)),
            "leg", leg.name(),
            "freezes", freezes(night.freezes(leg))
        };
        if (night.isSaid()) {
            findings.cautionAs(CautionKind.FROST_LOOP, "night", filling);
        } else {
            findings.milderAs(CautionKind.FROST_LOOP, Severity.WARNING, "guess", filling);
        }
    }

    private static MeasuredText freezes(Optional<Frozen> frozen) {
        return frozen.map(when -> when.throughH() > LONG_H
                        ? CautionKind.FROST_LOOP.part("freezes-slowly", "zero", hours(when.zeroH()))
                        : CautionKind.FROST_LOOP.part(
                                "freezes", "zero", hours(when.zeroH()), "through", hours(when.throughH())))
                .orElse(CautionKind.FROST_LOOP.part("draught"));
    }

    private static Measure hours(double hours) {
        return Measure.rounded(hours, MeasureKind.TIME_H, hours < 10 ? 1 : 0);
    }

    /** A pipe outdoors has the mean of the coldest month round it. */
    private static double fireOutC(Leg leg, ColdNight night) {
        double roomC = night.design().site().roomC();
        return leg.isOutdoors() ? night.monthC() : leg.aroundFireOutC().orElse(Math.min(leg.aroundC(), roomC));
    }

    /** Whether the coldest night decided over the tank. */
    private static boolean tank(CautionFacts facts, ColdNight night, Findings findings) {
        double aroundC = facts.design().tank().aroundC();
        if (aroundC < FROST_C) {
            findings.cautionAs(CautionKind.FROST_TANK, "around", "around", Measure.celsius(aroundC));
            return false;
        }
        CautionKind kind = facts.design().window().isPresent() ? CautionKind.FROST_WINDOW : CautionKind.FROST_TANK;
        Optional<YearFacts> year = facts.year().filter(cold -> cold.coldestTankC() < FROST_C);
        if (year.isPresent()) {
            findings.cautionAs(
                    kind,
                    "year",
                    "coldest",
                    Measure.celsius(year.get().coldestTankC()),
                    "air",
                    Measure.celsius(year.get().leastAirC()));
            return false;
        }
        return night.tankFreezes()
                .map(when -> tankAtNight(night, when, findings))
                .orElse(false);
    }

    private static boolean tankAtNight(ColdNight night, Frozen when, Findings findings) {
        Object[] filling = {
            "night", Measure.celsius(night.nightC()),
            "around", Measure.celsius(when.aroundC()),
            "zero", hours(when.zeroH())
        };
        if (night.isSaid()) {
            findings.cautionAs(CautionKind.FROST_TANK, "night", filling);
        } else {
            findings.milderAs(CautionKind.FROST_TANK, Severity.NOTE, "guess", filling);
        }
        return true;
    }
}

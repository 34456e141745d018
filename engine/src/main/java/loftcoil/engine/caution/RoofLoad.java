package loftcoil.engine.caution;

import java.util.Locale;
import loftcoil.engine.design.Structure;
import loftcoil.engine.design.Tank;
import loftcoil.engine.tank.FullWeight;
import loftcoil.engine.tank.UprightCylinder;

/** What the roof has to carry. */
final class RoofLoad implements CautionRule {

    /** Fewest bearers; common practice, no source. */
    static final int LEAST_BEARERS = 2;

    static FullWeight full(Tank tank) {
        return FullWeight.of(new UprightCylinder(tank.volumeL() / 1000, tank.heightM()), tank.emptyMassKg());
    }

    @Override
    public void look(CautionFacts facts, Findings findings) {
        double fullKg = full(facts.design().tank()).massKg();
        facts.safety()
                .structure()
                .ifPresentOrElse(
                        structure -> judge(structure, fullKg, findings),
                        () -> findings.ask(
                                "safety.structure",
                                String.format(
                                        Locale.ROOT,
                                        "What carries the tank, and for how much? Full it weighs %.0f kg over people's heads.",
                                        fullKg)));
    }

    private static void judge(Structure structure, double fullKg, Findings findings) {
        if (fullKg > structure.loadLimitKg()) {
            findings.caution(
                    "LC-ROOF-LOAD",
                    "Full the tank weighs %.0f kg; what carries it may have %.0f kg. It comes down on whoever is below.",
                    fullKg,
                    structure.loadLimitKg());
        }
        if (structure.bearers() < LEAST_BEARERS) {
            findings.caution(
                    "LC-ROOF-BEARERS",
                    "%.0f kg rest on %d bearers. At least %d that reach from wall to wall or frame to frame must share them;"
                            + " boards and ceiling joists alone give way, wet ones first.",
                    fullKg,
                    structure.bearers(),
                    LEAST_BEARERS);
        }
    }
}

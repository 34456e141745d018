package loftcoil.engine.clear;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.engine.start.RandomLoops;
import loftcoil.engine.study.NamedValue;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Dangerous designs by chance: whoever follows what is offered ends without that danger and with no other.
 *
 * <p>How they are drawn: {@link RandomLoops} (bores, rises, level runs, coats and heats of 0.5 to 4 kW by chance on a tank of 120 L under a roof,
 * with the draws of the safe bothy), each with one slip more; the first after the seed that have a danger. None is left out for what the search
 * makes of it.
 */
class ClearRandomLawTest {

    private static final long SEED = 20261129;

    private static final int ALL = 20;
    private static final int SOME = 2;

    /** Of the designs, how many may have a danger for which nothing built is found. */
    private static final int MOST_OPEN = 1;

    /** What else builders do wrong. */
    private static final List<NamedValue> SLIPS = List.of(
            new NamedValue("loop.valves", "1"),
            new NamedValue("taps.mixer", "none"),
            new NamedValue("vent.tube", "EN1057 15x0.7"),
            new NamedValue("vent.aboveWaterlineM", "0.1"),
            new NamedValue("vent.kind", "sealed"),
            new NamedValue("coil.turns", "with elbows"),
            new NamedValue("coil.ends", "the upper end"),
            new NamedValue("safety.structure.bearers", "1"),
            new NamedValue("safety.fireRoom.carbonMonoxideAlarm", "false"),
            new NamedValue("fire.litForH", "6"));

    @Test
    @Tag("thorough")
    void whoFollowsWhatIsOfferedEndsWithoutTheDanger() {
        follow(ALL);
    }

    @Test
    void whoFollowsWhatIsOfferedOnTheFirstTwoEndsWithoutTheDanger() {
        follow(SOME);
    }

    private static void follow(int count) {
        List<String> open = dangerous(count).stream()
                .map(Following::holds)
                .flatMap(clears -> clears.dangers().stream()
                        .filter(danger -> danger.ways().isEmpty())
                        .map(danger -> danger.kind().code() + ": "
                                + ClearWords.head(danger).metric())
                        .limit(1))
                .toList();
        assertTrue(open.size() <= MOST_OPEN, () -> open.size() + " of " + count + " designs: " + open);
    }

    /** The first designs after the seed that have a danger. */
    static List<Design> dangerous(int count) {
        Random random = new Random(SEED);
        List<Design> designs = new ArrayList<>();
        for (Design loop : RandomLoops.some(3 * count, SEED)) {
            Design design = slipped(loop, SLIPS.get(random.nextInt(SLIPS.size())));
            if (designs.size() < count
                    && !SafetyVerdict.whole(design).of(Severity.DANGER).isEmpty()) {
                designs.add(design);
            }
        }
        assertTrue(designs.size() == count, () -> designs.size() + " dangerous designs");
        return designs;
    }

    private static Design slipped(Design design, NamedValue slip) {
        try {
            return slip.appliedTo(design);
        } catch (RefusedException cannotBe) {
            return design;
        }
    }
}

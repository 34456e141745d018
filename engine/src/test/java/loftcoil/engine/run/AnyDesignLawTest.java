package loftcoil.engine.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeSet;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignField;
import loftcoil.engine.design.DesignFields;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.pipe.TubeTable;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;

/**
 * Any field and any decision of a design, up to six at once, moved a little, a lot or past its end: either the design's whole year
 * is marched and its account closes, or it is refused with the fields that are to blame. Nothing else ever happens.
 */
class AnyDesignLawTest {

    private static final Pace COARSE = new Pace(1800, 4, 0);
    private static final LoopAxes.Mesh WIDE = new LoopAxes.Mesh(25, 4);
    /** Of the heat that moved in the year. */
    private static final double MOST_GAP = 1e-3;

    private static final int MOST_EDITS = 6;

    /** What was done to the example, and what came of it. */
    private record Edited(List<String> edits, Optional<Design> design, List<Fault> faults) {}

    @Provide
    Arbitrary<Edited> designs() {
        return Arbitraries.longs().map(seed -> edited(new SplittableRandom(seed)));
    }

    @Property(tries = 2000, seed = "20261129")
    void balancedOrRefusedByItsFields(@ForAll("designs") Edited one) {
        Edited marched = one.design().map(design -> marched(one, design)).orElse(one);
        boolean refused = !marched.faults().isEmpty();
        for (Fault fault : marched.faults()) {
            assertFalse(fault.path().isBlank(), fault.line());
            assertFalse(fault.line().contains("NaN") || fault.line().contains("Infinity"), fault.line());
        }
        Statistics.label("outcome").collect(refused ? "refused" : "computed").coverage(cover -> {
            cover.check("computed").percentage(share -> share > 10);
            cover.check("refused").percentage(share -> share > 10);
        });
        if (refused) {
            Statistics.label("first field of a refusal")
                    .collect(room(marched.faults().get(0)));
        }
    }

    private static Edited marched(Edited one, Design design) {
        try {
            assertEquals(design, DesignJson.read(DesignJson.write(design)));
            YearRun year = YearRun.of(
                    SystemPlan.of(design, COARSE, Heatings.of(design), WIDE).with(SystemPlan.sun(design)));
            closes(year.energy(), one.edits());
            year.months().forEach(month -> closes(month.energy(), one.edits()));
            assertTrue(year.hottestC() >= 0 && year.hottestC() <= 102, one.edits() + ": " + year.hottestC());
            assertTrue(year.shortfallKWh() >= -1e-6 && year.boilingMin() <= 366 * 1440, one.edits()::toString);
            return one;
        } catch (RefusedException refused) {
            return new Edited(one.edits(), Optional.empty(), refused.faults());
        }
    }

    private static void closes(EnergyBook book, List<String> edits) {
        double moved = book.solarKWh() + book.coilKWh() + Math.abs(book.lossKWh()) + Math.abs(book.usedKWh()) + 1;
        assertEquals(0, book.gapKWh(), MOST_GAP * moved, edits::toString);
    }

    private static Edited edited(SplittableRandom random) {
        List<String> edits = new ArrayList<>();
        Design design = Example.orchardBothy();
        try {
            for (int left = 1 + random.nextInt(MOST_EDITS); left > 0; left--) {
                String name = random.nextInt(3) == 0 ? anyPath(design, random) : anyChange(random);
                String value = value(design, name, random);
                edits.add(name + " = " + value);
                design = Changes.apply(design, name, value);
            }
            return new Edited(edits, Optional.of(design), List.of());
        } catch (RefusedException refused) {
            return new Edited(edits, Optional.empty(), refused.faults());
        }
    }

    private static String anyChange(SplittableRandom random) {
        List<String> names = List.copyOf(new TreeSet<>(Changes.names()));
        return names.get(random.nextInt(names.size()));
    }

    private static String anyPath(Design design, SplittableRandom random) {
        List<String> paths =
                DesignFields.of(design).stream().map(DesignFields.Value::path).toList();
        return paths.get(random.nextInt(paths.size()));
    }

    private static String value(Design design, String name, SplittableRandom random) {
        Optional<DesignField> field = DesignFields.of(design).stream()
                .filter(value -> value.path().equals(name))
                .map(DesignFields.Value::field)
                .findFirst();
        Optional<Allowed> range =
                field.isPresent() ? field.get().range() : Changes.describe(name).range();
        if (range.isPresent()) {
            return Double.toString(number(range.get(), Changes.current(design, name), random));
        }
        List<String> options = field.isPresent()
                ? field.get().options()
                : Changes.describe(name).options();
        if (options.isEmpty()) {
            List<String> tubes = List.copyOf(TubeTable.names());
            return random.nextInt(10) == 0 ? "a word" : tubes.get(random.nextInt(tubes.size()));
        }
        return options.get(random.nextInt(options.size()));
    }

    /** Mostly near what stands there, sometimes anywhere in the range, at an end of it or past it. */
    private static double number(Allowed range, String current, SplittableRandom random) {
        int kind = random.nextInt(20);
        if (kind == 0) {
            return random.nextBoolean() ? range.low() : range.high();
        } else if (kind == 1) {
            return range.high() + (range.high() - range.low()) * random.nextDouble();
        } else if (kind < 6) {
            return range.low() + (range.high() - range.low()) * random.nextDouble();
        }
        double stands;
        try {
            stands = Double.parseDouble(current);
        } catch (NumberFormatException notSaid) {
            stands = range.low() + 0.2 * (range.high() - range.low());
        }
        return stands * (0.6 + 0.9 * random.nextDouble());
    }

    /** The part of the design a fault stands in. */
    private static String room(Fault fault) {
        return fault.path().replaceAll("\\[\\d+]", "[]");
    }
}

package loftcoil.runner.exercise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class VariationTest {

    private static Exercise exercise(String path, Map<String, About.Span> vary) {
        About about = new About(path, "", false, new TreeMap<>(vary), "s", new About.Solution("", ""));
        return new Decision(about, "tank.baseM", "m", List.of());
    }

    @Property
    void everyNumberIsOnAStopAndWithinItsRange(
            @ForAll long seed,
            @ForAll @IntRange(min = -500, max = 500) int from,
            @ForAll @IntRange(min = 1, max = 200) int stops) {
        double low = from / 10.0;
        double high = (from + 3 * stops) / 10.0;
        double value = Variation.numbers(exercise("01-a/b", Map.of("x", new About.Span(low, high, 0.3))), seed)
                .values()
                .get("x");
        assertTrue(value >= low && value <= high, () -> value + " outside " + low + " to " + high);
        double steps = (value - low) / 0.3;
        assertEquals(Math.rint(steps), steps, 1e-6);
    }

    /** 10 °C is 50 °F, 60 °C is 140 °F, −10 °C is 14 °F, by the definition of the degree Fahrenheit; 20 °C apart are not 68 °F. */
    @Example
    void aTemperatureIsAskedInBothDegreesWhereItIsFirstSaid() {
        Numbers numbers = Numbers.of(Map.of("hotC", 60.0, "frostK", 10.0));

        assertEquals(
                "The tank is at 60 °C (140 °F), the air at −10 °C (14 °F). From 60 °C down to 10 °C (50 °F)?",
                numbers.asked(
                        "The tank is at {{hotC}} °C, the air at −{{frostK}} °C. From 60 °C down to 10 °C (50 °F)?"));
        assertEquals("20 °C warmer", numbers.asked("20 °C warmer"));
    }

    @Property
    void textAndJavaHaveTheSameDigits(@ForAll long seed) {
        Numbers numbers = Variation.numbers(exercise("01-a/b", Map.of("x", new About.Span(0.1, 900, 0.1))), seed);
        String shown = numbers.fill("{{x}}");
        assertEquals(numbers.values().get("x"), Double.parseDouble(shown), 0);
        assertTrue(shown.matches("\\d+(\\.\\d)?"), shown);
        assertEquals("double x = " + numbers.values().get("x") + ";\nx", numbers.before("x"));
    }

    @Property
    void aNumberDependsOnItsOwnNameAloneNotOnItsNeighbours(@ForAll long seed) {
        About.Span span = new About.Span(0, 1000, 1);
        double alone = Variation.numbers(exercise("01-a/b", Map.of("x", span)), seed)
                .values()
                .get("x");
        double beside = Variation.numbers(exercise("01-a/b", Map.of("a", span, "x", span, "z", span)), seed)
                .values()
                .get("x");
        assertEquals(alone, beside, 0);
    }

    @Example
    void theSameSeedGivesTheSameNumberOnEveryMachine() {
        Exercise exercise = exercise("01-warm-water/two-legs", Map.of("heightM", new About.Span(0, 9999, 1)));
        assertEquals(Map.of("heightM", 5344.0), Variation.numbers(exercise, 7).values());
    }

    @Example
    void learnersAndExercisesDiffer() {
        About.Span span = new About.Span(0, 9, 1);
        Set<Double> learners = new HashSet<>();
        Set<Double> exercises = new HashSet<>();
        for (int i = 0; i < 200; i++) {
            learners.add(Variation.numbers(exercise("01-a/b", Map.of("x", span)), i)
                    .values()
                    .get("x"));
            exercises.add(Variation.numbers(exercise("01-a/b" + i, Map.of("x", span)), 1)
                    .values()
                    .get("x"));
        }
        assertEquals(10, learners.size());
        assertEquals(10, exercises.size());
    }

    @Example
    void numbersReadAsAPersonWouldWriteThem() {
        Numbers numbers = Numbers.of(Map.of("a", 2.5, "b", 200.0, "c", 0.0001, "d", 1e7));
        assertEquals("2.5 200 0.0001 10000000 {{e}}", numbers.fill("{{a}} {{ b }} {{c}} {{d}} {{e}}"));
    }

    @Example
    void tolerancesAreSafeAtZeroAndWithoutNumbers() {
        Tolerance relative = new Tolerance(0, 0.02);
        assertTrue(relative.allows(0, 0));
        assertTrue(!relative.allows(0, 1e-9));
        assertTrue(relative.allows(100, 102) && !relative.allows(100, 102.1));
        assertTrue(relative.allows(-100, -102) && !relative.allows(-100, 100));
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertTrue(!relative.allows(bad, bad) && !relative.allows(1, bad) && !relative.allows(bad, 1));
        }
        assertTrue(new Tolerance(0, 0).allows(0.3, 0.1 + 0.2));
    }
}

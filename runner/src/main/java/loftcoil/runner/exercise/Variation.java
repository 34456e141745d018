package loftcoil.runner.exercise;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import java.util.TreeMap;

/** Gives each learner own numbers, always the same ones for the same seed, whatever else is in the course. */
public final class Variation {

    private static final long FNV_START = 0xcbf29ce484222325L;
    private static final long FNV_PRIME = 0x100000001b3L;
    private static final int MOST_DECIMALS = 12;

    /** Where nothing varies, no other seed gives other numbers. */
    private static final int MOST_TRIES = 20;

    private Variation() {}

    /**
     * The exercise as the learner with this seed meets it: own numbers, and choices in an own order.
     *
     * @param exercise as read from its file
     * @param seed the learner's own
     */
    public static Exercise own(Exercise exercise, long seed) {
        Exercise own = exercise.with(numbers(exercise, seed));
        SplittableRandom order = new SplittableRandom(seed ^ hash(exercise.path() + "/order"));
        if (own instanceof Choice choice) {
            return choice.shuffled(order);
        }
        if (own instanceof Mend mend) {
            return mend.shuffled(order);
        }
        return own instanceof Code code ? code.shuffled(order) : own;
    }

    /**
     * The exercise as the learner with this seed meets it once more in a later lesson: other numbers wherever some vary, and
     * choices in another order.
     *
     * @param exercise as read from its file
     * @param seed the learner's own
     * @param lesson name of that later lesson
     */
    public static Exercise again(Exercise exercise, long seed, String lesson) {
        Numbers first = numbers(exercise, seed);
        long other = seed ^ hash(lesson);
        for (int tries = 0; tries < MOST_TRIES && numbers(exercise, other).equals(first); tries++) {
            other++;
        }
        return own(exercise, other);
    }

    /**
     * The learner's numbers. Each depends on the seed, the exercise's path and its own name alone.
     *
     * @param exercise as read from its file
     * @param seed the learner's own
     */
    public static Numbers numbers(Exercise exercise, long seed) {
        TreeMap<String, Double> values = new TreeMap<>();
        exercise.about().vary().forEach((name, span) -> {
            SplittableRandom random = new SplittableRandom(seed ^ hash(exercise.path() + "/" + name));
            values.put(name, stop(span, random.nextInt(span.stops())));
        });
        return new Numbers(values);
    }

    /** The stop of that number from 0, in decimal, so that 1 + 3 × 0.1 is 1.3 to the last digit. */
    static double stop(About.Span span, int index) {
        return BigDecimal.valueOf(span.from())
                .add(BigDecimal.valueOf(span.by()).multiply(BigDecimal.valueOf(index)))
                .setScale(MOST_DECIMALS, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .doubleValue();
    }

    /** FNV-1a, 64 bit (Fowler, Noll, Vo): short, and the same on every machine and Java. */
    private static long hash(String text) {
        long hash = FNV_START;
        for (byte b : text.getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (b & 0xff)) * FNV_PRIME;
        }
        return hash;
    }
}

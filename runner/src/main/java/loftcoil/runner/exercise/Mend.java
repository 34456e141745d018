package loftcoil.runner.exercise;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * A faulty system to find the fault of: the learner changes it until it does what is wanted.
 *
 * @param about what every kind has; nothing varies
 * @param faulty the system as its owner has it
 * @param levers what the learner may change, those that are the cause among others
 * @param readings what a thermometer, a watch or a hand would tell, besides the usual figures
 * @param causes what may be the cause, with its reason, just one of them right; none where nothing is to be diagnosed first
 * @param wanted what the system must do to count as mended, at least one
 * @param mistakes changes that typically are tried in vain
 * @param mended value by change: one way to mend it; empty where nothing is wrong with the system
 */
public record Mend(
        About about,
        FaultySystem faulty,
        List<Lever> levers,
        List<Reading> readings,
        List<Choice.Option> causes,
        List<Wanted> wanted,
        List<Misrepair> mistakes,
        SortedMap<String, String> mended)
        implements Exercise {

    /** Keeps its own copies. */
    public Mend {
        levers = List.copyOf(levers);
        readings = List.copyOf(readings);
        causes = List.copyOf(causes);
        wanted = List.copyOf(wanted);
        mistakes = List.copyOf(mistakes);
        mended = Collections.unmodifiableSortedMap(new TreeMap<>(mended));
    }

    @Override
    public Mend with(Numbers numbers) {
        return new Mend(about.with(numbers), faulty, levers, readings, causes, wanted, mistakes, mended);
    }

    /** True where the cause has to be named before anything is moved. */
    public boolean diagnosed() {
        return !causes.isEmpty();
    }

    /** The same with levers, readings and causes in an order of chance; readings and causes keep their numbers. */
    Mend shuffled(SplittableRandom random) {
        return new Mend(
                about,
                faulty,
                inChance(levers, random),
                diagnosed() ? inChance(readings, random) : readings,
                inChance(causes, random),
                wanted,
                mistakes,
                mended);
    }

    private static <T> List<T> inChance(List<T> given, SplittableRandom random) {
        List<T> left = new ArrayList<>(given);
        List<T> order = new ArrayList<>();
        while (!left.isEmpty()) {
            order.add(left.remove(random.nextInt(left.size())));
        }
        return order;
    }

    /**
     * Something that can be read on the system.
     *
     * @param label what it is
     * @param java an expression on {@code design} that gives a number
     * @param unit the unit it is in; empty for a plain number
     * @param decimals digits behind the point that are shown, 0 to 6
     * @param tells whether it tells the cause from the others; two of them do where a cause is asked for
     * @param number its place as written, from 1; the same for every learner
     */
    public record Reading(String label, String java, String unit, int decimals, boolean tells, int number) {}

    /**
     * Something the system must do.
     *
     * @param java an expression on {@code design} that is true or false
     * @param say what it is, in words
     */
    public record Wanted(String java, String say) {}

    /**
     * Changes that do not mend it.
     *
     * @param changes value by change; whoever moved these the same way is meant
     * @param because what the wrong idea is, for the writer and the teacher
     * @param hint what to say to the learner, in CommonMark
     */
    public record Misrepair(SortedMap<String, String> changes, String because, String hint) {

        /** Keeps its own copy. */
        public Misrepair {
            changes = Collections.unmodifiableSortedMap(new TreeMap<>(changes));
        }
    }
}

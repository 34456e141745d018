package loftcoil.runner.progress;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.OptionalInt;

/**
 * How a design came to be what it is: its states, the oldest first. Nothing in it is ever taken back: to undo is one more entry. Only
 * the oldest are folded into one where there are many.
 *
 * @param folded how many changes lie before the first entry
 * @param entries the states, at least one; the last is the design as it is
 */
public record Trail(int folded, List<Entry> entries) {

    /** Entries that are kept. A design has some ten thousand signs, so that all of them are read in a blink. */
    public static final int MOST = 200;

    /**
     * A state of the design.
     *
     * @param at the local time at which it was kept, as {@code 2031-05-04T17:20:05}; empty where it could not be kept yet
     * @param how what made it
     * @param state the design as JSON
     */
    public record Entry(String at, How how, String state) {}

    /** What makes a state. */
    public enum How {
        /** Where it begins. */
        BEGUN,
        /** A decision of a lesson. */
        DECIDED,
        /** What clears a danger, taken in. */
        CLEARED,
        /** The survey of the house. */
        MEASURED,
        /** A rebuild that was taken over. */
        REBUILT,
        /** Another name. */
        NAMED,
        /** Its file was changed by other means. */
        OUTSIDE,
        /** The last change taken back. */
        UNDONE,
        /** A change that was taken back, made again. */
        REDONE,
        /** A state from before. */
        BACK
    }

    /** Keeps a copy of the entries. */
    public Trail {
        entries = List.copyOf(entries);
    }

    /** A trail that begins. */
    public static Trail of(Entry first) {
        return new Trail(0, List.of(first));
    }

    /** The same with one entry more; beyond {@link #MOST} the oldest is folded. */
    public Trail with(Entry next) {
        List<Entry> all = new ArrayList<>(entries);
        all.add(next);
        int over = Math.max(0, all.size() - MOST);
        return new Trail(folded + over, all.subList(over, all.size()));
    }

    /** The same with this time for the entries that could not be kept until now. */
    public Trail kept(String at) {
        return new Trail(
                folded,
                entries.stream()
                        .map(entry -> entry.at().isEmpty() ? new Entry(at, entry.how(), entry.state()) : entry)
                        .toList());
    }

    /** The number of the last entry; it stays the same when older ones are folded. */
    public int number() {
        return folded + entries.size() - 1;
    }

    /** The design as it is. */
    public String state() {
        return entries.get(entries.size() - 1).state();
    }

    /** The entry whose state comes back where the last change is undone; empty where nothing can be. */
    public OptionalInt toUndo() {
        return first(walked().before());
    }

    /** The entry whose state comes back where the last undoing is undone; empty where nothing can be. */
    public OptionalInt toRedo() {
        return first(walked().after());
    }

    private static OptionalInt first(Deque<Integer> entries) {
        return entries.isEmpty() ? OptionalInt.empty() : OptionalInt.of(entries.peek());
    }

    /** Where an undo and a redo lead, the nearest first. */
    private record Walked(Deque<Integer> before, Deque<Integer> after) {}

    /** Behind an undoing whose change has been folded nothing is left to undo. */
    private Walked walked() {
        Walked walked = new Walked(new ArrayDeque<>(), new ArrayDeque<>());
        int at = 0;
        for (int i = 1; i < entries.size(); i++) {
            How how = entries.get(i).how();
            if (how == How.UNDONE) {
                walked.after().push(at);
                at = walked.before().isEmpty() ? i : walked.before().pop();
            } else if (how == How.REDONE && !walked.after().isEmpty()) {
                walked.before().push(at);
                at = walked.after().pop();
            } else {
                walked.before().push(at);
                walked.after().clear();
                at = i;
            }
        }
        return walked;
    }
}

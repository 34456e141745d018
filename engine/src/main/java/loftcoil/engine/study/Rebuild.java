package loftcoil.engine.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.watch.Watch;

/**
 * A system as it stands and what a list of changes does to it: each change alone, and all of them together.
 *
 * @param before the design as it stands
 * @param effects each change alone, in the order given
 * @param together all changes; refused where one of them cannot be done even after all others
 */
public record Rebuild(Design before, List<Effect> effects, Result together) {

    private static final double NEAR = 1e-3;

    /** Keeps a copy of the effects. */
    public Rebuild {
        effects = List.copyOf(effects);
    }

    /**
     * What one change does by itself.
     *
     * @param change the change
     * @param result what comes of it
     */
    public record Effect(NamedValue change, Result result) {}

    /** What comes of a change, or of all. */
    public sealed interface Result {

        /** The comparison; empty where the change was refused. */
        default Optional<Comparison> comparison() {
            return this instanceof Done done ? Optional.of(done.sideBySide()) : Optional.empty();
        }
    }

    /**
     * It can be done.
     *
     * @param sideBySide the design as it stands, and changed
     */
    public record Done(Comparison sideBySide) implements Result {}

    /**
     * It cannot be done.
     *
     * @param faults what the changed design would have wrong, at least one
     */
    public record Refused(List<Fault> faults) implements Result {
        /** Keeps a copy of the faults. */
        public Refused {
            faults = List.copyOf(faults);
        }
    }

    /**
     * Whether all changes together give a design as good as this one: every figure within a thousandth, since the values of
     * changes are rounded.
     *
     * @param other sheet of the other design, with a year where this has one
     */
    public boolean leadsTo(Sheet other) {
        return together.comparison()
                .map(done -> Comparison.of(done.after(), other).rows().stream().allMatch(row -> row.alike(NEAR)))
                .orElse(false);
    }

    /**
     * Tries the changes, without years, the tank at {@link Sheet#USUAL_TANK_C}.
     *
     * @throws RefusedException where the design itself cannot be computed
     */
    public static Rebuild of(Design before, List<NamedValue> changes) {
        return of(before, changes, (design, watch) -> Sheet.of(design), ProgressListener.NONE)
                .result();
    }

    /**
     * Tries the changes, with a year marched for each; takes a second or more for each.
     *
     * @throws RefusedException where the design itself cannot be computed
     */
    public static Rebuild whole(Design before, List<NamedValue> changes) {
        return whole(before, changes, ProgressListener.NONE).result();
    }

    /**
     * The same, told how far it is, a part for each year; it may be stopped at any month of one. What is known then lacks the
     * changes that were not tried yet; stopped before all of them together, it is a rebuild without years.
     *
     * @throws RefusedException where the design itself cannot be computed
     */
    public static SearchOutcome<Rebuild> whole(Design before, List<NamedValue> changes, ProgressListener listener) {
        return of(before, changes, (design, watch) -> Sheet.whole(design, Sheet.USUAL_TANK_C, watch), listener);
    }

    private static SearchOutcome<Rebuild> of(
            Design before, List<NamedValue> changes, Reckoning reckoning, ProgressListener listener) {
        int parts = changes.size() + 2;
        Watch watch = until(listener);
        List<Effect> effects = new ArrayList<>();
        Optional<Result> together = Optional.empty();
        int done = 0;
        try {
            Sheet old = reckoning.sheet(before, watch);
            listener.done(++done, parts);
            stopWhereWanted(listener);
            // All together first: who stops before the end has then seen what is asked for most.
            Result all = result(old, changes, reckoning, watch);
            together = Optional.of(all);
            listener.done(++done, parts);
            for (NamedValue change : changes) {
                stopWhereWanted(listener);
                effects.add(new Effect(change, result(old, List.of(change), reckoning, watch)));
                listener.done(++done, parts);
            }
            return new SearchOutcome.Finished<>(new Rebuild(before, effects, all));
        } catch (Watch.StoppedException stopped) {
            Rebuild known =
                    together.map(all -> new Rebuild(before, effects, all)).orElseGet(() -> of(before, changes));
            return new SearchOutcome.Cancelled<>(known, done, parts);
        }
    }

    private static Watch until(ProgressListener listener) {
        return new Watch() {
            @Override
            public boolean cancelled() {
                return listener.cancelled();
            }
        };
    }

    private static void stopWhereWanted(ProgressListener listener) {
        until(listener).pass(Watch.Stage.YEAR, 0, 1);
    }

    /** How a design becomes a sheet. */
    private interface Reckoning {
        Sheet sheet(Design design, Watch watch);
    }

    private static Result result(Sheet old, List<NamedValue> changes, Reckoning reckoning, Watch watch) {
        try {
            return new Done(Comparison.of(old, reckoning.sheet(applied(old.design(), changes), watch)));
        } catch (RefusedException cannotBe) {
            return new Refused(cannotBe.faults());
        }
    }

    /**
     * The design with all changes, in the order given; one that is refused is tried again after the others, as a higher
     * waterline fits only once the tank is higher.
     *
     * @throws RefusedException where some change is refused even then, with the faults of the first such
     */
    public static Design applied(Design design, List<NamedValue> changes) {
        Design changed = design;
        List<NamedValue> left = new ArrayList<>(changes);
        Optional<RefusedException> refused = Optional.empty();
        int before;
        do {
            before = left.size();
            refused = Optional.empty();
            for (NamedValue change : List.copyOf(left)) {
                try {
                    changed = change.appliedTo(changed);
                    left.remove(change);
                } catch (RefusedException notYet) {
                    refused = refused.or(() -> Optional.of(notYet));
                }
            }
        } while (refused.isPresent() && left.size() < before);
        if (refused.isPresent()) {
            throw refused.get();
        }
        return changed;
    }
}

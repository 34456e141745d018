package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Differences;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.Units;
import loftcoil.runner.progress.Trail;

/** The history of a design in words. */
final class TrailWords {

    private final Map<Step, List<RebuildView.Difference>> told = new HashMap<>();

    /** From one state to the next: what lies between never changes, so it is worked out once. */
    private record Step(String before, String after, Units units) {}

    /** A state as a design; empty where it is one of another edition. */
    static Optional<Design> design(String state) {
        try {
            return Optional.of(DesignJson.read(state));
        } catch (RefusedException ofAnotherEdition) {
            return Optional.empty();
        }
    }

    /** The few things that tell a design from another. */
    static String brief(Design design, Units units) {
        double latitude = design.site().latitudeDeg();
        return "tank of " + units.of(new Measure(design.tank().volumeL(), MeasureKind.VOLUME_L))
                + ", its base at " + units.of(Measure.metres(design.tank().baseM())) + "; "
                + Math.round(Math.abs(latitude)) + "° " + (latitude < 0 ? "south" : "north");
    }

    synchronized DesignsView.History history(Trail trail, Units units) {
        List<DesignsView.Moment> moments = new ArrayList<>();
        for (int i = 0; i < trail.entries().size(); i++) {
            Trail.Entry entry = trail.entries().get(i);
            moments.add(new DesignsView.Moment(
                    trail.folded() + i,
                    at(entry),
                    how(entry.how()),
                    i == 0 ? List.of() : changes(trail.entries().get(i - 1).state(), entry.state(), units),
                    i == trail.entries().size() - 1));
        }
        Collections.reverse(moments);
        String folded = trail.folded() == 0
                ? ""
                : "What came before is folded: " + (trail.folded() == 1 ? "1 change." : trail.folded() + " changes.");
        return new DesignsView.History(List.copyOf(moments), folded, undo(trail, units), redo(trail, units));
    }

    /** What an undo takes back; empty where there is nothing. */
    static String undo(Trail trail, Units units) {
        return what(trail, trail.toUndo(), units);
    }

    /** What a redo makes again; empty where there is nothing. */
    static String redo(Trail trail, Units units) {
        return what(trail, trail.toRedo(), units);
    }

    private List<RebuildView.Difference> changes(String before, String after, Units units) {
        return told.computeIfAbsent(new Step(before, after, units), step -> {
            Optional<Design> old = design(step.before());
            Optional<Design> now = design(step.after());
            return old.isPresent() && now.isPresent() ? SideBySide.differences(old.get(), now.get(), units) : List.of();
        });
    }

    /** Where nothing has been changed yet there is nothing to save. */
    private static String at(Trail.Entry entry) {
        String without = entry.how() == Trail.How.BEGUN ? "at the start:" : "not saved yet:";
        return entry.at().isEmpty() ? without : entry.at().replace('T', ' ');
    }

    private static String how(Trail.How how) {
        return switch (how) {
            case BEGUN -> "begun";
            case DECIDED -> "decided in a lesson";
            case CLEARED -> "taken in to clear a danger";
            case MEASURED -> "measured";
            case REBUILT -> "rebuild taken over";
            case NAMED -> "named";
            case OUTSIDE -> "changed by other means";
            case UNDONE -> "taken back";
            case REDONE -> "made again";
            case BACK -> "back to then";
        };
    }

    /** The first thing that would change if that state came back, as it is now and as it would be. */
    private static String what(Trail trail, OptionalInt entry, Units units) {
        if (entry.isEmpty()) {
            return "";
        }
        Optional<Design> now = design(trail.state());
        Optional<Design> then = design(trail.entries().get(entry.getAsInt()).state());
        if (now.isEmpty() || then.isEmpty()) {
            return "";
        }
        List<Differences.Said> changes = Differences.between(now.get(), then.get());
        return changes.isEmpty()
                ? "a change of nothing"
                : units.words(changes.get(0).words())
                        + (changes.size() == 1 ? "" : ", and " + (changes.size() - 1) + " more");
    }
}

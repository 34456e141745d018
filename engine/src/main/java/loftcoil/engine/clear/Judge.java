package loftcoil.engine.clear;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.sheet.SafetyVerdict;

/** Judges changed designs against the one they are changed from; each is judged once to each depth. For use by several threads. */
final class Judge {

    private final Design design;
    private final SafetyVerdict before;
    private final Map<Depth, Map<Design, Optional<SafetyVerdict>>> known = new EnumMap<>(Depth.class);

    Judge(Design design, SafetyVerdict before) {
        this.design = design;
        this.before = before;
        for (Depth depth : Depth.values()) {
            known.put(depth, new ConcurrentHashMap<>());
        }
    }

    Design design() {
        return design;
    }

    /** Whether the tank of the design comes too near boiling in its year. */
    boolean hotTank() {
        return has(before, CautionKind.BOIL_TANK);
    }

    /** How many designs were judged wholly, or as far as it took to see that they are none. */
    int wholeVerdicts() {
        return (int) of(Depth.FINE_YEAR).keySet().stream()
                .filter(changed -> !changed.equals(design))
                .count();
    }

    /** The cheapest depth at which the design shows a danger. */
    Depth shows(CautionKind danger) {
        return Stream.of(Depth.values())
                .filter(depth -> depth == Depth.WHOLE || (depth != Depth.FINE_YEAR && !gone(design, danger, depth)))
                .findFirst()
                .orElse(Depth.WHOLE);
    }

    /** Whether a design, judged so deeply, does not have a danger; one that cannot be judged is none. */
    boolean gone(Design changed, CautionKind danger, Depth depth) {
        return verdict(changed, depth).filter(after -> !has(after, danger)).isPresent();
    }

    /** Whether besides nothing has come, down to that depth, that the whole verdict of the design before did not have as grave. */
    boolean clean(Design changed, CautionKind danger, Depth depth) {
        return nothingNew(changed, Depth.QUICK)
                && (depth != Depth.WHOLE || clean(changed, danger, Depth.FINE_YEAR))
                && gone(changed, danger, depth)
                && nothingNew(changed, depth);
    }

    private static boolean has(SafetyVerdict verdict, CautionKind danger) {
        return verdict.of(Severity.DANGER).stream().anyMatch(caution -> caution.kind() == danger);
    }

    private boolean nothingNew(Design changed, Depth depth) {
        // What the whole verdict calls a danger may be a caution to one that looks less deeply.
        Optional<SafetyVerdict> alike = depth == Depth.WHOLE ? Optional.of(before) : verdict(design, depth);
        return verdict(changed, depth)
                .filter(after -> after.cautions().stream()
                        .allMatch(caution -> caution.severity() == Severity.NOTE
                                || stood(before, caution)
                                || alike.filter(same -> stood(same, caution)).isPresent()))
                .isPresent();
    }

    private static boolean stood(SafetyVerdict then, Caution caution) {
        return then.cautions().stream()
                .anyMatch(old -> old.kind() == caution.kind() && old.severity().compareTo(caution.severity()) <= 0);
    }

    private Optional<SafetyVerdict> verdict(Design changed, Depth depth) {
        return of(depth).computeIfAbsent(changed, one -> judged(one, depth));
    }

    private Map<Design, Optional<SafetyVerdict>> of(Depth depth) {
        return known.getOrDefault(depth, Map.of());
    }

    private static Optional<SafetyVerdict> judged(Design changed, Depth depth) {
        try {
            return Optional.of(
                    switch (depth) {
                        case QUICK -> SafetyVerdict.quick(changed);
                        case YEAR -> SafetyVerdict.rough(changed, true, false);
                        case STARTS -> SafetyVerdict.rough(changed, false, true);
                        case HOT_STARTS -> SafetyVerdict.rough(changed, true, true);
                        case FINE_YEAR -> SafetyVerdict.withoutStarts(changed);
                        case WHOLE -> SafetyVerdict.whole(changed);
                    });
        } catch (RefusedException cannotBe) {
            return Optional.empty();
        }
    }
}

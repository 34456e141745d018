package loftcoil.engine.clear;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Tap;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.run.YearSpread;
import loftcoil.engine.sheet.SafetyVerdict;

/** Judges changed designs against the one they are changed from; each is judged once to each depth. For use by several threads. */
final class Judge {

    /** Depths at which no danger is looked for, but what was found confirmed. */
    private static final Set<Depth> CONFIRMING = EnumSet.of(Depth.SURE_STARTS, Depth.FINE_YEAR);

    private final Design design;
    private final SafetyVerdict before;
    private final Map<Depth, Map<Design, Optional<SafetyVerdict>>> known = new EnumMap<>(Depth.class);

    private final Map<Design, Design> standIns = new ConcurrentHashMap<>();
    private final Map<Design, Optional<YearSpread>> roughYears = new ConcurrentHashMap<>();

    Judge(Design design, SafetyVerdict before) {
        this.design = design;
        this.before = before;
        standIns.put(warmSide(design), design);
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

    /** How many designs were judged wholly, or as far as it took to see that they are none; those that share a year with another count once. */
    int wholeVerdicts() {
        return (int) of(Depth.FINE_YEAR).keySet().stream()
                .map(this::alike)
                .filter(changed -> !changed.equals(design))
                .distinct()
                .count();
    }

    /** The cheapest depth at which the design shows a danger. */
    Depth shows(CautionKind danger) {
        return Stream.of(Depth.values())
                .filter(depth -> depth == Depth.WHOLE || (!CONFIRMING.contains(depth) && !gone(design, danger, depth)))
                .findFirst()
                .orElse(Depth.WHOLE);
    }

    /** Whether a design, judged so deeply, does not have a danger; one that cannot be judged is none. */
    boolean gone(Design changed, CautionKind danger, Depth depth) {
        return depth.before().stream().allMatch(before -> without(changed, danger, before))
                && without(changed, danger, depth);
    }

    private boolean without(Design changed, CautionKind danger, Depth depth) {
        return verdict(changed, depth).filter(after -> !has(after, danger)).isPresent();
    }

    /** Whether besides nothing has come, down to that depth, that the whole verdict of the design before did not have as grave. */
    boolean clean(Design changed, CautionKind danger, Depth depth) {
        return depth.before().stream()
                        .allMatch(before -> without(changed, danger, before) && nothingNew(changed, before))
                && without(changed, danger, depth)
                && nothingNew(changed, depth);
    }

    private static boolean has(SafetyVerdict verdict, CautionKind danger) {
        return verdict.of(Severity.DANGER).stream().anyMatch(caution -> caution.kind() == danger);
    }

    private boolean nothingNew(Design changed, Depth depth) {
        return come(changed, depth).filter(List::isEmpty).isPresent();
    }

    /** The dangers and cautions that have come, down to that depth; empty where the design cannot be judged. */
    Optional<List<CautionKind>> come(Design changed, Depth depth) {
        // What the whole verdict calls a danger may be a caution to one that looks less deeply.
        Optional<SafetyVerdict> alike = depth == Depth.WHOLE ? Optional.of(before) : verdict(design, depth);
        return verdict(changed, depth)
                .map(after -> after.cautions().stream()
                        .filter(caution -> caution.severity() != Severity.NOTE)
                        .filter(caution -> !stood(before, caution)
                                && alike.filter(same -> stood(same, caution)).isEmpty())
                        .map(Caution::kind)
                        .distinct()
                        .toList());
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

    private Optional<SafetyVerdict> judged(Design changed, Depth depth) {
        try {
            Design alike = alike(changed);
            return Optional.of(
                    switch (depth) {
                        case QUICK -> SafetyVerdict.quick(changed);
                        case YEAR -> SafetyVerdict.judged(changed, roughYear(alike), Optional.empty());
                        case STARTS -> started(changed, alike, Optional.empty(), true);
                        case HOT_STARTS -> started(changed, alike, roughYear(alike), true);
                        case SURE_STARTS -> started(changed, alike, roughYear(alike), false);
                        case FINE_YEAR -> SafetyVerdict.judged(changed, SafetyVerdict.year(alike), Optional.empty());
                        case WHOLE -> whole(changed, alike, SafetyVerdict.year(alike));
                    });
        } catch (RefusedException cannotBe) {
            return Optional.empty();
        }
    }

    private static SafetyVerdict started(Design changed, Design alike, Optional<YearSpread> year, boolean coarse) {
        return SafetyVerdict.judged(changed, year, SafetyVerdict.startsUntilOneFails(alike, year, coarse));
    }

    private static SafetyVerdict whole(Design changed, Design alike, Optional<YearSpread> year) {
        return SafetyVerdict.judged(changed, year, SafetyVerdict.starts(alike, year));
    }

    private Optional<YearSpread> roughYear(Design alike) {
        return roughYears.computeIfAbsent(alike, SafetyVerdict::roughYear);
    }

    /** The first that was met of the designs that have year and starts in common with this one. */
    private Design alike(Design changed) {
        return standIns.computeIfAbsent(warmSide(changed), bare -> changed);
    }

    /** A design without what neither year nor starts look at: what is said of safety, and the pipes and valves to the taps. */
    private static Design warmSide(Design of) {
        List<Tap> taps = of.taps().stream()
                .map(tap -> new Tap(tap.name(), tap.levelM(), "", 0, Map.of(), 0))
                .toList();
        return new Design(
                "",
                of.site(),
                of.tank(),
                of.coil(),
                of.fire(),
                of.coldLegs(),
                of.hotLegs(),
                of.window(),
                taps,
                of.use(),
                Optional.empty(),
                Map.of());
    }
}

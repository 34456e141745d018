package loftcoil.engine.clear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.engine.study.NamedValue;

/** Does what the search offers, and judges what comes of it anew. */
final class Following {

    private Following() {}

    /**
     * Searches and follows each way that is offered. The design with it, read from its own file, is rid of the danger, and nothing has come:
     * no danger, and no caution either that did not stand before as grave. Where a coil's heat is stated, only a smaller coil changes it.
     */
    static Clears holds(Design design) {
        Clears clears = ClearSearch.of(design);
        SafetyVerdict before = SafetyVerdict.whole(design);
        assertEquals(
                kinds(before, Severity.DANGER),
                clears.dangers().stream().map(Cleared::kind).toList());
        for (Cleared danger : clears.dangers()) {
            danger.ways().forEach(way -> holds(design, before, danger.kind(), way));
        }
        return clears;
    }

    private static void holds(Design design, SafetyVerdict before, CautionKind danger, Way way) {
        SafetyVerdict after = SafetyVerdict.whole(DesignJson.read(DesignJson.write(way.appliedTo(design))));
        Supplier<String> words = () -> danger + ": " + way.words().metric();
        assertFalse(kinds(after, Severity.DANGER).contains(danger), words);
        Set<CautionKind> dangersCome = EnumSet.noneOf(CautionKind.class);
        dangersCome.addAll(kinds(after, Severity.DANGER));
        kinds(before, Severity.DANGER).forEach(dangersCome::remove);
        assertEquals(Set.of(), dangersCome, words);
        Set<CautionKind> cautionsCome = EnumSet.noneOf(CautionKind.class);
        cautionsCome.addAll(kinds(after, Severity.WARNING));
        kinds(before, Severity.DANGER).forEach(cautionsCome::remove);
        kinds(before, Severity.WARNING).forEach(cautionsCome::remove);
        assertEquals(Set.of(), cautionsCome, words);
        List<String> changed = way.changes().stream().map(NamedValue::name).toList();
        assertTrue(!changed.contains("coil.heatKW") || changed.contains("coil.lengthM"), words);
    }

    private static List<CautionKind> kinds(SafetyVerdict verdict, Severity severity) {
        return verdict.of(severity).stream().map(Caution::kind).distinct().toList();
    }
}

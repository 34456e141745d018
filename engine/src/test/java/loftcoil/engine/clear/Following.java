package loftcoil.engine.clear;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.sheet.SafetyVerdict;

/** Does what the search offers, and judges what comes of it anew. */
final class Following {

    private Following() {}

    /** Searches and follows the first way of each danger; the design with it is read from its own file and is rid of the danger. */
    static Clears holds(Design design) {
        Clears clears = ClearSearch.of(design);
        List<CautionKind> dangers = dangers(design);
        assertEquals(dangers, clears.dangers().stream().map(Cleared::kind).toList());
        for (Cleared danger : clears.dangers()) {
            danger.ways().stream().limit(1).forEach(way -> {
                Design changed = DesignJson.read(DesignJson.write(way.appliedTo(design)));
                List<CautionKind> left = dangers(changed);
                assertEquals(
                        List.of(),
                        left.stream()
                                .filter(kind -> kind == danger.kind() || !dangers.contains(kind))
                                .toList(),
                        () -> danger.kind() + ": " + way.words().metric());
            });
        }
        return clears;
    }

    private static List<CautionKind> dangers(Design design) {
        return SafetyVerdict.whole(design).of(Severity.DANGER).stream()
                .map(Caution::kind)
                .distinct()
                .toList();
    }
}

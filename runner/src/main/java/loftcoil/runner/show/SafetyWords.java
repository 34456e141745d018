package loftcoil.runner.show;

import java.util.List;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.engine.words.Units;

/** The verdict on danger as every face shows it. */
final class SafetyWords {

    private static final String CLEAR_LABEL = "No danger known";

    private SafetyWords() {}

    static View.Safety of(SafetyVerdict verdict, Units units) {
        return new View.Safety(
                verdict.level(),
                verdict.gravest().map(Severity::label).orElse(CLEAR_LABEL),
                verdict.dangerous()
                        ? "Light no fire under it as it is."
                        : verdict.cautions().isEmpty() ? "Nothing was found. That is no promise." : "",
                findings(verdict.cautions(), units),
                verdict.leading().size(),
                verdict.followingWords(),
                verdict.open());
    }

    static List<View.Finding> findings(List<Caution> cautions, Units units) {
        return cautions.stream()
                .map(caution -> new View.Finding(
                        caution.code(),
                        caution.severity().code(),
                        caution.severity().label(),
                        caution.text(units)))
                .toList();
    }
}

package loftcoil.runner.show;

import java.util.List;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.sheet.SafetyVerdict;

/** The verdict on danger as every face shows it. */
final class SafetyWords {

    private static final String CLEAR_LABEL = "No danger known";

    private SafetyWords() {}

    static View.Safety of(SafetyVerdict verdict) {
        return of(verdict, verdict.open());
    }

    /** What could be judged of a design whose year cannot be, and why not. */
    static View.Safety withoutYear(SafetyVerdict quick, RefusedException why) {
        int others = why.lines().size() - 1;
        String more = others == 0 ? "." : ", and " + others + " more of the kind.";
        return of(quick, "The year could not be judged: " + why.lines().get(0) + more);
    }

    private static View.Safety of(SafetyVerdict verdict, String open) {
        return new View.Safety(
                verdict.level(),
                verdict.gravest().map(Severity::label).orElse(CLEAR_LABEL),
                verdict.dangerous()
                        ? "Light no fire under it as it is."
                        : verdict.cautions().isEmpty() ? "Nothing was found. That is no promise." : "",
                findings(verdict.cautions()),
                verdict.leading().size(),
                verdict.followingWords(),
                open);
    }

    static List<View.Finding> findings(List<Caution> cautions) {
        return cautions.stream()
                .map(caution -> new View.Finding(
                        caution.code(),
                        caution.severity().code(),
                        caution.severity().label(),
                        caution.text()))
                .toList();
    }
}

package loftcoil.runner.show;

import java.util.List;
import java.util.stream.Collectors;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Grounds;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.engine.survey.Doubts;
import loftcoil.engine.words.Units;

/** The verdict on danger as every face shows it. */
final class SafetyWords {

    private static final String CLEAR_LABEL = "No danger known";
    private static final String BORROWED_LABEL = "Nothing found, much of it borrowed";

    private SafetyWords() {}

    /**
     * Where values are borrowed nothing is said of danger in the learner's house, as long as none is found. What looks like a slip is asked
     * about.
     *
     * @param design of which the verdict is
     */
    static View.Safety of(SafetyVerdict verdict, Design design, Units units) {
        return of(verdict, design, verdict.open(), units);
    }

    /** What could be judged of a design whose year cannot be, and why not. */
    static View.Safety withoutYear(SafetyVerdict quick, Design design, RefusedException why, Units units) {
        return of(quick, design, "The year could not be judged: " + why(why, units), units);
    }

    /** Why something could not be judged: the first fault in a sentence, and how many more there are. */
    static String why(RefusedException refused, Units units) {
        List<String> told = new Shown(units).said(refused).lines();
        int others = told.size() - 1;
        return told.get(0) + (others == 0 ? "." : ", and " + others + " more of the kind.");
    }

    private static View.Safety of(SafetyVerdict verdict, Design design, String open, Units units) {
        Grounds grounds = Grounds.of(design);
        String doubts = Doubts.of(design).stream()
                .map(doubt -> " Is this so? " + units.words(doubt))
                .collect(Collectors.joining());
        return new View.Safety(
                verdict.level(),
                verdict.gravest().map(Severity::label).orElse(grounds.own() ? CLEAR_LABEL : BORROWED_LABEL),
                (finding(verdict) + " " + grounds.words() + doubts).strip(),
                findings(verdict.cautions(), units),
                verdict.leading().size(),
                verdict.followingWords(),
                open);
    }

    private static String finding(SafetyVerdict verdict) {
        if (verdict.dangerous()) {
            return "Light no fire under it as it is.";
        }
        return verdict.cautions().isEmpty() ? "Nothing was found. That is no promise." : "";
    }

    static List<View.Finding> findings(List<Caution> cautions, Units units) {
        return cautions.stream()
                .map(caution -> new View.Finding(
                        caution.code(),
                        caution.severity().code(),
                        caution.severity().label(),
                        caution.text(units)
                                + caution.happens()
                                        .map(words -> " " + units.words(words))
                                        .orElse("")))
                .toList();
    }
}

package loftcoil.runner.show;

import java.util.List;
import java.util.stream.Collectors;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Grounds;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.engine.survey.Doubts;
import loftcoil.engine.words.Units;

/** The verdict on danger as every face shows it. */
final class SafetyWords {

    /** Code of a design in which nothing was found and not all is judged: no face may show it as it shows one that is clear. */
    static final String OPEN = "open";

    private static final String CLEAR_LABEL = "No danger known";
    private static final String BORROWED_LABEL = "Nothing found, much of it borrowed";
    private static final String OPEN_LABEL = "Not judged yet";
    private static final String CANNOT_LABEL = "Not judged in full";
    /** After the gravest that was found, where something graver may come; no danger can be topped. */
    static final String SO_FAR = " so far";

    private SafetyWords() {}

    /**
     * Where values are borrowed nothing is said of danger in the learner's house, as long as none is found. What looks like a slip is asked
     * about.
     *
     * @param design of which the verdict is
     */
    static View.Safety of(SafetyVerdict verdict, Design design, Units units) {
        return of(verdict, design, new Open(verdict.open(), OPEN_LABEL), units);
    }

    /**
     * What could be judged of a design whose year cannot be, and why not.
     *
     * @param judged all but the year
     */
    static View.Safety withoutYear(SafetyVerdict judged, Design design, RefusedException why, Units units) {
        return of(judged, design, new Open("The year could not be judged: " + why(why, units), CANNOT_LABEL), units);
    }

    /** What is not judged, in a sentence that is empty where all is, and what a verdict is called in which nothing else was found. */
    private record Open(String words, String label) {

        boolean any() {
            return !words.isEmpty();
        }
    }

    /** Why something could not be judged: the first fault in a sentence, and how many more there are. */
    static String why(RefusedException refused, Units units) {
        List<String> told = new Shown(units).said(refused).lines();
        int others = told.size() - 1;
        return told.get(0) + (others == 0 ? "." : ", and " + others + " more of the kind.");
    }

    private static View.Safety of(SafetyVerdict verdict, Design design, Open open, Units units) {
        Grounds grounds = Grounds.of(design);
        String doubts = Doubts.of(design).stream()
                .map(doubt -> " Is this so? " + units.words(doubt))
                .collect(Collectors.joining());
        return new View.Safety(
                open.any() && verdict.gravest().isEmpty() ? OPEN : verdict.level(),
                label(verdict, grounds, open),
                (finding(verdict, open) + " " + grounds.words() + doubts).strip(),
                findings(verdict.cautions(), units),
                verdict.leading().size(),
                verdict.followingWords(),
                open.words());
    }

    private static String label(SafetyVerdict verdict, Grounds grounds, Open open) {
        if (verdict.gravest().isPresent()) {
            String found = verdict.gravest().get().label();
            return open.any() && !verdict.dangerous() ? found + SO_FAR : found;
        }
        return open.any() ? open.label() : grounds.own() ? CLEAR_LABEL : BORROWED_LABEL;
    }

    private static String finding(SafetyVerdict verdict, Open open) {
        if (verdict.dangerous()) {
            return "Light no fire under it as it is.";
        }
        if (open.any()) {
            return verdict.cautions().isEmpty() ? "Nothing was found so far." : "";
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

package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.caution.WorkStep;
import loftcoil.engine.clear.ClearWords;
import loftcoil.engine.clear.Cleared;
import loftcoil.engine.clear.Clears;
import loftcoil.engine.clear.Way;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.engine.words.MeasuredText;
import loftcoil.runner.show.Html;

/** Cautions as boxes, the word for how bad it can get before each. */
final class CautionList {

    private static final String NOT_SEARCHED =
            "Nobody has searched yet what of the build would clear these dangers. On the page, press"
                    + " “Search what would clear them” beside your loop; then the ways stand here under each, the cheapest first.";

    private final MeasureText measures;
    /** Sources in the order in which they were named first; many cautions share one. */
    private final List<String> sources = new ArrayList<>();

    CautionList(MeasureText measures) {
        this.measures = measures;
    }

    /** All of them, the gravest leading, with their sources and what would clear the dangers among them. */
    String all(SafetyVerdict verdict, Optional<Clears> clears) {
        String more = verdict.followingWords();
        return notSearched(verdict, clears)
                + boxes(verdict.leading(), clears)
                + (more.isEmpty() ? "" : Html.element("h3", Html.text(more)))
                + boxes(verdict.following(), clears)
                + sources();
    }

    private String boxes(List<Caution> cautions, Optional<Clears> clears) {
        return cautions.stream()
                .map(caution -> box(caution, true, cleared(caution, clears)))
                .collect(Collectors.joining());
    }

    private int source(Caution caution) {
        String source = inline(caution.kind().source());
        if (!sources.contains(source)) {
            sources.add(source);
        }
        return sources.indexOf(source) + 1;
    }

    private String sources() {
        return sources.isEmpty()
                ? ""
                : Html.element("h3", "Sources of the cautions") + EvenColumns.numbered("doubts", sources);
    }

    private String cleared(Caution caution, Optional<Clears> clears) {
        if (caution.severity() != Severity.DANGER) {
            return "";
        }
        return clears.flatMap(searched -> searched.of(caution.kind()))
                .map(this::ways)
                .orElse("");
    }

    /** Said once for all dangers, with where to begin. */
    private static String notSearched(SafetyVerdict verdict, Optional<Clears> clears) {
        boolean danger = Stream.concat(verdict.leading().stream(), verdict.following().stream())
                .anyMatch(caution -> caution.severity() == Severity.DANGER);
        return danger && clears.isEmpty() ? Html.element("p", NOT_SEARCHED) : "";
    }

    private String ways(Cleared cleared) {
        String rarer = cleared.rarer().isEmpty()
                ? ""
                : Html.element("p", inline(ClearWords.rarerHead())) + items(cleared.rarer());
        return Html.element("p", inline(ClearWords.head(cleared))) + items(cleared.ways()) + rarer;
    }

    private String items(List<Way> ways) {
        return ways.isEmpty()
                ? ""
                : Html.element(
                        "ul",
                        ways.stream()
                                .map(way -> Html.element("li", inline(way.words())))
                                .collect(Collectors.joining()));
    }

    /** Those that stand beside a step of the work, where the hand would be hurt; told in full on the first page. */
    String beside(WorkStep step, List<Caution> cautions) {
        return cautions.stream()
                .filter(caution -> caution.kind().beside().contains(step))
                .map(caution -> box(caution, false, ""))
                .collect(Collectors.joining());
    }

    private String box(Caution caution, boolean sourced, String after) {
        String source = sourced
                ? caution.happens().map(words -> " " + inline(words)).orElse("") + " "
                        + Html.element(
                                "span", "source", Html.text(caution.code()) + ", source " + source(caution) + ".")
                : "";
        return Html.element(
                "div",
                "warn " + caution.severity().code() + (sourced ? "" : " again"),
                Html.element(
                                "p",
                                Html.element("strong", caution.severity().label() + ".") + " " + inline(caution.words())
                                        + source)
                        + after);
    }

    private String inline(MeasuredText words) {
        return Prose.inline(measures.words(words));
    }
}

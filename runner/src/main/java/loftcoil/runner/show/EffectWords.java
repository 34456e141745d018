package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Differences;
import loftcoil.engine.study.Comparison;
import loftcoil.engine.study.Row;
import loftcoil.engine.words.Units;

/** What a change of the learner's design comes to: the few figures that matter, the cautions that come and go, and what moved with it. */
final class EffectWords {

    /** Shown whether they change or not. */
    private static final List<String> ALWAYS = List.of("loop.flowLPerMin", "worst.boilMarginK");

    /** Known once the year is marched. */
    private static final List<String> OF_THE_YEAR =
            List.of("year.hottestC", "year.boilingH", "year.solarKWh", "year.woodKg", "year.shortfallKWh");

    /** Shown where they change. */
    private static final List<String> WHERE_TOUCHED = List.of("loop.heatKW", "tank.fullMassKg", "loop.coldFire.lossW");

    private EffectWords() {}

    /**
     * In words.
     *
     * @param number the state in the history that the change made
     * @param compared the design before and after it
     * @param change name of the change, whose own fields are not told as moved; empty where it had none
     * @param open what is not judged yet, or why it cannot be; empty where all is
     * @param units whose units it is told in
     */
    static View.Effect of(int number, Comparison compared, String change, String open, Units units) {
        List<View.Finding> raised = SafetyWords.findings(compared.cautionsRaised(), units);
        return new View.Effect(
                number,
                danger(compared),
                lines(compared, units),
                raised,
                SafetyWords.findings(compared.cautionsSettled(), units),
                SafetyWords.findings(changed(compared), units),
                change.isEmpty() ? List.of() : moved(compared, change, units),
                open);
    }

    private static String danger(Comparison compared) {
        long raised =
                compared.cautionsRaised().stream().filter(EffectWords::isDanger).count();
        String comes = raised > 0
                ? "This is dangerous: it brings " + (raised == 1 ? "a danger that was" : raised + " dangers that were")
                        + " not there before."
                : compared.cautionsRaised().isEmpty() ? "" : "It brings a caution that was not there before.";
        return (comes + " " + stays(compared)).strip();
    }

    /** What was dangerous before and is so still: no answer may read as calm over it. */
    private static String stays(Comparison compared) {
        long stay = staying(compared).size();
        if (stay == 0) {
            return "";
        }
        return stay == 1
                ? "A danger that was there before stays: light no fire under it as it is."
                : stay + " dangers that were there before stay: light no fire under it as it is.";
    }

    private static boolean isDanger(Caution caution) {
        return caution.severity() == Severity.DANGER;
    }

    private static List<Caution> staying(Comparison compared) {
        List<String> before =
                compared.before().cautions().stream().map(Caution::code).toList();
        return compared.after().cautions().stream()
                .filter(EffectWords::isDanger)
                .filter(caution -> before.contains(caution.code()))
                .toList();
    }

    private static List<Caution> changed(Comparison compared) {
        return staying(compared).stream()
                .filter(caution -> !compared.before().cautions().contains(caution))
                .toList();
    }

    private static List<RebuildView.Line> lines(Comparison compared, Units units) {
        Map<String, Row> rows =
                compared.rows().stream().collect(Collectors.toMap(Row::key, Function.identity(), (one, same) -> one));
        List<RebuildView.Line> lines = new ArrayList<>();
        String before = circulates(compared.before().loop().circulates());
        String after = circulates(compared.after().loop().circulates());
        lines.add(new RebuildView.Line(
                "circulates",
                "",
                before,
                after,
                "",
                before.equals(after) ? "same" : after.equals("yes") ? "better" : "worse"));
        for (String key : ALWAYS) {
            add(rows, key, lines, units);
        }
        if (compared.after().verdict().yearOpen()) {
            lines.replaceAll(EffectWords::soFar);
        }
        for (String key : OF_THE_YEAR) {
            add(rows, key, lines, units);
        }
        for (String key : WHERE_TOUCHED) {
            Row row = rows.get(key);
            if (row != null && !SideBySide.line(row, units).turn().equals("same")) {
                lines.add(SideBySide.line(row, units));
            }
        }
        return lines;
    }

    /** The worst of all states is not known before the year has told the hottest tank. */
    private static RebuildView.Line soFar(RebuildView.Line line) {
        return line.label().endsWith(", worst")
                ? new RebuildView.Line(
                        line.label() + SafetyWords.SO_FAR,
                        line.unit(),
                        line.before(),
                        line.after(),
                        line.difference(),
                        line.turn())
                : line;
    }

    private static String circulates(boolean circulates) {
        return circulates ? "yes" : "no";
    }

    private static void add(Map<String, Row> rows, String key, List<RebuildView.Line> lines, Units units) {
        Row row = rows.get(key);
        if (row != null) {
            lines.add(SideBySide.line(row, units));
        }
    }

    /** What moved with a change without being named by it, a line each. */
    static List<String> moved(Comparison compared, String change, Units units) {
        return Differences.moved(compared.before().design(), compared.after().design(), List.of(change)).stream()
                .map(said -> units.words(said.words()))
                .filter(EffectWords::showsAChange)
                .toList();
    }

    /** What moved by less than its digits show would read as if nothing had. */
    private static boolean showsAChange(String line) {
        int arrow = line.indexOf(" → ");
        return arrow < 0 || !line.substring(0, arrow).endsWith(", " + line.substring(arrow + " → ".length()));
    }
}

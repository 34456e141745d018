package loftcoil.engine.build;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.Headings;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Sentences;

/** Puts a build sheet together and judges whether the design may be built as drawn. */
final class BuildMaker {

    private static final Sentences SENTENCES = Sentences.read(BuildMaker.class, "verdict.properties");

    private BuildMaker() {}

    static BuildSheet of(Sheet sheet, Headings headings) {
        Design design = sheet.design();
        List<MeasuredText> reasons = reasons(sheet.verdict());
        boolean runs = sheet.loop().circulates();
        CutList cuts = CutMaker.of(design);
        Fixings fixings = FixingsMaker.of(design, headings);
        return new BuildSheet(
                design,
                sheet,
                reasons.isEmpty()
                        && sheet.grounds().own()
                        && sheet.verdict().open().isEmpty(),
                verdict(sheet, runs),
                reasons,
                FigureMaker.of(sheet),
                Drawing.of(design, headings),
                PartsMaker.of(design, cuts, fixings),
                cuts,
                fixings,
                LoadsMaker.of(design),
                FillingMaker.of(design),
                runs ? Optional.of(FirstHourMaker.of(design)) : Optional.empty(),
                UpkeepMaker.of(design),
                LogMaker.of(design));
    }

    private static MeasuredText verdict(Sheet sheet, boolean runs) {
        if (sheet.verdict().dangerous()) {
            return SENTENCES.say(runs ? "verdict.dangers-known" : "verdict.no-heat-carried");
        }
        if (!sheet.verdict().open().isEmpty()) {
            return SENTENCES.say("verdict.half");
        }
        if (!sheet.grounds().own()) {
            return SENTENCES.say(
                    runs ? "verdict.borrowed" : "verdict.borrowed.nothing-heats",
                    "borrowed",
                    new Measure(sheet.grounds().borrowed(), MeasureKind.COUNT));
        }
        return SENTENCES.say(runs ? "verdict.no-danger-known" : "verdict.nothing-heats");
    }

    private static List<MeasuredText> reasons(SafetyVerdict verdict) {
        return verdict.of(Severity.DANGER).stream().map(Caution::words).toList();
    }
}

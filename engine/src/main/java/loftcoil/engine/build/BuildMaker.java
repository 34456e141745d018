package loftcoil.engine.build;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.words.MeasuredText;

/** Puts a build sheet together and judges whether the design may be built as drawn. */
final class BuildMaker {

    private BuildMaker() {}

    static BuildSheet of(Sheet sheet) {
        Design design = sheet.design();
        List<MeasuredText> reasons = reasons(sheet.verdict());
        boolean runs = sheet.loop().circulates();
        CutList cuts = CutMaker.of(design);
        return new BuildSheet(
                design,
                sheet,
                reasons.isEmpty(),
                verdict(sheet.verdict(), runs),
                reasons,
                FigureMaker.of(sheet),
                Drawing.of(design),
                PartsMaker.of(design, cuts),
                cuts,
                LoadsMaker.of(design),
                FillingMaker.of(design),
                runs ? Optional.of(FirstHourMaker.of(design)) : Optional.empty(),
                UpkeepMaker.of(design),
                LogMaker.of(design));
    }

    private static MeasuredText verdict(SafetyVerdict verdict, boolean runs) {
        if (verdict.dangerous() && !runs) {
            return MeasuredText.of(
                    "**This design must not be built as drawn: the loop does not carry the fire's heat away.** Change"
                            + " the design first; weights, parts and lengths below are those of the drawing as it is.");
        }
        if (verdict.dangerous()) {
            return MeasuredText.of(
                    "**Do not light a fire under this as drawn:** the loop circulates, but the dangers below are known"
                            + " and not cleared. Clear each of them, or have whoever is named there say that it is no danger here.");
        }
        if (!runs) {
            return MeasuredText.of(
                    "**As drawn nothing heats the loop and its water stands; no danger is known from what the design says.**"
                            + " What it does not say is asked for below. Local code and the licensed trades have the last word.");
        }
        return MeasuredText.of(
                "**As drawn the loop circulates, and no danger is known from what the design says.** What it does not"
                        + " say is asked for below. Local code and the licensed trades have the last word.");
    }

    private static List<MeasuredText> reasons(SafetyVerdict verdict) {
        return verdict.of(Severity.DANGER).stream()
                .map(danger -> MeasuredText.of(danger.text()))
                .toList();
    }
}

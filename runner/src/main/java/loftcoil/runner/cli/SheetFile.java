package loftcoil.runner.cli;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Function;
import loftcoil.engine.build.BuildSheet;
import loftcoil.runner.handout.HandoutHtml;
import loftcoil.runner.handout.Paper;
import loftcoil.runner.handout.SheetSetting;
import loftcoil.runner.show.LearnerApp;
import loftcoil.runner.terminal.SheetWriter;

/** Writes the build sheet for the terminal, on the paper that goes with the learner's units, with what was searched to clear its dangers. */
final class SheetFile implements SheetWriter {

    private final LearnerApp bench;

    SheetFile(LearnerApp bench) {
        this.bench = bench;
    }

    @Override
    public Function<BuildSheet, String> to(String file) {
        TargetFile target = TargetFile.of(StartedFrom.file(file));
        return sheet -> written(sheet, target);
    }

    private String written(BuildSheet sheet, TargetFile target) {
        Paper paper = Paper.usual(bench.units());
        SheetSetting setting = new SheetSetting(paper, bench.units(), LocalDate.now(ZoneId.systemDefault()));
        target.write(
                () -> HandoutHtml.buildSheet(sheet, bench.foundClears(), setting),
                () -> HandoutHtml.buildSheetPdf(sheet, bench.foundClears(), setting));
        return "The build sheet of '" + sheet.design().name() + "' is in " + target.path() + ".";
    }
}

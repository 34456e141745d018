package loftcoil.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.clear.ClearSearch;
import loftcoil.engine.clear.Clears;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.sheet.Headings;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.survey.SurveyJson;
import loftcoil.engine.words.Units;
import loftcoil.runner.handout.HandoutHtml;
import loftcoil.runner.handout.SheetSetting;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes the build sheet of a design as a file to print or to carry to the workshop. */
@Command(
        name = "build",
        description =
                "Makes the build sheet of a design: figures, drawing, parts, cuts, weights, filling, upkeep, log.",
        mixinStandardHelpOptions = true,
        footer = {"", "Exit status: 0 written; 2 the design or an option is refused, one line a fault."})
final class BuildCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "the design, a JSON file (default: your own design)")
    private @Nullable Path file;

    @Option(
            names = "--to",
            required = true,
            paramLabel = "FILE",
            description = "the sheet to write, .html or .pdf; one that is there is replaced")
    private Path to = Path.of("");

    @Mixin
    private PaperOption paper = new PaperOption();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Option(
            names = "--clears",
            negatable = true,
            defaultValue = "true",
            fallbackValue = "true",
            description =
                    "search what would clear each danger, which takes a few seconds (default); --no-clears leaves it out")
    private boolean clears = true;

    @Mixin
    private FolderOption folder = new FolderOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** Which way the pipes of the learner's own house lead; nowhere where no survey can be read. */
    private static Headings surveyed(Path folder) {
        Path survey = folder.resolve("survey.json");
        try {
            return Files.exists(survey) ? Headings.of(SurveyJson.read(Files.readString(survey))) : Headings.UNKNOWN;
        } catch (IOException | RefusedException unreadable) {
            return Headings.UNKNOWN;
        }
    }

    @Override
    public Integer call() {
        Units shown = units.chosen(folder);
        SheetSetting setting = new SheetSetting(paper.chosen(shown), shown, LocalDate.now(ZoneId.systemDefault()));
        TargetFile target = TargetFile.of(to);
        spec.commandLine()
                .getErr()
                .println(
                        "Working out the build sheet; that takes some seconds. Ctrl+C stops it, and nothing is written then.");
        spec.commandLine().getErr().flush();
        SearchProgress progress = new SearchProgress(spec.commandLine().getErr());
        BuildSheet sheet = BuildSheet.of(
                Sheet.whole(DesignFile.read(folder.design(file)), Sheet.USUAL_TANK_C, progress),
                file == null ? surveyed(folder.path()) : Headings.UNKNOWN);
        Optional<Clears> found = clears ? Optional.of(ClearSearch.of(sheet.design(), progress)) : Optional.empty();
        target.write(
                () -> HandoutHtml.buildSheet(sheet, found, setting),
                () -> HandoutHtml.buildSheetPdf(sheet, found, setting));
        PrintWriter out = spec.commandLine().getOut();
        out.println("The build sheet of '" + sheet.design().name() + "' is in " + target.path());
        if (!sheet.buildable()) {
            out.println("It begins with why this design must not be built as it is. "
                    + setting.units().words(sheet.verdict()).replace("*", ""));
        }
        out.flush();
        return Refusals.FINE;
    }
}

package loftcoil.runner.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import loftcoil.engine.design.Design;
import loftcoil.engine.study.Comparison;
import loftcoil.engine.study.NamedValue;
import loftcoil.engine.study.Rebuild;
import loftcoil.engine.words.Units;
import loftcoil.runner.handout.RebuildSheet;
import loftcoil.runner.handout.SheetSetting;
import loftcoil.runner.show.ComparisonJson;
import loftcoil.runner.show.ComparisonText;
import loftcoil.runner.show.RebuildView;
import loftcoil.runner.show.SideBySide;
import loftcoil.runner.terminal.Wrap;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Two design files side by side. */
@Command(
        name = "compare",
        description = "Sets two designs side by side, figure by figure, such as a system as built and its rebuild,%n"
                + "and says what each of the changes between them does by itself.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Where the year of one of them cannot be, the rest is compared, and it says why the years are not.",
            "Ctrl+C stops it; nothing is written.",
            "Exit status: 0 compared; 2 a file is refused, one line a fault, the field's path first."
        })
final class CompareCommand implements Callable<Integer> {

    private static final int WIDTH = 88;
    private static final String MORE =
            "These are the changes that have a name; the rest of what differs, as listed above, acts with them.";
    private static final String NO_NAME =
            "What differs, as listed above, is none of the changes that have a name, so none is told by itself.";

    @Parameters(index = "0", paramLabel = "OLD", description = "the design as it was, a JSON file")
    private Path oldFile = Path.of("");

    @Parameters(index = "1", paramLabel = "NEW", description = "the design as it is to be, a JSON file")
    private Path newFile = Path.of("");

    @Option(names = "--json", description = "print one JSON object instead of text")
    private boolean json;

    @Option(names = "--no-year", description = "leave out the year, which takes a second or more for each change")
    private boolean noYear;

    @Option(
            names = "--to",
            paramLabel = "FILE",
            description = "write it as a sheet, .html or .pdf, both houses in one frame; one that is there is replaced")
    private @Nullable Path to;

    @Mixin
    private PaperOption paper = new PaperOption();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        Optional<TargetFile> target = Optional.ofNullable(to).map(TargetFile::of);
        Design before = DesignFile.read(oldFile);
        Design after = DesignFile.read(newFile);
        Units told = units.chosen(new FolderOption());
        List<NamedValue> changes = NamedValue.between(before, after);
        String whyNot = noYear ? "" : SideBySide.noYear(before, after, json ? Units.METRIC : told);
        boolean years = !noYear && whyNot.isEmpty();
        Comparison compared = years ? Comparison.whole(before, after) : Comparison.of(before, after);
        Rebuild rebuild = years
                ? Rebuild.whole(
                                before,
                                changes,
                                new SearchProgress(spec.commandLine().getErr(), "Marching a year for each change"))
                        .result()
                : Rebuild.of(before, changes);
        PrintWriter out = spec.commandLine().getOut();
        if (target.isPresent()) {
            sheet(target.get(), SideBySide.of(compared, rebuild.effects(), told), before, after);
        } else if (json) {
            out.println(ComparisonJson.write(compared, rebuild, whyNot));
        } else {
            List<String> lines = new ArrayList<>(
                    List.of(before.name() + " (" + oldFile + ") and " + after.name() + " (" + newFile + ")"));
            lines.addAll(ComparisonText.lines(SideBySide.of(compared, rebuild.effects(), whyNot, told), WIDTH));
            if (!rebuild.leadsTo(compared.after())) {
                lines.add("");
                lines.add(changes.isEmpty() ? NO_NAME : MORE);
            }
            lines.stream()
                    .flatMap(line -> line.length() > WIDTH ? Wrap.lines(line, WIDTH).stream() : Stream.of(line))
                    .forEach(out::println);
        }
        out.flush();
        return Refusals.FINE;
    }

    private void sheet(TargetFile target, RebuildView.SideBySide both, Design before, Design after) {
        Units shown = units.chosen(new FolderOption());
        SheetSetting setting = new SheetSetting(paper.chosen(shown), shown, LocalDate.now(ZoneId.systemDefault()));
        target.write(
                () -> RebuildSheet.html(before, after, both, setting),
                () -> RebuildSheet.pdf(before, after, both, setting));
        spec.commandLine().getOut().println("The rebuild of '" + after.name() + "' is in " + target.path());
    }
}

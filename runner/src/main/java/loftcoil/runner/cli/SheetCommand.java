package loftcoil.runner.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import loftcoil.engine.clear.ClearSearch;
import loftcoil.engine.clear.ClearWords;
import loftcoil.engine.clear.Clears;
import loftcoil.engine.clear.ClearsJson;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.sheet.SheetJson;
import loftcoil.engine.sheet.SheetText;
import loftcoil.engine.study.ProgressListener;
import loftcoil.engine.watch.Watch;
import loftcoil.engine.words.Units;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Computes a design file and prints its figures. */
@Command(
        name = "sheet",
        description = "Computes a design file and prints its figures.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Ctrl+C stops it.",
            "Exit status: 0 computed; 2 the file is refused, one line a fault, the field's path first."
        })
final class SheetCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", description = "the design, a JSON file")
    private Path file = Path.of("");

    @Option(names = "--json", description = "print one JSON object instead of text")
    private boolean json;

    @Option(
            names = "--tank-c",
            paramLabel = "C",
            defaultValue = "40",
            description = "temperature of the whole tank for the loop's figures, °C (default: ${DEFAULT-VALUE})")
    private double tankC;

    @Option(
            names = "--clears",
            negatable = true,
            fallbackValue = "true",
            description = "search what would clear each danger (a few seconds; always with --json, unless --no-clears)")
    private @Nullable Boolean clears;

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        // Other programs want the answer alone.
        Optional<SearchProgress> told = json
                ? Optional.empty()
                : Optional.of(new SearchProgress(spec.commandLine().getErr()));
        Sheet sheet = Sheet.whole(
                DesignFile.read(file), tankC, told.map(Watch.class::cast).orElse(Watch.NONE));
        boolean search = clears == null ? json : clears;
        ProgressListener watch = told.map(ProgressListener.class::cast).orElse(ProgressListener.NONE);
        Optional<Clears> found = search ? Optional.of(ClearSearch.of(sheet.design(), watch)) : Optional.empty();
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(
                    found.map(searched -> ClearsJson.write(sheet, searched)).orElseGet(() -> SheetJson.write(sheet)));
        } else {
            text(sheet, found, units.chosen(new FolderOption())).forEach(out::println);
        }
        out.flush();
        return Refusals.FINE;
    }

    private static List<String> text(Sheet sheet, Optional<Clears> found, Units units) {
        return SheetText.lines(sheet, units, caution -> found.flatMap(clears -> clears.of(caution.kind()))
                .map(ClearWords::all)
                .orElse(List.of()));
    }
}

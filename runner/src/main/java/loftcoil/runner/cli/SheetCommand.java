package loftcoil.runner.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.sheet.SheetJson;
import loftcoil.engine.sheet.SheetText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Computes a design file and prints its figures. */
@Command(
        name = "sheet",
        description = "Computes a design file and prints its figures.",
        mixinStandardHelpOptions = true,
        footer = {"", "Exit status: 0 computed; 2 the file is refused, one line a fault, the field's path first."})
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

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        Sheet sheet = Sheet.whole(DesignFile.read(file), tankC);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(SheetJson.write(sheet));
        } else {
            SheetText.lines(sheet).forEach(out::println);
        }
        out.flush();
        return Refusals.FINE;
    }
}

package loftcoil.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import loftcoil.engine.build.PartsList;
import loftcoil.engine.design.Design;
import loftcoil.runner.handout.ShoppingList;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes what a design needs as a table with a column for prices, and adds the prices up. */
@Command(
        name = "shopping",
        description =
                "Writes the parts of a design as a table with a column for prices, or adds up one that is filled in.",
        mixinStandardHelpOptions = true,
        footer = {"", "Exit status: 0 done; 2 the design, the list or an option is refused, one line a fault."})
final class ShoppingCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "the design, a JSON file (default: your own design)")
    private @Nullable Path file;

    @ArgGroup(exclusive = true, multiplicity = "1")
    private Way way = new Way();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private FolderOption folder = new FolderOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** Writing or adding up. */
    static final class Way {

        @Option(
                names = "--to",
                required = true,
                paramLabel = "LIST",
                description = "the list to write, .csv; one that is there is replaced")
        private @Nullable Path to;

        @Option(
                names = "--sum",
                required = true,
                paramLabel = "LIST",
                description = "a list with prices in its last column, to be added up")
        private @Nullable Path sum;
    }

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (way.sum != null) {
            addUp(way.sum, out);
        } else if (way.to != null) {
            write(way.to, out);
        }
        out.flush();
        return Refusals.FINE;
    }

    private void write(Path to, PrintWriter out) {
        TargetFile target = TargetFile.csv(to);
        Design design = DesignFile.read(folder.design(file));
        PartsList parts = PartsList.of(design);
        target.write(ShoppingList.csv(parts, units.chosen(folder)));
        out.println("The shopping list of '" + design.name() + "' is in " + target.path() + ": "
                + parts.parts().size()
                + " lines. Write what each line costs into its last column, then: shopping --sum "
                + target.path());
    }

    private static void addUp(Path list, PrintWriter out) {
        ShoppingList filled = ShoppingList.filledIn(text(list));
        out.println(filled.sum().toPlainString() + " for " + filled.priced() + " lines; "
                + filled.open().size() + " have no price yet" + (filled.open().isEmpty() ? "." : ":"));
        filled.open().forEach(what -> out.println("  " + what));
    }

    private static String text(Path list) {
        try {
            return Files.readString(list, StandardCharsets.UTF_8);
        } catch (CharacterCodingException odd) {
            throw RefusedFile.of(list, "not in UTF-8", "a table saved as CSV in UTF-8");
        } catch (IOException failure) {
            throw RefusedFile.of(list, "cannot be read", "a table that Loftcoil wrote and you filled in");
        }
    }
}

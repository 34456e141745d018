package loftcoil.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import loftcoil.runner.chart.Screen;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line of Loftcoil. Without a command it opens the page. */
@Command(
        name = "loftcoil",
        description = "Teaches the design of a hot-water system that runs on a wood fire, the sun and gravity.%n"
                + "Without a command it opens the course in the browser.",
        mixinStandardHelpOptions = true,
        version = "Loftcoil 1.0",
        subcommands = {
            PageCommand.class,
            TerminalCommand.class,
            RefreshCommand.class,
            MeasureCommand.class,
            SheetCommand.class,
            BuildCommand.class,
            ShoppingCommand.class,
            CompareCommand.class,
            HandoutCommand.class,
            ClassCommand.class,
            ExportCommand.class,
            SelfCheckCommand.class,
            LicencesCommand.class,
            ProveCommand.class
        },
        footer = {
            "",
            "Exit status: 0 all went well, 2 an input or where to write to was refused, 1 a fault of the",
            "program itself."
        })
public final class Loftcoil implements Callable<Integer> {

    @Mixin
    private PageOptions page = new PageOptions();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    Loftcoil() {}

    /**
     * Starts Loftcoil and ends the process with its exit status.
     *
     * @param args the command line
     */
    public static void main(String[] args) {
        Optional<String> lost = LostLetters.fault(args, System.getProperty("user.dir"));
        if (lost.isPresent()) {
            System.err.println(lost.get());
            System.exit(Refusals.REFUSED);
        }
        Screen.leaveIfGone();
        System.exit(execute(fitting(args), args, StandardOutput.ofProcess()));
    }

    private static int execute(CommandLine commandLine, String[] args, StandardOutput output) {
        PrintWriter out = output.writer();
        commandLine.setOut(out);
        int status = status(commandLine, args);
        out.flush();
        Optional<String> unwritten = output.fault();
        unwritten.ifPresent(commandLine.getErr()::println);
        return unwritten.isPresent() ? Refusals.REFUSED : status;
    }

    private static int status(CommandLine commandLine, String[] args) {
        try {
            return commandLine.execute(args);
        } catch (Error failure) {
            return Refusals.error(failure, commandLine.getErr());
        }
    }

    /**
     * The command line for these arguments. Where they name no command, that of the page alone: to make ready for all others takes a
     * tenth of a second of each start. Help and whatever does not fit are answered by the whole one.
     */
    static CommandLine fitting(String... args) {
        if (args.length == 0 || args[0].startsWith("--")) {
            CommandLine page = ready(new PageCommand());
            try {
                CommandLine.ParseResult parsed = page.parseArgs(args);
                if (!parsed.isUsageHelpRequested() && !parsed.isVersionHelpRequested()) {
                    return page;
                }
            } catch (CommandLine.ParameterException notForThePage) {
                return commandLine();
            }
        }
        return commandLine();
    }

    /** The whole command line, ready to run; apart from {@link #main} so that tests can run it. */
    static CommandLine commandLine() {
        return ready(new Loftcoil());
    }

    private static CommandLine ready(Object command) {
        CommandLine commandLine = new CommandLine(command);
        commandLine.registerConverter(Path.class, StartedFrom::file);
        commandLine.setExecutionExceptionHandler(Refusals::handle);
        commandLine.setParameterExceptionHandler(Refusals::badArguments);
        return commandLine;
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        return page.run(spec.commandLine().getOut(), spec.commandLine().getErr());
    }
}

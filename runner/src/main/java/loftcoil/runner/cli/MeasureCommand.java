package loftcoil.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Units;
import loftcoil.runner.handout.Paper;
import loftcoil.runner.handout.SurveyForm;
import loftcoil.runner.show.LearnerApp;
import loftcoil.runner.terminal.TerminalFace;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Measures the learner's own house in the terminal, or writes the survey as a form to carry about. */
@Command(
        name = "measure",
        description = "Measures your own house, station by station, in this terminal; the page has it too.%n"
                + "With --paper it writes the survey as a form to carry about with a tape.",
        mixinStandardHelpOptions = true,
        footer = {"", "Exit status: 0 all went well; 2 an option or a file is refused."})
final class MeasureCommand implements Callable<Integer> {

    private static final String WEATHER = "a weather file";

    /** A year of hours has some 1.6 million. */
    private static final int LONGEST_WEATHER_BYTES = 5_000_000;

    @Option(
            names = "--paper",
            paramLabel = "FILE",
            description = "write the form, .html or .pdf; one that is there is replaced")
    private @Nullable Path form;

    @Option(
            names = "--climate",
            paramLabel = "FILE",
            description =
                    "first take sun and air from a weather file: hours in the EPW form, or twelve lines with each%n"
                            + "month's sun in kWh/m² a day and air in °C")
    private @Nullable Path climate;

    @Option(
            names = "--size",
            paramLabel = "SIZE",
            description = "paper of the form: a4 or letter (default: letter in US units, else a4)")
    private @Nullable String size;

    @Mixin
    private LearnerOptions learner = new LearnerOptions();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws IOException {
        if (form != null) {
            return write(form);
        }
        Optional<String> weather = climate == null
                ? Optional.empty()
                : Optional.of(DesignFile.text(climate, WEATHER, LONGEST_WEATHER_BYTES));
        try (LearnerApp bench = learner.open()) {
            weather.ifPresent(bench.survey()::climateFile);
            TerminalFace.measure(bench);
        }
        return Refusals.FINE;
    }

    private int write(Path file) {
        Units chosen = learner.units();
        Paper paper = Optional.ofNullable(size)
                .map(name -> Paper.named(name).orElseThrow(() -> RefusedException.of("--size", name, "a4, letter")))
                .orElse(Paper.usual(chosen));
        TargetFile target = TargetFile.of(file);
        target.write(() -> SurveyForm.html(paper, chosen), () -> SurveyForm.pdf(paper, chosen));
        PrintWriter out = spec.commandLine().getOut();
        out.println("The form to measure a house with is in " + target.path());
        out.flush();
        return Refusals.FINE;
    }
}

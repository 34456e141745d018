package loftcoil.runner.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import loftcoil.runner.prove.LessonProof;
import loftcoil.runner.prove.Proof;
import loftcoil.runner.session.SessionSetup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Runs the whole course headless and compares every number. */
@Command(
        name = "prove",
        description = "Runs every snippet and checks every worked solution, known mistake and published case.",
        mixinStandardHelpOptions = true,
        footer = {"", "Exit status: 0 all hold; 1 at least one fault; 2 the course itself is refused."})
final class ProveCommand implements Callable<Integer> {

    @Mixin
    private CourseOptions course = new CourseOptions();

    @Option(
            names = "--seeds",
            split = ",",
            paramLabel = "N",
            defaultValue = "1,2,3",
            description = "learners' seeds to try, separated by commas (default: ${DEFAULT-VALUE})")
    private List<Long> seeds = List.of();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        List<LessonProof> proofs =
                new Proof(course.read(), SessionSetup.usual(), seeds).run(proof -> print(out, proof));
        return proofs.stream().allMatch(proof -> proof.faults().isEmpty()) ? Refusals.FINE : Refusals.OWN_FAULT;
    }

    private static void print(PrintWriter out, LessonProof proof) {
        out.println(proof.line());
        proof.faults().forEach(fault -> out.println("    " + fault));
        out.flush();
    }
}

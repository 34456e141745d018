package loftcoil.runner.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Lists what Loftcoil is made with, and under which licences; the page shows the same file. */
@Command(
        name = "licences",
        description = "Lists the parts by others that Loftcoil brings, their versions and their licences.",
        mixinStandardHelpOptions = true)
final class LicencesCommand implements Callable<Integer> {

    /** Where the list is; a check of the build holds that it names every part of the jar, in its version. */
    static final String LIST = "/loftcoil/runner/page/licences.txt";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws IOException {
        try (InputStream in = Objects.requireNonNull(LicencesCommand.class.getResourceAsStream(LIST), LIST)) {
            spec.commandLine().getOut().print(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
        return Refusals.FINE;
    }
}

package loftcoil.runner.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Opens the course as a page in the browser. */
@Command(
        name = "page",
        description = "Opens the course in the browser; the same as no command at all.",
        mixinStandardHelpOptions = true)
final class PageCommand implements Callable<Integer> {

    @Mixin
    private PageOptions page = new PageOptions();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws IOException, InterruptedException {
        return page.run(spec.commandLine().getOut(), spec.commandLine().getErr());
    }
}

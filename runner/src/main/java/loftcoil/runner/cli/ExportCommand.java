package loftcoil.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.study.ProgressListener;
import loftcoil.runner.handout.SnippetExport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the Java of the lessons as files for the JDK's own shell. */
@Command(
        name = "export",
        description = "Writes the Java of each lesson as a file for the JDK's own shell, jshell.",
        mixinStandardHelpOptions = true,
        footer = {"", "Exit status: 0 written; 2 the folder or the course is refused."})
final class ExportCommand implements Callable<Integer> {

    @Option(
            names = "--to",
            required = true,
            paramLabel = "FOLDER",
            description = "where to; made where it is missing. Files of the same names are replaced")
    private Path to = Path.of("");

    @Mixin
    private CourseOptions course = new CourseOptions();

    @Mixin
    private Waiting waiting = new Waiting();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        return waiting.during(this::export);
    }

    private int export() {
        TargetFile.folder(to);
        waiting.says("Reading the lessons");
        Map<String, String> files = SnippetExport.of(course.read());
        write(files);
        waiting.ends();
        PrintWriter out = spec.commandLine().getOut();
        out.println(files.size() + " files are in " + to + ". There, for example:");
        out.println("    jshell --class-path loftcoil.jar "
                + files.keySet().iterator().next());
        out.flush();
        return Refusals.FINE;
    }

    private void write(Map<String, String> files) {
        ProgressListener lessons = waiting.counting("Writing the Java of lesson");
        int written = 0;
        try {
            for (Map.Entry<String, String> file : files.entrySet()) {
                lessons.done(++written, files.size());
                Files.writeString(to.resolve(file.getKey()), file.getValue());
            }
        } catch (IOException refused) {
            throw unwritable(refused);
        }
    }

    private RefusedException unwritable(IOException refused) {
        return RefusedFile.unwritable(to, refused, "a folder that may be written");
    }
}

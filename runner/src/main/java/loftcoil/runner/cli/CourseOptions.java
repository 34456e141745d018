package loftcoil.runner.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** Which course: the one inside, or that in a writer's folders. */
final class CourseOptions {

    /** What the compiler reads the jar with that snippets name the engine of. */
    private static final String JARS = "jdk.zipfs";

    @ArgGroup(exclusive = false)
    private @Nullable Folders folders;

    /** Both or neither. */
    static final class Folders {
        @Option(
                names = "--lessons",
                required = true,
                paramLabel = "FOLDER",
                description = "for lesson writers: read lessons from here instead of the ones inside")
        private Path lessons = Path.of("");

        @Option(
                names = "--exercises",
                required = true,
                paramLabel = "FOLDER",
                description = "for lesson writers: read exercises from here instead of the ones inside")
        private Path exercises = Path.of("");
    }

    /** The whole course, checked. */
    Course read() {
        return read(CourseReader::builtIn);
    }

    /** For whoever opens a lesson: of the course inside, which was checked when it was made, each part is read when it is asked for. */
    Course readAsAsked() {
        return read(CourseReader::builtInAsAsked);
    }

    private Course read(Supplier<Course> inside) {
        if (folders == null && ModuleLayer.boot().findModule(JARS).isEmpty()) {
            throw new RefusedException(List.of(Refusals.smallJava(JARS)));
        }
        return Optional.ofNullable(folders)
                .map(chosen -> CourseReader.read(chosen.lessons, chosen.exercises))
                .orElseGet(inside);
    }
}

package loftcoil.runner.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** Which course: the one inside, or that in a writer's folders. */
final class CourseOptions {

    /** What the course inside is read with. */
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

    Course read() {
        if (folders == null && ModuleLayer.boot().findModule(JARS).isEmpty()) {
            throw new RefusedException(List.of(Refusals.smallJava(JARS)));
        }
        return Optional.ofNullable(folders)
                .map(chosen -> CourseReader.read(chosen.lessons, chosen.exercises))
                .orElseGet(CourseReader::builtIn);
    }
}

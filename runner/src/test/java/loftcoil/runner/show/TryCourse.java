package loftcoil.runner.show;

import java.net.URISyntaxException;
import java.nio.file.Path;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;

/** A course of two short lessons that has one step of every kind. */
public final class TryCourse {

    private TryCourse() {}

    /** The folder the course is in. */
    public static Path folder() {
        try {
            return Path.of(TryCourse.class.getResource("course").toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The course. */
    public static Course read() {
        return CourseReader.read(folder().resolve("lessons"), folder().resolve("exercises"));
    }
}

package loftcoil.runner.course;

import loftcoil.engine.fault.Fault;
import loftcoil.runner.exercise.ExerciseFault;
import loftcoil.runner.lesson.LessonFault;

/**
 * One thing wrong in a course.
 *
 * @param file the file as its writer knows it
 * @param place where in it: line and column, or a field
 * @param what what stands there and is not allowed
 * @param allowed what would be
 */
public record CourseFault(String file, String place, String what, String allowed) {

    static CourseFault of(LessonFault fault) {
        return new CourseFault(fault.file(), fault.line() + ":" + fault.column(), fault.what(), fault.allowed());
    }

    static CourseFault of(ExerciseFault fault) {
        return new CourseFault(fault.file(), " " + fault.field(), fault.what(), fault.allowed());
    }

    /** The fault on one line, the place first. */
    public String words() {
        return file + (place.isEmpty() ? "" : ":" + Fault.placed(place)) + ": " + what + "; allowed: " + allowed;
    }
}

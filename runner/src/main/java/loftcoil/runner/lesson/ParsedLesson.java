package loftcoil.runner.lesson;

import java.util.List;
import loftcoil.engine.fault.Fault;

/**
 * A lesson with what its file alone cannot settle.
 *
 * @param lesson the lesson; where there are faults, as much of it as could be read
 * @param links links in its text
 * @param faults all that is wrong in the file, in the order of the lines
 */
public record ParsedLesson(Lesson lesson, List<LessonLink> links, List<Fault> faults) {

    /** Keeps its own copies. */
    public ParsedLesson {
        links = List.copyOf(links);
        faults = List.copyOf(faults);
    }
}

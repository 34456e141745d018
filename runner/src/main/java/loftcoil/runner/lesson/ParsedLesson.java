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
public record ParsedLesson(Lesson lesson, List<Link> links, List<Fault> faults) {

    /** Keeps its own copies. */
    public ParsedLesson {
        links = List.copyOf(links);
        faults = List.copyOf(faults);
    }

    /**
     * A link in the text of a lesson, to be checked against the files there are.
     *
     * @param line line in the file, from 1
     * @param column column in that line, from 1
     * @param target where it leads, relative to the lessons folder, such as {@code words.md#drive}
     */
    public record Link(int line, int column, String target) {}
}

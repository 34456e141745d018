package loftcoil.runner.show;

/**
 * The refresher, for someone who did the course years ago: a few quick questions a lesson. A lesson of which one was missed
 * has faded, and the path ends with the list of those. What came of it is kept at every answer.
 */
public interface Refresh {

    /** The path as it stands. */
    RefreshView.Path path();

    /**
     * Takes an answer. Each question takes one; one that cannot be read, or is in a unit of another kind, is no answer.
     *
     * @param id the question
     * @param text as typed
     * @throws UnknownNameException where there is no such question
     */
    RefreshView.Said answer(String id, String text);

    /**
     * The learner does not remember: counts as missed, and the solution is told.
     *
     * @param id the question
     * @throws UnknownNameException where there is no such question
     */
    RefreshView.Said forgotten(String id);

    /** Forgets what came of it; the path begins anew. The lessons keep their answers. */
    RefreshView.Path again();
}

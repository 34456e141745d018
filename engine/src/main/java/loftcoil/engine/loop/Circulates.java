package loftcoil.engine.loop;

/**
 * A stable forward flow without boiling.
 *
 * @param flow the flow
 * @param words the finding for a person
 */
public record Circulates(SteadyFlow flow, String words) implements Circulation {}

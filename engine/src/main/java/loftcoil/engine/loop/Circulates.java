package loftcoil.engine.loop;

import loftcoil.engine.words.MeasuredText;

/**
 * A stable forward flow without boiling.
 *
 * @param flow the flow
 * @param finding the finding for a person
 */
public record Circulates(SteadyFlow flow, MeasuredText finding) implements Circulation {}

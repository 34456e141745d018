package loftcoil.engine.loop;

import loftcoil.engine.words.MeasuredText;

/**
 * Nothing drives the water forward at any flow.
 *
 * @param bestDrivePa the greatest forward drive found over all flows that do not boil, Pa; 0 or less
 * @param finding the finding for a person, with the levels that cause it
 */
public record Still(double bestDrivePa, MeasuredText finding) implements Circulation {}

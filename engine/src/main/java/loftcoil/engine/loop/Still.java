package loftcoil.engine.loop;

/**
 * Nothing drives the water forward at any flow.
 *
 * @param bestDrivePa the greatest forward drive found over all flows that do not boil, Pa; 0 or less
 * @param words the finding for a person, with the levels that cause it
 */
public record Still(double bestDrivePa, String words) implements Circulation {}

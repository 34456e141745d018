package loftcoil.engine.design;

/**
 * The room the fire is in.
 *
 * @param carbonMonoxideAlarm whether there is a carbon monoxide alarm in it
 * @param airOpeningCm2 free area of openings to the outside that cannot be shut, cm²; 0 to 5000
 * @param extractFan whether a fan draws air out of the same room
 */
public record FireRoom(boolean carbonMonoxideAlarm, double airOpeningCm2, boolean extractFan) {}

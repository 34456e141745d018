package loftcoil.engine.design;

/**
 * An insulating board over the panes at set hours.
 *
 * @param resistanceM2KPerW its own resistance, m² K/W; 0 to 5; 40 mm of foam board about 1.1
 * @param shutFromH hour at which it is closed, h; 0 to 24
 * @param shutForH for how long, h; 0 to 24
 */
public record ShutterChoice(double resistanceM2KPerW, double shutFromH, double shutForH) {}

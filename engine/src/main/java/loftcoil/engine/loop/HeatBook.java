package loftcoil.engine.loop;

/**
 * Where the heat goes in a steady flow; coil = lost + tank.
 *
 * @param coilW heat the fire gives the water, W
 * @param lostW heat the legs (and an unlit coil) lose, W; negative where they are warmed
 * @param tankW heat the flow brings into the tank, W; negative where it takes heat out
 */
public record HeatBook(double coilW, double lostW, double tankW) {}

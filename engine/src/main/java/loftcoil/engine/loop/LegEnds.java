package loftcoil.engine.loop;

/**
 * Water temperatures at the two ends of one leg or of the coil.
 *
 * @param name the leg's name
 * @param startC at the end nearer the tank's cold port along the loop, °C, whichever way the water flows
 * @param endC at the end nearer the return port, °C
 * @param lossW heat lost on the way, W; negative where the water is warmed
 */
public record LegEnds(String name, double startC, double endC, double lossW) {}

package loftcoil.engine.design;

/**
 * A plastic pipe.
 *
 * @param name what the builder calls it
 * @param inLoop whether it is part of the loop between coil and tank
 * @param fromHeaterM distance from the heater along the pipe, m; 0 to 50
 */
public record PlasticPipe(String name, boolean inLoop, double fromHeaterM) {}

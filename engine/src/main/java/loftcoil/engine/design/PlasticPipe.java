package loftcoil.engine.design;

import java.util.Optional;

/**
 * A plastic pipe.
 *
 * @param name what the builder calls it
 * @param inLoop whether it is part of the loop between coil and tank
 * @param fromHeaterM distance from the heater along the pipe, m; 0 to 50
 * @param hotWater whether hot water or steam of the tank can come into it, as into a draw pipe, a vent or an overflow
 */
public record PlasticPipe(String name, boolean inLoop, double fromHeaterM, Optional<Boolean> hotWater) {}

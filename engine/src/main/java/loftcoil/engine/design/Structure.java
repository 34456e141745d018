package loftcoil.engine.design;

import java.util.Optional;

/**
 * What carries the tank.
 *
 * @param loadLimitKg what it may carry there, from somebody competent to say, kg; 0 to 20 000
 * @param bearers number of bearers that hand the weight on to walls or frame; 0 to 20; 0 where it stands on boards alone
 * @param wheels the dwelling's wheels; empty where it has none
 */
public record Structure(double loadLimitKg, int bearers, Optional<Wheels> wheels) {}

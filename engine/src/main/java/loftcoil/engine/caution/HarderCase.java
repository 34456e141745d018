package loftcoil.engine.caution;

import loftcoil.engine.loop.FlowSearch;

/**
 * The loop under harder conditions than those of the sheet: a stronger fire, a hotter tank.
 *
 * @param when the conditions in words that follow a comma, such as {@code with the coil taking 2.8 kW}
 * @param search what the search of the loop found then
 */
public record HarderCase(String when, FlowSearch search) {}

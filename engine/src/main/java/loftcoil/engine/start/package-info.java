/**
 * A fire lit under a loop that has rested: whether the water sets off forward, backward, swings or boils. Uses {@code loop},
 * {@code design} and the heats of {@code run}; knows nothing of cautions. The march is the one of
 * {@link loftcoil.engine.loop.WarmingLoop}; the states tried and the thresholds are a judgement and stand in {@code models/start.md}.
 * Read {@link loftcoil.engine.start.Starts} first.
 */
@NullMarked
package loftcoil.engine.start;

import org.jspecify.annotations.NullMarked;

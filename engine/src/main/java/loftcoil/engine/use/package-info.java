/**
 * What people draw and what they get: draw-offs of a day, mixing with cold, tapping cycles of the EU, daily demand. Uses
 * the rooms up to tank. Read {@link loftcoil.engine.use.DrawOff} first, then {@link loftcoil.engine.use.MixedTap}, which
 * draws from a tank's layers minute by minute.
 */
@NullMarked
package loftcoil.engine.use;

import org.jspecify.annotations.NullMarked;

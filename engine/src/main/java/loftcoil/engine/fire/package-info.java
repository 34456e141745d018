/**
 * The fire: wood and how much heat it holds, how it burns, what the coil in the fire takes up, what is left for the chimney.
 * Uses the rooms fault, water, gas, heat and pipe. Heating value after EN 14918 and ISO 17225-1; the coil by
 * textbook heat transfer with a stated spread, since no measured figure for such coils could be found. Read {@link
 * loftcoil.engine.fire.Burn} first, then {@link loftcoil.engine.fire.CoilInFire}.
 */
@NullMarked
package loftcoil.engine.fire;

import org.jspecify.annotations.NullMarked;

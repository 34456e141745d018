/**
 * The whole system through time: fire, loop, tank, sun and draws marched together through a year of minutes, or a single day
 * watched layer by layer. The loop in the march is a table of the room {@code loop}'s own search. Read
 * {@link loftcoil.engine.run.YearRun} first.
 */
@NullMarked
package loftcoil.engine.run;

import org.jspecify.annotations.NullMarked;

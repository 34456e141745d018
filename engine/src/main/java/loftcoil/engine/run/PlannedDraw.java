package loftcoil.engine.run;

import loftcoil.engine.use.DrawOff;

/**
 * A daily draw and whether its tap runs at all.
 *
 * @param draw what is wanted
 * @param runs false where the tap's mouth is not below the waterline: nothing comes, all of it is missing
 */
record PlannedDraw(DrawOff draw, boolean runs) {}

/**
 * Copper tube, what resists the flow in it and what cools it. Uses the fault, water, gas and heat rooms. Tubes, fittings
 * and laggings are tables among the resources of this room; each row names its source and whether it was checked against
 * it or written from memory. Read {@link loftcoil.engine.pipe.TubeTable} and {@link loftcoil.engine.pipe.Friction} first.
 */
@NullMarked
package loftcoil.engine.pipe;

import org.jspecify.annotations.NullMarked;

/**
 * What clears a danger: the engine's own search over what of a design is built. {@code Levers} lists what may be changed, for which
 * dangers, in which steps and at what relative cost; {@code ClearSearch} finds the smallest step of each that does it and shows it only
 * after the whole verdict of the changed design. Start with {@code ClearSearch}.
 */
@NullMarked
package loftcoil.engine.clear;

import org.jspecify.annotations.NullMarked;

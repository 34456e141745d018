/**
 * The circuit of cold legs, coil and hot legs that water drives round by its own weight: what moves it, what holds it
 * back, which flows can last and where it would boil. Uses {@code water}, {@code gas} and {@code pipe}; knows nothing
 * of designs, files or lessons. The momentum balance is the one of Vijayan, Nuclear Engineering and Design 215 (2002)
 * 139, kept in full (real densities, real losses) and without its lumped constants. Read
 * {@link loftcoil.engine.loop.Circuit} first, then {@link loftcoil.engine.loop.FlowSearch}.
 */
@NullMarked
package loftcoil.engine.loop;

import org.jspecify.annotations.NullMarked;

/**
 * The build sheet: everything a builder takes to the workshop, made from a design. Figures with their doubt, parts, cutting list,
 * weights, filling and first fire, upkeep and a log. Prose is kept as text with measures in it, so that whoever shows it chooses the
 * units. Uses every room below; the highest room of the engine. Read {@link loftcoil.engine.build.BuildSheet} first.
 */
@NullMarked
package loftcoil.engine.build;

import org.jspecify.annotations.NullMarked;

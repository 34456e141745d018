/**
 * What if: how far what is not known moves the answer, and what single changes and all of them together do to a design, side by
 * side. Uses every room below. Long searches tell how far they are and can be stopped; what they know by then is a result. Read
 * {@link loftcoil.engine.study.Rebuild} first, then {@link loftcoil.engine.study.LoopSpread}.
 */
@NullMarked
package loftcoil.engine.study;

import org.jspecify.annotations.NullMarked;

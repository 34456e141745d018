/**
 * What if: which change helps most, how far what is not known moves the answer, and which is the cheapest loop that does what is
 * wanted. Uses every room below. Long searches tell how far they are and can be stopped; what they know by then is a result.
 * Read {@link loftcoil.engine.study.Ranking} first, then {@link loftcoil.engine.study.LoopSpread} and
 * {@link loftcoil.engine.study.Proposal}.
 */
@NullMarked
package loftcoil.engine.study;

import org.jspecify.annotations.NullMarked;

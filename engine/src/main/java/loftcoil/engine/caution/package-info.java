/**
 * What can hurt somebody, found from a design and its figures. Each rule has a code of our own, a severity, plain words
 * with the figure that raised it, and a source or "common practice, no source". A design without a danger raises nothing.
 * Read {@link loftcoil.engine.caution.Caution} first.
 */
@NullMarked
package loftcoil.engine.caution;

import org.jspecify.annotations.NullMarked;

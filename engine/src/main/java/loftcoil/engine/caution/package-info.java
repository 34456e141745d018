/**
 * What can hurt somebody, found from a design and its figures. Each rule has a code of our own, a severity, plain words
 * with the figure that raised it, and a source or "common practice, no source". A design without a danger raises nothing; what it does not say is asked.
 * Uses every room below but {@code run}, whose figures are handed in. Read {@link loftcoil.engine.caution.Cautions} first, then one
 * rule, such as {@code OpenVent}.
 */
@NullMarked
package loftcoil.engine.caution;

import org.jspecify.annotations.NullMarked;

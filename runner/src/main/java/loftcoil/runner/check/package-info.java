/**
 * Answers against references, with units and known mistakes. Read {@link loftcoil.runner.check.Verdict} first.
 */
@NullMarked
package loftcoil.runner.check;

import org.jspecify.annotations.NullMarked;

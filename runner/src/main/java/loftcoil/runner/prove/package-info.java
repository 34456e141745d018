/**
 * The whole course run without a face: every snippet, every worked solution against its reference, every published case,
 * every known mistake, every decision. Read {@link loftcoil.runner.prove.Proof} first.
 */
@NullMarked
package loftcoil.runner.prove;

import org.jspecify.annotations.NullMarked;

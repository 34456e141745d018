/**
 * Sentences as data: text resources with named, typed holes, and the measures that fill them. Whoever shows them writes the
 * measures in the units of the reader at the very last step. Read {@link loftcoil.engine.words.Sentences} first.
 */
@NullMarked
package loftcoil.engine.words;

import org.jspecify.annotations.NullMarked;

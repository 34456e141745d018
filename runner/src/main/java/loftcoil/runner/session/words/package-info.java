/**
 * What the compiler says, in plain words. {@link loftcoil.runner.session.words.PlainWords} holds the table of
 * rules and is the one to read first. Knows text only, no compiler.
 */
@NullMarked
package loftcoil.runner.session.words;

import org.jspecify.annotations.NullMarked;

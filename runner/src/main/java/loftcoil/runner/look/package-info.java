/**
 * The colours of every face, read from one style sheet. It uses no other room. Read {@link loftcoil.runner.look.Colours} first.
 */
@NullMarked
package loftcoil.runner.look;

import org.jspecify.annotations.NullMarked;

/** Long work: how far it is, and how it is ended before its end. Read {@link loftcoil.engine.watch.Watch} first. */
@NullMarked
package loftcoil.engine.watch;

import org.jspecify.annotations.NullMarked;

/**
 * Runs snippets in a JVM of their own through the JShell API. The only room that knows JShell. Read
 * {@link loftcoil.runner.session.Outcome} first.
 */
@NullMarked
package loftcoil.runner.session;

import org.jspecify.annotations.NullMarked;

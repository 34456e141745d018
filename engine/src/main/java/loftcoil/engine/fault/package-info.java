/**
 * Typed refusals, used by every other room. A physics method throws {@link loftcoil.engine.fault.RefusedException};
 * reading a design collects {@link loftcoil.engine.fault.Fault}s and throws them all at once. Read
 * {@link loftcoil.engine.fault.Allowed} first.
 */
@NullMarked
package loftcoil.engine.fault;

import org.jspecify.annotations.NullMarked;

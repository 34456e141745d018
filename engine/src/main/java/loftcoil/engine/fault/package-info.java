/**
 * Typed refusals, used by every other room. A physics method throws {@link loftcoil.engine.fault.RefusedException};
 * reading a design collects {@link loftcoil.engine.fault.Fault}s and throws them all at once. {@link loftcoil.engine.fault.Refusal}
 * is the root of every refusal, the course's too; what is none is a fault of the program. Read
 * {@link loftcoil.engine.fault.Allowed} first.
 */
@NullMarked
package loftcoil.engine.fault;

import org.jspecify.annotations.NullMarked;

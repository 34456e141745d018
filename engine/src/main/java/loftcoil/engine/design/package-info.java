/**
 * The learner's design as written down: a record, its JSON, everything that can be wrong with it, and the changes a
 * lesson makes to it. Composes the topic rooms; none of them knows this room. Together with {@code sheet} the only place
 * that knows JSON. Read {@link loftcoil.engine.design.Design} first, then {@link loftcoil.engine.design.DesignJson}.
 */
@NullMarked
package loftcoil.engine.design;

import org.jspecify.annotations.NullMarked;

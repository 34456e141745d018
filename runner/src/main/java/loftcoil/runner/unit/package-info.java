/**
 * Units as people write them, and what they measure. Uses the units library of JSR 385 for all conversion; knows nothing of
 * exercises. Read {@link loftcoil.runner.unit.UnitText} first.
 */
@NullMarked
package loftcoil.runner.unit;

import org.jspecify.annotations.NullMarked;

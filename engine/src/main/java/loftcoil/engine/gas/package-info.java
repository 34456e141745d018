/**
 * Properties of gases: the pressure of the air at an altitude, dry air around pipes and tanks, flue gas with its dew point.
 * Uses the rooms fault and water. The standard atmosphere is that of ISO 2533:1975. Read {@link loftcoil.engine.gas.Air} first.
 */
@NullMarked
package loftcoil.engine.gas;

import org.jspecify.annotations.NullMarked;

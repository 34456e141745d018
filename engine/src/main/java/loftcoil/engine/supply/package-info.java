/**
 * Gravity from the tank to the taps: how much comes out where, alone and together, how long a tub takes, how long until it
 * runs hot, what an appliance's inlet needs. Uses the rooms up to loop. Bernoulli's equation from the waterline to each
 * outlet with Darcy friction and two-K fittings. Read {@link loftcoil.engine.supply.GravitySupply} first.
 */
@NullMarked
package loftcoil.engine.supply;

import org.jspecify.annotations.NullMarked;

/**
 * The store of hot water: its shape and weight, what it loses standing still, and the march of its layers through a step
 * of time. Uses the rooms fault, water, gas, heat and pipe. Films follow Incropera and ISO 12241; the layers follow the
 * plug-flow tank of the textbooks, with energy as the state so that the account closes. Read {@link
 * loftcoil.engine.tank.Layers} first.
 */
@NullMarked
package loftcoil.engine.tank;

import org.jspecify.annotations.NullMarked;

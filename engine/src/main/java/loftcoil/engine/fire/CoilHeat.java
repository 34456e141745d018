package loftcoil.engine.fire;

import java.util.OptionalDouble;

/**
 * Heat a coil takes up, found so that fire, tube and water agree.
 *
 * @param heatW heat the water takes up, W; {@code gasW} and {@code radiatedW} together
 * @param gasW of that, from the gas that sweeps over the tube, convection and glow of the gas, W
 * @param radiatedW of that, from embers and flame, W
 * @param surfaceC mean temperature of the outer surface, on the soot, °C
 * @param innerWallC mean temperature of the metal where it touches the water, °C; above the boiling point there, bubbles form
 *     at the wall and the coil rattles
 * @param gasBeforeC temperature of the gas as it reaches the coil, °C
 * @param gasAfterC temperature of the gas as it leaves the coil, °C
 * @param waterOutC temperature of the water leaving the coil, °C; empty where it would pass 110 °C, that is boil
 */
public record CoilHeat(
        double heatW,
        double gasW,
        double radiatedW,
        double surfaceC,
        double innerWallC,
        double gasBeforeC,
        double gasAfterC,
        OptionalDouble waterOutC) {}

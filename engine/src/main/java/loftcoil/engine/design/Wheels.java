package loftcoil.engine.design;

/**
 * A dwelling on wheels, without its tank, and where the tank sits in it.
 *
 * @param massKg mass without the tank, kg; 50 to 20 000
 * @param centreHeightM height of its centre of mass above the road, m; 0.1 to 4
 * @param centreAheadM its centre of mass ahead of the axle, m; −5 to 10
 * @param hitchAheadM hitch ahead of the axle, m; 0.5 to 15
 * @param trackM distance between the middles of left and right tyres, m; 0.5 to 3
 * @param axleLimitKg what the axle may carry by its plate, kg; 50 to 40 000
 * @param floorAboveRoadM finished floor above the road, m; 0 to 2
 * @param tankAheadM middle of the tank ahead of the axle, m; −10 to 15
 * @param tankAsideM middle of the tank off the middle line, m; −2 to 2
 */
public record Wheels(
        double massKg,
        double centreHeightM,
        double centreAheadM,
        double hitchAheadM,
        double trackM,
        double axleLimitKg,
        double floorAboveRoadM,
        double tankAheadM,
        double tankAsideM) {}

package loftcoil.engine.run;

/**
 * A steady flow of the loop as the march needs it.
 *
 * @param flowKgPerS mass flow, kg/s; 0 or more, whichever way it goes
 * @param lostW heat that the legs (and an unlit coil) lose, W; negative where they are warmed
 * @param boilMarginK how far all water in the loop stays from boiling and from the end of the water formulas, K
 * @param heatW heat from the fire, W
 */
record LoopPoint(double flowKgPerS, double lostW, double boilMarginK, double heatW) {

    static final int FIGURES = 4;

    double figure(int which) {
        return switch (which) {
            case 0 -> flowKgPerS;
            case 1 -> lostW;
            case 2 -> boilMarginK;
            default -> heatW;
        };
    }
}

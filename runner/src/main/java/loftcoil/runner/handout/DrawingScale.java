package loftcoil.runner.handout;

import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.words.Units;

/**
 * The scale a drawing is printed at, one of those a scale rule has.
 *
 * @param denominator metres in the building for each metre on paper
 * @param words how it is named, such as {@code 1 : 20}
 */
record DrawingScale(double denominator, String words) {

    private static final int[] METRIC = {5, 10, 20, 25, 50, 75, 100, 200, 500};
    /** Architect's scales, as inches on paper for each foot. */
    private static final String[] US_NAMES = {
        "3 in", "1-1/2 in", "1 in", "3/4 in", "1/2 in", "3/8 in", "1/4 in", "3/16 in", "1/8 in", "1/16 in"
    };

    private static final int[] US = {4, 8, 12, 16, 24, 32, 48, 64, 96, 192};
    private static final double MM_PER_M = 1000;

    /**
     * The largest scale at which a drawing has room.
     *
     * @param bounds what is drawn, m
     * @param room width and height on paper, mm
     */
    static DrawingScale fitting(Drawing.Bounds bounds, Room room, Units units) {
        int[] scales = units == Units.US ? US : METRIC;
        int at = 0;
        while (at + 1 < scales.length && !fits(bounds, room, scales[at])) {
            at++;
        }
        String words = units == Units.US ? US_NAMES[at] + " = 1 ft (1 : " + US[at] + ")" : "1 : " + METRIC[at];
        return new DrawingScale(scales[at], words);
    }

    /** Room on paper, mm. */
    record Room(double widthMm, double heightMm) {}

    private static boolean fits(Drawing.Bounds bounds, Room room, int scale) {
        double width = (bounds.rightM() - bounds.leftM()) * MM_PER_M / scale;
        double height = (bounds.topM() - bounds.bottomM()) * MM_PER_M / scale;
        return width <= room.widthMm() && height <= room.heightMm();
    }

    /** Millimetres on paper for a length in m. */
    double onPaperMm(double metres) {
        return metres * MM_PER_M / denominator;
    }
}

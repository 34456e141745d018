package loftcoil.engine.tank;

/**
 * A strap of mild steel band, as it is sold for hanging and holding, with holes in it.
 *
 * <p>EN 1993-1-1:2005, 6.2.3, net section at the holes: 0.9 times its area times the tensile strength, 360 N/mm² for S235 (table 3.1),
 * over 1.25 (from memory). The load is taken half as large again, as one that may come and go (EN 1990, A1.2(B)).
 */
public final class SteelBand {

    /** Its width, mm. */
    public static final double WIDE_MM = 20;

    /** Its thickness, mm. */
    public static final double THICK_MM = 1;

    /** The widest hole in it, mm. */
    public static final double HOLE_MM = 8;

    private static final double TENSILE_N_PER_MM2 = 360;
    private static final double NET = 0.9;
    private static final double MATERIAL = 1.25;
    private static final double LOAD = 1.5;

    private SteelBand() {}

    /** The pull that it may be counted on for, N. */
    public static double carriesN() {
        return NET * (WIDE_MM - HOLE_MM) * THICK_MM * TENSILE_N_PER_MM2 / MATERIAL / LOAD;
    }
}

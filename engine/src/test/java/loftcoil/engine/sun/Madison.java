package loftcoil.engine.sun;

import java.util.List;

/** The place of Duffie and Beckman's Example 2.19.1 as a year of ours: 43 degrees north, monthly sun of the example. */
final class Madison {

    static final double MJ_PER_KWH = 3.6;
    static final double LATITUDE_DEG = 43;
    static final Facing STEEP_SOUTH = new Facing(60, 180);
    static final int[] MEAN_DAYS = {17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344};

    private static final List<Double> GROUND_MJ =
            List.of(6.44, 9.89, 12.86, 16.05, 21.36, 23.04, 22.58, 20.33, 14.59, 10.48, 6.37, 5.74);

    /** Only the sun matters here; the air is made up. */
    static final SkyYear YEAR = SkyYear.of(
            new Place(LATITUDE_DEG, -89.4, 263, -6),
            new Climate(
                    GROUND_MJ.stream().map(mj -> mj / MJ_PER_KWH).toList(),
                    List.of(-8.0, -6.0, 0.0, 8.0, 14.0, 19.0, 22.0, 21.0, 16.0, 10.0, 2.0, -5.0)),
            10);

    private Madison() {}
}

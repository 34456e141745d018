package loftcoil.engine.design;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Where the dwelling stands, and under what roof.
 *
 * @param latitudeDeg latitude, degrees, north positive; −90 to 90
 * @param longitudeDeg longitude, degrees, east positive; −180 to 180
 * @param altitudeM altitude above the sea, m; −400 to 5000
 * @param utcOffsetH standard time minus UTC, h; −12 to 14
 * @param monthly monthly climate
 * @param coldSupplyC temperature of the cold supply, °C; 0 to 35
 * @param roomC temperature of the rooms, °C; 0 to 40
 * @param coldestNightC air on the coldest night that happens in some ten years, °C; −70 to 30; empty where nobody said it
 * @param hardnessMgPerL hardness of the water that fills the tank, mg/L as CaCO₃; 0 to 1000; empty where nobody said it
 * @param roof shape of the roof; empty where nobody said it: it is drawn as a gable then
 */
public record Site(
        double latitudeDeg,
        double longitudeDeg,
        double altitudeM,
        double utcOffsetH,
        Monthly monthly,
        double coldSupplyC,
        double roomC,
        OptionalDouble coldestNightC,
        OptionalDouble hardnessMgPerL,
        Optional<Roof> roof) {

    private static final int MONTHS = 12;

    /** Whether it lies south of the equator, where the noon sun stands in the north and July is winter. */
    public boolean isSouthern() {
        return latitudeDeg < 0;
    }

    /** The coldest month by its mean air, 1 to 12; the first of several. */
    public int coldestMonth() {
        List<Double> means = monthly.meanAirC();
        return 1 + means.indexOf(Collections.min(means));
    }

    /** The heart of winter: the coldest month and the one after it, in order of the year. */
    public List<Integer> heartOfWinter() {
        int coldest = coldestMonth();
        return Stream.of(coldest, coldest % MONTHS + 1).sorted().toList();
    }
}

package loftcoil.engine.design;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import loftcoil.engine.gas.Atmosphere;
import loftcoil.engine.pipe.FreezingWater;
import loftcoil.engine.pipe.Lagging;
import loftcoil.engine.pipe.PipeLoss;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.sun.WindowLoss;
import loftcoil.engine.tank.Standing;
import loftcoil.engine.water.Water;

/**
 * The coldest night that happens in some ten years, and what it makes of the places in and about a dwelling that people heat.
 *
 * <p>Where nobody said how cold it is, it is taken {@value #BELOW_MONTH_K} K under the mean of the coldest month. Of five weather stations
 * (ASHRAE Handbook 2009, 10-year extremes, against the TMY3 mean of the coldest month) that difference is 10 K at San Francisco, 15 at Las Vegas,
 * 16 at Newark, 24 in Illinois and 27 at Golden, Colorado: a mild coast is warmer, the inland of a continent colder by ten kelvin.
 *
 * <p>A place warmer than the coldest month outside and colder than the rooms keeps its share between the two, as the factor b of EN 12831 and
 * EN ISO 13789 for unheated rooms: a loft of 5 °C over rooms of 19 °C, 0 °C outside, is at -7 °C when it is -16 °C outside. What is stated as cold as outside or
 * colder is as cold as the night. Rooms, and what the flue warms while it burns, are taken as kept at room temperature; a house left cold is another
 * matter ({@link #emptyHouseC}).
 *
 * @param design the design
 * @param nightC air outside, °C
 * @param monthC mean of the coldest month, °C
 */
public record ColdNight(Design design, double nightC, double monthC) {

    /** The night under the coldest month's mean where nobody said it, K. */
    public static final double BELOW_MONTH_K = 16;

    /** Share of that by which an empty house gets colder inside than the month's mean: its walls even days out; common practice, no source. */
    private static final double SHARE_INSIDE = 0.5;

    private static final double COOL_C = 5;

    /** The night of a design's place. */
    public static ColdNight of(Design design) {
        Site site = design.site();
        double monthC = site.monthly().meanAirC().stream()
                .min(Comparator.naturalOrder())
                .orElseThrow();
        return new ColdNight(design, site.coldestNightC().orElse(monthC - BELOW_MONTH_K), monthC);
    }

    /** Whether somebody said how cold it gets. */
    public boolean isSaid() {
        return design.site().coldestNightC().isPresent();
    }

    /**
     * Temperature on that night where it is usually so warm in winter, °C.
     *
     * @param usualC stated temperature of the place, °C
     */
    public double whereUsually(double usualC) {
        double roomC = design.site().roomC();
        if (usualC >= roomC) {
            return roomC;
        }
        if (usualC <= monthC) {
            return Math.min(usualC, nightC);
        }
        double share = (roomC - usualC) / (roomC - monthC);
        return Math.min(usualC, roomC - share * (roomC - nightC));
    }

    /** Air outside on the coldest night of the months in which the fire is lit: as far below its month as this one is below its own, °C. */
    public double litNightC() {
        return Outdoors.coldestLitC(design) - Math.max(0, monthC - nightC);
    }

    /** Temperature around a leg with the fire out, °C. */
    public double around(Leg leg) {
        return leg.isOutdoors() ? nightC : whereUsually(leg.aroundFireOutC().orElse(leg.aroundC()));
    }

    /** Temperature around the tank, °C. */
    public double aroundTankC() {
        return whereUsually(design.tank().aroundC());
    }

    /**
     * Temperature inside a house left without fire, in the coldest days of a month, °C.
     *
     * @param meanC mean air of the month, °C
     */
    public double emptyHouseC(double meanC) {
        return meanC - SHARE_INSIDE * Math.max(0, monthC - nightC);
    }

    /** The leg of the loop that freezes through first; empty where none has frost around it. */
    public Optional<Frozen> firstLeg() {
        return Stream.concat(design.coldLegs().stream(), design.hotLegs().stream())
                .flatMap(leg -> freezes(leg).stream())
                .min(Comparator.comparingDouble(Frozen::throughH));
    }

    /** When a leg freezes with the water at rest, from as cold as the supply; empty where there is no frost around it. */
    public Optional<Frozen> freezes(Leg leg) {
        double aroundC = around(leg);
        Lagging lagging = leg.lagging().map(LaggingChoice::lagging).orElse(Lagging.NONE);
        return frozen(
                aroundC,
                () -> FreezingWater.inPipe(
                        TubeTable.require("tube", leg.tube()), lagging, Math.max(PipeLoss.AROUND.low(), aroundC)));
    }

    /** When the tank freezes, its panes at the open night, from as cold as the supply; empty where there is no frost around it. */
    public Optional<Frozen> tankFreezes() {
        double aroundC = aroundTankC();
        return frozen(aroundC, () -> {
            Standing standing = new Standing(COOL_C, Math.max(Standing.AROUND.low(), aroundC));
            double kg = design.tank().waterlineL() / 1000 * Water.densityKgPerM3(COOL_C);
            return new FreezingWater(kg, design.coatedTank().lossAt(standing).totalWPerK() + panesWPerK(aroundC));
        });
    }

    /** What the panes lose for each kelvin above the surroundings of the tank. */
    private double panesWPerK(double aroundC) {
        double airC = Math.max(WindowLoss.AIR.low(), nightC);
        return design.glazing()
                .map(panes -> {
                    double wPerM2 = new WindowLoss(
                                    panes, Atmosphere.pressurePa(design.site().altitudeM()))
                            .open(COOL_C, airC)
                            .wPerM2();
                    double areaM2 = design.seenFace()
                            .orElseThrow()
                            .losingM2(design.window().orElseThrow().areaM2());
                    return areaM2 * wPerM2 / (COOL_C - aroundC);
                })
                .orElse(0.0);
    }

    private Optional<Frozen> frozen(double aroundC, Supplier<FreezingWater> water) {
        if (!(aroundC < 0)) {
            return Optional.empty();
        }
        FreezingWater still = water.get();
        double zeroH = still.hoursToZero(design.site().coldSupplyC(), aroundC);
        return Optional.of(new Frozen(aroundC, zeroH, zeroH + still.hoursFreezing(1, aroundC)));
    }

    /**
     * How water at rest freezes.
     *
     * @param aroundC temperature around it, °C
     * @param zeroH time until it is at 0 °C, h
     * @param throughH time until all of it is ice, h
     */
    public record Frozen(double aroundC, double zeroH, double throughH) {}
}

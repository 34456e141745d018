package loftcoil.engine.design;

import java.util.List;
import java.util.OptionalDouble;
import loftcoil.engine.fire.Wood;
import loftcoil.engine.fire.WoodTable;

/**
 * The fire and when it burns.
 *
 * @param wood a name of the table of woods: {@code hardwood}, {@code softwood} or a species
 * @param moisturePct water in the wood, percent of its whole mass; 0 to 60
 * @param burnKgPerH wood burnt an hour, kg/h; 0.1 to 20
 * @param litFromH time of day it is lit, h; 0 to 24
 * @param litForH how long it burns, h; 0 to 24
 * @param litAgainFromH time of day a second fire of the day is lit, h; 0 to 24; empty where there is one fire a day
 * @param litAgainForH how long that burns, h; 0 to 24; there where its hour is
 * @param months months in which it is lit, 1 to 12
 * @param excessAir air over the least the wood needs, times; 1.2 to 4; empty where the common 2.2 is taken
 * @param fireboxM2 inner surface of the firebox, m²; 0.1 to 10; empty where the common 0.8 is taken
 * @param passageCm2 free section the gas has where it passes the coil, cm²; 20 to 10 000; empty where the common 200 is taken
 */
public record Fire(
        String wood,
        double moisturePct,
        double burnKgPerH,
        double litFromH,
        double litForH,
        OptionalDouble litAgainFromH,
        OptionalDouble litAgainForH,
        List<Integer> months,
        OptionalDouble excessAir,
        OptionalDouble fireboxM2,
        OptionalDouble passageCm2) {

    private static final double J_PER_KWH = 3.6e6;

    /**
     * One fire of a day.
     *
     * @param fromH time of day it is lit, h
     * @param forH how long it burns, h
     */
    public record Lighting(double fromH, double forH) {}

    /** A fire in a common heater, lit once a day. */
    public Fire(
            String wood, double moisturePct, double burnKgPerH, double litFromH, double litForH, List<Integer> months) {
        this(
                wood,
                moisturePct,
                burnKgPerH,
                litFromH,
                litForH,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                months,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** Keeps a copy of the months. */
    public Fire {
        months = List.copyOf(months);
    }

    /** Every fire of a day, as they are told. */
    public List<Lighting> lightings() {
        Lighting first = new Lighting(litFromH, litForH);
        return litAgainFromH.isPresent() && litAgainForH.isPresent()
                ? List.of(first, new Lighting(litAgainFromH.getAsDouble(), litAgainForH.getAsDouble()))
                : List.of(first);
    }

    /** Hours in which a fire burns, of a day, h. */
    public double litHoursADay() {
        return lightings().stream().mapToDouble(Lighting::forH).sum();
    }

    /** Hours that the longest fire of a day burns, h. */
    public double longestLitH() {
        return lightings().stream().mapToDouble(Lighting::forH).max().orElse(0);
    }

    /**
     * Heat that the wood burnt in an hour holds, by its net heating value ({@link Wood#netJPerKg}).
     *
     * @return kW
     * @throws loftcoil.engine.fault.RefusedException where the wood is not known or its moisture is outside its range
     */
    public double fuelKW() {
        return WoodTable.require("fire.wood", wood).netJPerKg(moisturePct) * burnKgPerH / J_PER_KWH;
    }
}

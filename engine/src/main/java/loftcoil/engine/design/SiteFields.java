package loftcoil.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The fields of {@link Site}. */
final class SiteFields {

    private static final Field<Monthly, List<Double>> SUN = new Field<>(
            "globalKWhPerM2Day",
            "Sun on the level, by month",
            "The mean daily sum of each month, from a climate table of the nearest place.",
            Leaf.twelve(0, 12, "kWh/m² a day"),
            Monthly::globalKWhPerM2Day);
    private static final Field<Monthly, List<Double>> AIR = new Field<>(
            "meanAirC",
            "Air temperature, by month",
            "The mean of each month, day and night, from the same table.",
            Leaf.twelve(-50, 45, "°C"),
            Monthly::meanAirC);
    private static final Table<Monthly> MONTHLY_TABLE =
            new Table<>(List.of(SUN, AIR), of -> new Monthly(of.of(SUN), of.of(AIR)));

    private static final Field<Site, Double> LATITUDE = new Field<>(
            "latitudeDeg",
            "Latitude",
            "North of the equator positive, south negative.",
            Leaf.number(-90, 90, FieldUnit.DEGREES),
            Site::latitudeDeg);
    private static final Field<Site, Double> LONGITUDE = new Field<>(
            "longitudeDeg",
            "Longitude",
            "East of Greenwich positive, west negative.",
            Leaf.number(-180, 180, FieldUnit.DEGREES),
            Site::longitudeDeg);
    private static final Field<Site, Double> ALTITUDE = new Field<>(
            "altitudeM",
            "Altitude of the site",
            "Height above the sea; the higher, the sooner water boils.",
            Leaf.number(-400, 5000, FieldUnit.M),
            Site::altitudeM);
    private static final Field<Site, Double> UTC_OFFSET = new Field<>(
            "utcOffsetH",
            "Clock ahead of UTC",
            "Standard time, without summer time; behind UTC negative.",
            Leaf.number(-12, 14, FieldUnit.H),
            Site::utcOffsetH);
    private static final Field<Site, Monthly> MONTHLY = new Field<>(
            "monthly", "Climate by month", "Twelve values each, January first.", MONTHLY_TABLE, Site::monthly);
    private static final Field<Site, Double> COLD_SUPPLY = new Field<>(
            "coldSupplyC",
            "Temperature of the cold water",
            "As it comes in winter, measured after it has run for a while.",
            Leaf.number(0, 35, FieldUnit.C),
            Site::coldSupplyC);
    private static final Field<Site, Double> ROOM = new Field<>(
            "roomC",
            "Temperature of the rooms",
            "As they are while the fire burns.",
            Leaf.number(0, 40, FieldUnit.C),
            Site::roomC);
    private static final Field<Site, OptionalDouble> COLDEST_NIGHT = new Field<>(
            "coldestNightC",
            "Coldest night",
            "Air outside on the coldest night that happens in some ten years; ask the neighbours or a weather station.",
            Said.number(
                    Leaf.number(-70, 30, FieldUnit.C),
                    "taken 16 °C colder than the coldest month's mean; where that decides over frost, asked"),
            Site::coldestNightC);

    private static final Field<Site, OptionalDouble> HARDNESS = new Field<>(
            "hardnessMgPerL",
            "Hardness of the water",
            "As CaCO3, from the supplier or a test strip; a German degree is 17.8, a French one 10, an English one 14.3, a US grain"
                    + " 17.1. Rain has next to none.",
            Said.number(Leaf.number(0, 1000, "mg/L"), "asked; no lime is reckoned"),
            Site::hardnessMgPerL);

    private static final Field<Site, Optional<Roof>> ROOF = new Field<>(
            "roof",
            "Shape of the roof",
            "As you see it from where the heater stands on your left and the tank on your right. Nothing but the drawing follows it.",
            Said.of(Leaf.code("roof", Roof.class, Roof.GABLE), "drawn as a gable"),
            Site::roof);

    static final Table<Site> TABLE = new Table<>(
            List.of(
                    LATITUDE,
                    LONGITUDE,
                    ALTITUDE,
                    UTC_OFFSET,
                    MONTHLY,
                    COLD_SUPPLY,
                    ROOM,
                    COLDEST_NIGHT,
                    HARDNESS,
                    ROOF),
            of -> new Site(
                    of.of(LATITUDE),
                    of.of(LONGITUDE),
                    of.of(ALTITUDE),
                    of.of(UTC_OFFSET),
                    of.of(MONTHLY),
                    of.of(COLD_SUPPLY),
                    of.of(ROOM),
                    of.of(COLDEST_NIGHT),
                    of.of(HARDNESS),
                    of.of(ROOF)));

    private SiteFields() {}
}

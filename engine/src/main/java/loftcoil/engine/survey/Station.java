package loftcoil.engine.survey;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import loftcoil.engine.design.Coded;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignFields;
import loftcoil.engine.design.Grounds;
import loftcoil.engine.pipe.FittingTable;
import loftcoil.engine.words.MeasuredText;

/** A stop on the way round a house with tape and paper, in the order in which one walks. */
public enum Station implements Coded {
    /** Outside: where the house stands. */
    PLACE(
            "place",
            "name",
            "site.latitudeDeg",
            "site.longitudeDeg",
            "site.utcOffsetH",
            "site.altitudeM",
            "site.coldestNightC",
            "site.roof"),
    /** Sun and air over the year. */
    CLIMATE("climate", "site.monthly.globalKWhPerM2Day", "site.monthly.meanAirC"),
    /** Who lives there and draws what. */
    PEOPLE("people", "safety.childrenOrFrail", "safety.absence.months", "safety.absence.drained"),
    /** The heater and its fire. */
    HEATER(
            "heater",
            "site.roomC",
            "fire.wood",
            "fire.moisturePct",
            "fire.burnKgPerH",
            "fire.litFromH",
            "fire.litForH",
            "fire.litAgainFromH",
            "fire.litAgainForH",
            "fire.months",
            "fire.fireboxM2",
            "safety.flue.flueToCombustibleMm",
            "safety.flue.heaterToCombustibleMm",
            "safety.flue.topAboveRoofM",
            "safety.flue.heightM",
            "safety.flue.diameterMm",
            "safety.flue.insulated",
            "safety.fireRoom.carbonMonoxideAlarm",
            "safety.fireRoom.airOpeningCm2",
            "safety.fireRoom.extractFan"),
    /** The coil in the fire. */
    COIL(
            "coil",
            "coil.tube",
            "coil.lengthM",
            "coil.inletM",
            "coil.outletM",
            "coil.windingMm",
            "coil.fittings.elbow90",
            "coil.fittings.bend90",
            "coil.heatKW"),
    /** The pipe from the coil up to the tank. */
    HOT_RUN("hot-run"),
    /** The tank and what carries it. */
    TANK(
            "tank",
            "tank.shape",
            "tank.volumeL",
            "tank.heightM",
            "tank.lengthM",
            "tank.baseM",
            "tank.waterlineM",
            "tank.coldPortM",
            "tank.returnPortM",
            "tank.drawPortM",
            "tank.emptyMassKg",
            "tank.lagging.material",
            "tank.lagging.thicknessMm",
            "tank.coat",
            "tank.aroundC",
            "safety.vent.kind",
            "safety.vent.tube",
            "safety.vent.aboveWaterlineM",
            "safety.vent.valve",
            "safety.structure.loadLimitKg",
            "safety.structure.bearers"),
    /** The pipe from the tank back to the coil. */
    COLD_RUN("cold-run"),
    /** The panes before the tank. */
    PANES(
            "panes",
            "window.panes",
            "window.areaM2",
            "window.tiltDeg",
            "window.azimuthDeg",
            "window.gapMm",
            "window.absorptance",
            "window.reflectorShare",
            "window.coating",
            "window.toughened"),
    /** The taps. */
    TAPS("taps"),
    /** Where the water is from and what it touches. */
    WATER(
            "water",
            "site.coldSupplyC",
            "site.hardnessMgPerL",
            "safety.coldFeed.kind",
            "safety.coldFeed.drinkingWater",
            "safety.coldFeed.boreMm",
            "safety.coldFeed.airGapMm",
            "safety.coldFeed.valve",
            "safety.coldFeed.plasticCistern",
            "safety.coldFeed.overflowBoreMm",
            "tank.refillAtH",
            "safety.materials.tank",
            "safety.materials.inLoop",
            "safety.signedNotForDrinking"),
    /** What a tank does to a house on wheels. */
    WHEELS(
            "wheels",
            "safety.structure.wheels.massKg",
            "safety.structure.wheels.centreHeightM",
            "safety.structure.wheels.centreAheadM",
            "safety.structure.wheels.hitchAheadM",
            "safety.structure.wheels.trackM",
            "safety.structure.wheels.axleLimitKg",
            "safety.structure.wheels.floorAboveRoadM",
            "safety.structure.wheels.tankAheadM",
            "safety.structure.wheels.tankAsideM");

    private static final String FITTINGS = ".fittings.";

    private final String code;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of and never changed
    private final List<String> paths;

    Station(String code, String... paths) {
        this.code = code;
        this.paths = List.of(paths);
    }

    @Override
    public String code() {
        return code;
    }

    @Override
    public String label() {
        return SurveyWords.say("station." + code).metric();
    }

    /** What to take there and how, in a few sentences. */
    public MeasuredText help() {
        return SurveyWords.say("station." + code + ".help");
    }

    /** The stop at which the value at a path of a design is told; empty where no stop asks for it. */
    public static Optional<Station> of(String path) {
        String part = path.replaceFirst("[.\\[].*", "");
        return switch (part) {
            case "hotLegs" -> Optional.of(HOT_RUN);
            case "coldLegs" -> Optional.of(COLD_RUN);
            case "taps", "trunk" -> Optional.of(TAPS);
            case "use" -> Optional.of(PEOPLE);
            default ->
                Stream.of(values())
                        .filter(station -> station.paths.contains(path))
                        .findFirst()
                        .or(() -> beside(path));
        };
    }

    /** A field that is not asked for itself stands beside those of the nearest part round it. */
    private static Optional<Station> beside(String path) {
        String part = path;
        while (part.contains(".")) {
            part = part.substring(0, part.lastIndexOf('.'));
            String start = part + ".";
            Optional<Station> near = Stream.of(values())
                    .filter(station -> station.paths.stream().anyMatch(own -> own.startsWith(start)))
                    .findFirst();
            if (near.isPresent()) {
                return part.equals("safety") ? Optional.of(WATER) : near;
            }
        }
        return Optional.empty();
    }

    /** How many values of a design are of each origin at each stop, in walking order; a stop at which nothing stands yet is left out. */
    public static Map<Station, Grounds> grounds(Design design) {
        Map<Station, List<DesignFields.Value>> values = new EnumMap<>(Station.class);
        DesignFields.of(design).forEach(value -> of(value.path())
                .ifPresent(station -> values.computeIfAbsent(station, any -> new ArrayList<>())
                        .add(value)));
        Map<Station, Grounds> grounds = new EnumMap<>(Station.class);
        values.forEach((station, own) -> grounds.put(station, Grounds.of(own)));
        return grounds;
    }

    /** Where the borrowed values of a design could be measured: how many at each stop; stops without any are left out. */
    public static Map<Station, Integer> borrowed(Design design) {
        Map<Station, Integer> borrowed = new EnumMap<>(Station.class);
        grounds(design).forEach((station, own) -> {
            if (!own.own()) {
                borrowed.put(station, own.borrowed());
            }
        });
        return borrowed;
    }

    /** What is asked for at a path, of fittings with their kind. */
    public static String asked(String path) {
        String label = DesignFields.at(path).orElseThrow().label();
        int key = path.indexOf(FITTINGS);
        return key < 0
                ? label
                : label + ": "
                        + FittingTable.require(path, path.substring(key + FITTINGS.length()))
                                .words();
    }

    /** Paths of the fields of a design that are asked for there, in order; none where pipes or taps are walked instead. */
    public List<String> paths() {
        return paths;
    }
}

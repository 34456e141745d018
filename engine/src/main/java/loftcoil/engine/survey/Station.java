package loftcoil.engine.survey;

import java.util.List;
import loftcoil.engine.design.Coded;
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
            "site.coldestNightC"),
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
            "fire.months",
            "fire.fireboxM2",
            "safety.flue.flueToCombustibleMm",
            "safety.flue.heaterToCombustibleMm",
            "safety.flue.topAboveRoofM",
            "safety.fireRoom.carbonMonoxideAlarm",
            "safety.fireRoom.airOpeningCm2",
            "safety.fireRoom.extractFan"),
    /** The coil in the fire. */
    COIL("coil", "coil.tube", "coil.lengthM", "coil.inletM", "coil.outletM", "coil.windingMm", "coil.heatKW"),
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
            "safety.coldFeed.overflowBoreMm",
            "safety.materials.tank",
            "safety.signedNotForDrinking");

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

    /** Paths of the fields of a design that are asked for there, in order; none where pipes or taps are walked instead. */
    public List<String> paths() {
        return paths;
    }
}

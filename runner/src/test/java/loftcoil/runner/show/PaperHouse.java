package loftcoil.runner.show;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A house as it stands on paper after a walk with the tape; invented. A {@code ~} before an answer says that it was guessed.
 *
 * @param answers by the path of the question
 * @param skies winter, spring, summer, autumn, warmest and coldest month, for who has no table; empty for who has one
 * @param hot pieces of the hot pipe
 * @param cold pieces of the cold pipe
 * @param trunk the pipe that taps share; empty for none
 * @param taps the taps
 * @param habits by name
 */
public record PaperHouse(
        Map<String, String> answers,
        Map<String, String> skies,
        List<Map<String, String>> hot,
        List<Map<String, String>> cold,
        Map<String, String> trunk,
        List<Map<String, String>> taps,
        Map<String, String> habits) {

    /** Metric, north: a tank in the loft, two fires a day, taps on a shared pipe. */
    public static final PaperHouse MILL = new PaperHouse(
            told(
                    "name=Mill cottage",
                    "site.latitudeDeg=54.3",
                    "site.longitudeDeg=-2.4",
                    "site.utcOffsetH=0",
                    "site.altitudeM=260 m",
                    "site.coldestNightC=~ -12",
                    "site.monthly.globalKWhPerM2Day=0.5, 1.1, 2.2, 3.6, 4.7, 4.9, 4.7, 3.9, 2.7, 1.5, 0.7, 0.4",
                    "site.monthly.meanAirC=3.4 3.6 5.3 7.4 10.4 13.1 15.0 14.8 12.6 9.5 6.0 4.0",
                    "safety.childrenOrFrail=no",
                    "safety.absence.months=none",
                    "safety.absence.drained=no",
                    "site.roomC=19",
                    "fire.wood=hardwood",
                    "fire.moisturePct=18",
                    "fire.burnKgPerH=~ 2.5 kg/h",
                    "fire.litFromH=17",
                    "fire.litForH=4",
                    "fire.litAgainFromH=6",
                    "fire.litAgainForH=1.5",
                    "fire.months=October to April",
                    "safety.flue.flueToCombustibleMm=500",
                    "safety.flue.heaterToCombustibleMm=1000",
                    "safety.flue.topAboveRoofM=1.2",
                    "safety.fireRoom.carbonMonoxideAlarm=yes",
                    "safety.fireRoom.airOpeningCm2=120",
                    "safety.fireRoom.extractFan=no",
                    "coil.tube=22 mm x 1.2",
                    "coil.lengthM=~ 1.2 m",
                    "coil.inletM=400 mm",
                    "coil.outletM=800 mm",
                    "coil.fittings.elbow90=0",
                    "coil.fittings.bend90=4",
                    "coil.heatKW=~ 1.1",
                    "tank.shape=upright cylinder",
                    "tank.volumeL=150",
                    "tank.heightM=1.0",
                    "tank.baseM=2.4",
                    "tank.waterlineM=94 cm",
                    "tank.coldPortM=0.06",
                    "tank.returnPortM=0.5",
                    "tank.drawPortM=0.85",
                    "tank.emptyMassKg=30",
                    "tank.lagging.material=stone wool",
                    "tank.lagging.thicknessMm=100",
                    "tank.aroundC=12",
                    "safety.vent.kind=open pipe",
                    "safety.vent.tube=22 mm x 1",
                    "safety.vent.aboveWaterlineM=0.4",
                    "safety.vent.valve=no",
                    "safety.structure.loadLimitKg=400",
                    "safety.structure.bearers=3",
                    "window.panes=2",
                    "window.areaM2=0.4",
                    "window.tiltDeg=60",
                    "window.azimuthDeg=170",
                    "window.gapMm=16",
                    "window.absorptance=~ 0.9",
                    "window.reflectorShare=~ 0.3",
                    "window.toughened=2",
                    "site.coldSupplyC=9",
                    "site.hardnessMgPerL=60",
                    "safety.coldFeed.kind=feed cistern",
                    "safety.coldFeed.drinkingWater=no",
                    "safety.coldFeed.boreMm=13",
                    "safety.coldFeed.airGapMm=40",
                    "safety.coldFeed.valve=no",
                    "safety.coldFeed.plasticCistern=no",
                    "safety.coldFeed.overflowBoreMm=26",
                    "safety.materials.tank=stainless steel",
                    "safety.materials.inLoop=brass",
                    "safety.signedNotForDrinking=yes"),
            Map.of(),
            List.of(
                    piece("riser", "up", "1.80 m", "", "", "1", "0", "28 mm x 1", "stone wool", "40 mm", "room"),
                    piece("under the roof", "along", "~ 1.50 m", "200 mm/m", "right", "0", "1", "", "", "", "loft")),
            List.of(
                    piece("drop", "down", "1.90 m", "", "", "1", "0", "28 mm x 1", "stone wool", "40 mm", "room"),
                    piece("to the heater", "along", "~ 1.60 m", "-1 in 10", "back", "1", "0", "", "", "", "")),
            Map.of("length", "2.5 m", "tube", "28 mm x 1", "elbows90", "2"),
            List.of(
                    tap("sink", "1.1 m", "15x1", "1.2 m", "2", "45 °C", "shared pipe"),
                    tap("shower", "1.4 m", "22 mm x 1", "3 m", "3", "42 °C", "shared pipe")),
            habits("3", "5", "0.5", "2", "0", "sink", "shower", "sink"));

    /** US units, north: in feet and inches, the climate remembered. */
    public static final PaperHouse CABIN = with(
            MILL,
            told(
                    "name=Prairie cabin",
                    "site.roof=single pitch up to the tank",
                    "site.latitudeDeg=40.1",
                    "site.longitudeDeg=-105.3",
                    "site.utcOffsetH=-7",
                    "site.altitudeM=6200 ft",
                    "site.coldestNightC=-20 °F",
                    "site.roomC=68 °F",
                    "fire.burnKgPerH=5 lb/h",
                    "coil.tube=B88 L 3/4",
                    "coil.lengthM=4 ft",
                    "coil.inletM=1 ft 4",
                    "coil.outletM=2 ft 8",
                    "tank.volumeL=40 gal",
                    "tank.heightM=3 ft",
                    "tank.baseM=7 ft 4",
                    "tank.waterlineM=2 ft 9",
                    "tank.coldPortM=2 in",
                    "tank.returnPortM=1 ft 6",
                    "tank.drawPortM=2 ft 6",
                    "tank.emptyMassKg=66 lb",
                    "tank.lagging.thicknessMm=4 in",
                    "tank.aroundC=55 °F",
                    "safety.vent.tube=B88 L 3/4",
                    "safety.vent.aboveWaterlineM=1 ft 4",
                    "safety.structure.loadLimitKg=900 lb",
                    "window.areaM2=4 ft²",
                    "window.gapMm=5/8 in",
                    "site.coldSupplyC=48 °F",
                    "safety.coldFeed.boreMm=1/2 in",
                    "safety.coldFeed.airGapMm=1 5/8 in",
                    "safety.coldFeed.overflowBoreMm=1 in",
                    "safety.flue.flueToCombustibleMm=1 ft 8",
                    "safety.flue.heaterToCombustibleMm=3 ft 4",
                    "safety.flue.topAboveRoofM=4 ft"),
            Map.of(
                    "winter", "clear", "spring", "mixed", "summer", "clear", "autumn", "clear", "warmest", "72 °F",
                    "coldest", "31 °F"),
            List.of(
                    piece("riser", "up", "5 ft 8", "", "", "1", "0", "B88 L 1", "stone wool", "1 1/2 in", "room"),
                    piece("under the roof", "along", "~ 5 ft", "1 in 10", "N", "0", "1", "", "", "", "loft")),
            List.of(
                    piece("drop", "down", "6 ft", "", "", "1", "0", "B88 L 1", "stone wool", "1 1/2 in", "room"),
                    piece("to the heater", "along", "~ 5 ft", "-1 in 30", "S", "1", "0", "", "", "", "")));

    /** South: a winter in July, a pipe outdoors, a lying tank, left full in the cold months. */
    public static final PaperHouse HUT = with(
            MILL,
            told(
                    "name=Shearers hut",
                    "site.latitudeDeg=-44.2",
                    "site.longitudeDeg=170.1",
                    "site.utcOffsetH=12",
                    "site.altitudeM=480",
                    "site.coldestNightC=-14",
                    "safety.absence.months=July and August",
                    "fire.months=April to October",
                    "window.azimuthDeg=10",
                    "tank.shape=lying cylinder",
                    "tank.volumeL=180",
                    "tank.heightM=0.5",
                    "tank.waterlineM=0.46",
                    "tank.returnPortM=0.3",
                    "tank.drawPortM=0.4"),
            Map.of(
                    "winter", "mixed", "spring", "mixed", "summer", "clear", "autumn", "mixed", "warmest", "16",
                    "coldest", "2"),
            List.of(
                    piece("riser", "up", "1.60 m", "", "", "1", "0", "28 mm x 1", "stone wool", "40 mm", "flue"),
                    piece("under the roof", "along", "~ 1.50 m", "1 in 5", "right", "0", "1", "", "", "", "loft")),
            List.of(
                    piece("drop", "down", "1.90 m", "", "", "1", "0", "28 mm x 1", "stone wool", "40 mm", "room"),
                    piece(
                            "behind the wall",
                            "along",
                            "~ 1.60 m",
                            "-1 in 10",
                            "back",
                            "1",
                            "0",
                            "",
                            "",
                            "",
                            "outdoors")));

    private static PaperHouse with(
            PaperHouse from,
            Map<String, String> other,
            Map<String, String> skies,
            List<Map<String, String>> hot,
            List<Map<String, String>> cold) {
        Map<String, String> answers = new LinkedHashMap<>(from.answers());
        answers.keySet().removeIf(path -> path.startsWith("site.monthly"));
        answers.putAll(other);
        return new PaperHouse(answers, skies, hot, cold, from.trunk(), from.taps(), from.habits());
    }

    private static Map<String, String> told(String... lines) {
        Map<String, String> told = new LinkedHashMap<>();
        for (String line : lines) {
            String[] parts = line.split("=", 2);
            told.put(parts[0], parts[1]);
        }
        return told;
    }

    private static Map<String, String> row(String names, String... texts) {
        Map<String, String> row = new LinkedHashMap<>();
        String[] columns = names.split(" ", -1);
        for (int i = 0; i < columns.length; i++) {
            row.put(columns[i], texts[i]);
        }
        return row;
    }

    private static Map<String, String> piece(String... texts) {
        return row("name way length slope heading elbows90 elbows45 tube lagging laggingThickness around", texts);
    }

    private static Map<String, String> tap(String... texts) {
        return row("name level tube length elbows90 mixer from", texts);
    }

    private static Map<String, String> habits(String... texts) {
        return row("people washesAWeek bathsAWeek dishesADay loadsAWeek sink tub machine", texts);
    }
}

package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Origin;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Units;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.session.SharedSession;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

/** A house measured by typing, over a learner's folder. */
class SurveyDeskTest {

    @TempDir
    private Path folder;

    private CourseApp open() {
        return CourseApp.open(TryCourse.read(), ProgressFile.open(folder), SharedSession::lent, 7);
    }

    private static final List<Map<String, String>> HOT = List.of(
            Map.of(
                    "way",
                    "up",
                    "length",
                    "4 ft 9",
                    "elbows90",
                    "1",
                    "around",
                    "flue",
                    "lagging",
                    "stone wool",
                    "laggingThickness",
                    "40 mm"),
            Map.of("way", "along", "length", "1.4 m", "slope", "1 in 4", "measured", "guessed", "around", "room"));

    private static SurveyView.Run run(SurveyView.House house, String code) {
        return house.stations().stream()
                .map(SurveyView.Station::run)
                .filter(run -> run.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsToldIsKeptAtOnceAndThereAgainAfterwards() {
        try (CourseApp bench = open()) {
            bench.survey().tell(Map.of("site.altitudeM", "1000 ft"), false);
            bench.survey().walk("hot", HOT);
        }
        try (CourseApp bench = open()) {
            SurveyView.House house = bench.survey().house();
            SurveyView.Question altitude = house.stations().get(0).questions().stream()
                    .filter(question -> question.path().equals("site.altitudeM"))
                    .findFirst()
                    .orElseThrow();
            assertEquals("304.8", altitude.now());
            assertEquals("yours", altitude.origin());
            assertEquals(2, run(house, "hot").pieces().size());
        }
    }

    @Test
    void aRunIsClosedOnItsGuessedPieceAndTheDesignTakesIt() {
        try (CourseApp bench = open()) {
            SurveyView.House house = bench.survey().walk("hot", HOT);

            assertTrue(run(house, "hot").closes(), run(house, "hot").words());
            assertEquals(1, run(house, "hot").moved().size(), "one was guessed");
            assertTrue(
                    run(house, "hot").moved().get(0).startsWith("“hot pipe 2” ends "),
                    run(house, "hot").moved().toString());
            RebuildView.Taken taken = bench.survey().take();
            assertTrue(taken.kept().startsWith("design-before-"));
            Design design = DesignJson.read(bench.rebuild().own().json());
            assertEquals(2, design.hotLegs().size());
            assertEquals(60, design.hotLegs().get(0).aroundC());
            assertEquals(40, design.hotLegs().get(0).lagging().orElseThrow().thicknessMm());
            assertEquals(19, design.hotLegs().get(1).aroundC());
            assertEquals(Origin.YOURS, design.origin("hotLegs[0].lengthM"));
            assertEquals(Origin.ASSUMED, design.origin("hotLegs[1].riseM"));
            assertEquals(Origin.BORROWED, design.origin("tank.baseM"));
        }
    }

    @Test
    void pipesThatTurnByHandLeadBackOrTheirPlanSaysWhereTheyEnd() {
        try (CourseApp bench = open()) {
            bench.survey()
                    .walk(
                            "hot",
                            List.of(
                                    Map.of("way", "up", "length", "1.44 m"),
                                    Map.of("way", "along", "length", "1.4 m", "slope", "1 in 4", "heading", "left"),
                                    Map.of("way", "along", "length", "2 m", "slope", "0", "heading", "right")));
            SurveyView.House house = bench.survey()
                    .walk(
                            "cold",
                            List.of(
                                    Map.of("way", "down", "length", "1.9 m"),
                                    Map.of("way", "along", "length", "2 m", "slope", "0", "heading", "back"),
                                    Map.of("way", "along", "length", "0.6 m", "slope", "0", "heading", "left")));

            assertEquals("270", run(house, "hot").pieces().get(1).heading());
            assertEquals("0", run(house, "hot").pieces().get(2).heading());
            assertEquals("180", run(house, "cold").pieces().get(1).heading(), "the cold pipe goes on from the hot one");
            assertEquals("90", run(house, "cold").pieces().get(2).heading());
            assertEquals(
                    "The plan does not close: seen from above the cold pipe ends 76 cm short of the coil's inlet."
                            + " Look at the lengths along and which way each turns.",
                    house.standing().plan());
        }
    }

    @Test
    void aPipeOutdoorsStaysThereAndHasTheAirOfThePlace() {
        try (CourseApp bench = open()) {
            SurveyView.House house = bench.survey()
                    .walk(
                            "cold",
                            List.of(
                                    Map.of("way", "down", "length", "1.7 m", "around", "room"),
                                    Map.of(
                                            "way",
                                            "along",
                                            "length",
                                            "1.2 m",
                                            "slope",
                                            "-1 in 6",
                                            "around",
                                            "outdoors")));

            assertEquals("outdoors", run(house, "cold").pieces().get(1).around());
            assertEquals("19 °C", run(house, "cold").pieces().get(0).around());
            bench.survey().take();
            Design design = DesignJson.read(bench.rebuild().own().json());
            assertTrue(design.coldLegs().get(1).isOutdoors());
            assertFalse(design.coldLegs().get(0).isOutdoors());
        }
        try (CourseApp bench = open()) {
            assertEquals(
                    "outdoors",
                    run(bench.survey().house(), "cold").pieces().get(1).around(),
                    "kept over a restart");
        }
    }

    @Test
    void tapsShareAPipeWhereItIsTold() {
        Map<String, String> sink =
                Map.of("name", "sink", "level", "1 m", "tube", "15x1", "length", "1 m", "from", "shared pipe");
        Map<String, String> bath =
                Map.of("name", "bath", "level", "0.6 m", "tube", "22 mm x 1", "length", "4 m", "from", "tank");
        try (CourseApp bench = open()) {
            SurveyView.House house = bench.survey()
                    .taps(Map.of("tube", "28 mm × 1", "length", "9 ft 4", "elbows90", "2"), List.of(sink, bath));
            SurveyView.Station taps = house.stations().stream()
                    .filter(station -> station.code().equals("taps"))
                    .findFirst()
                    .orElseThrow();

            assertEquals("2.8448 m", taps.trunk().length());
            assertEquals(
                    List.of("shared pipe", "tank"),
                    taps.taps().stream().map(SurveyView.TapLine::from).toList());
            bench.survey().take();
            Design design = DesignJson.read(bench.rebuild().own().json());
            assertEquals(Map.of("elbow90", 2), design.trunk().orElseThrow().fittings());
            assertEquals(
                    List.of(true, false),
                    design.taps().stream().map(design::onTrunk).toList());

            bench.survey().taps(Map.of(), List.of(bath));
            bench.survey().take();
            assertTrue(DesignJson.read(bench.rebuild().own().json()).trunk().isEmpty());
            RefusedException refused = assertThrows(RefusedException.class, () -> bench.survey()
                    .taps(Map.of("length", "3 m", "tube", "a hose"), List.of(sink)));
            assertEquals("trunk.tube", refused.faults().get(0).path());
        }
    }

    @Test
    void aHouseSaysWhatIsNextAndWhyItIsASketch() {
        try (CourseApp bench = open()) {
            SurveyView.House house = bench.survey().house();
            assertTrue(house.standing()
                    .words()
                    .endsWith("It is a sketch, not for cutting: all fits together, but on another's values."));
            assertTrue(
                    house.standing().next().startsWith("Next: 1, Outside: the place ("),
                    house.standing().next());

            SurveyView.House missing = bench.survey().walk("hot", List.of(Map.of("way", "up", "length", "1.4 m")));
            SurveyView.Station hot = missing.stations().get(5);
            assertFalse(hot.done());
            assertEquals("does not end where it has to", hot.standing());
            assertEquals(
                    "The hot pipe ends 40 cm below the return port.",
                    missing.standing().open().get(0));
        }
    }

    @Test
    void aRunThatMissesIsToldWithItsMendsAndKeepsTheHouseASketch() {
        try (CourseApp bench = open()) {
            SurveyView.House house = bench.survey().walk("hot", List.of(Map.of("way", "up", "length", "1.4 m")));

            SurveyView.Run hot = run(house, "hot");
            assertFalse(hot.closes());
            assertEquals("The hot pipe ends 40 cm below the return port.", hot.words());
            assertTrue(hot.mends().size() >= 4, hot.mends().toString());
            assertTrue(house.standing().sketch());
            assertTrue(house.standing().words().contains("not for cutting"));
            RefusedException refused =
                    assertThrows(RefusedException.class, () -> bench.survey().take());
            assertEquals("hotLegs", refused.faults().get(0).path());
        }
    }

    @Test
    void aRefusedAnswerTakesNothing() {
        try (CourseApp bench = open()) {
            SurveyView.House before = bench.survey().house();

            RefusedException refused = assertThrows(RefusedException.class, () -> bench.survey()
                    .tell(Map.of("site.altitudeM", "310 m", "tank.volumeL", "3 kg"), false));

            assertEquals(
                    List.of("tank.volumeL"),
                    refused.faults().stream().map(Fault::path).toList());
            assertEquals(before, bench.survey().house());
        }
    }

    @Test
    void everyFaultOfAPieceIsTold() {
        try (CourseApp bench = open()) {
            RefusedException refused = assertThrows(RefusedException.class, () -> bench.survey()
                    .walk(
                            "cold",
                            List.of(Map.of(
                                    "way",
                                    "sideways",
                                    "length",
                                    "2 kg",
                                    "elbows90",
                                    "1.5",
                                    "tube",
                                    "hose",
                                    "around",
                                    "the barn"))));

            assertEquals(
                    List.of(
                            "coldLegs[0].way",
                            "coldLegs[0].lengthM",
                            "coldLegs[0].elbows90",
                            "coldLegs[0].tube",
                            "coldLegs[0].aroundC"),
                    refused.faults().stream().map(Fault::path).toList());
        }
    }

    @Test
    void tapsAndHabitsBecomeDraws() {
        try (CourseApp bench = open()) {
            bench.survey()
                    .taps(
                            Map.of(),
                            List.of(
                                    Map.of(
                                            "name",
                                            "sink",
                                            "level",
                                            "3 ft 3",
                                            "tube",
                                            "22 mm x 1",
                                            "length",
                                            "4 m",
                                            "mixer",
                                            "45 °C"),
                                    Map.of(
                                            "name", "tub", "level", "0.6", "tube", "22x1", "length", "5", "mixer",
                                            "none")));
            bench.survey()
                    .habits(Map.of(
                            "people",
                            "2",
                            "washesAWeek",
                            "7",
                            "bathsAWeek",
                            "0",
                            "dishesADay",
                            "2",
                            "loadsAWeek",
                            "0",
                            "sink",
                            "sink",
                            "tub",
                            "tub",
                            "machine",
                            "tub"));

            bench.survey().take();

            Design design = DesignJson.read(bench.rebuild().own().json());
            assertEquals(
                    List.of("sink", "tub"),
                    design.taps().stream().map(tap -> tap.name()).toList());
            assertEquals(0.9906, design.taps().get(0).levelM(), 1e-9);
            assertEquals(45, design.taps().get(0).mixerC().orElseThrow());
            assertEquals(
                    52, design.use().stream().mapToDouble(use -> use.litres()).sum(), 1e-9);
        }
    }

    @Test
    void habitsAtATapThatIsNotThereAreRefused() {
        try (CourseApp bench = open()) {
            RefusedException refused = assertThrows(RefusedException.class, () -> bench.survey()
                    .habits(Map.of("people", "a few", "washesAWeek", "7", "sink", "pump")));

            List<String> paths = refused.faults().stream().map(Fault::path).toList();
            assertTrue(paths.containsAll(List.of("people", "sink", "tub", "machine")), paths.toString());
        }
    }

    @Test
    void aSpoiltSurveyIsSetAsideAndToldOf() throws Exception {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("survey.json"), "{\"house\": 3}", StandardCharsets.UTF_8);

        try (CourseApp bench = open()) {
            assertEquals("Orchard bothy", bench.survey().house().name());
            assertTrue(bench.course().notices().stream().anyMatch(notice -> notice.contains("survey.json")));
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertTrue(files.anyMatch(file -> file.getFileName().toString().startsWith("survey.damaged")));
        }
    }

    @Test
    void theSurveyGoesOnFromWhatWasDecidedInTheCourse() {
        try (CourseApp bench = open()) {
            String own = bench.rebuild().own().json();
            bench.rebuild().takeOver(own, Map.of("tank.baseM", "2.6"));

            SurveyView.House house = bench.survey().house();

            assertTrue(house.stations().stream()
                    .flatMap(station -> station.questions().stream())
                    .anyMatch(question -> question.path().equals("tank.baseM")
                            && question.now()
                                    .equals(Changes.current(
                                            DesignJson.read(
                                                    bench.rebuild().own().json()),
                                            "tank.baseM"))
                            && question.origin().equals("yours")));
        }
    }

    private static SurveyView.Question asked(SurveyView.House house, String path) {
        return house.stations().stream()
                .flatMap(station -> station.questions().stream())
                .filter(question -> question.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private static void decide(CourseApp bench, String change, String value) {
        bench.rebuild().takeOver(bench.rebuild().own().json(), Map.of(change, value));
    }

    private static Design own(CourseApp bench) {
        return DesignJson.read(bench.rebuild().own().json());
    }

    @Test
    void aHouseThatIsBegunFollowsWhatIsDecidedLater() {
        try (CourseApp bench = open()) {
            bench.survey().tell(Map.of("tank.volumeL", "110"), false);
            decide(bench, "tank.baseM", "2.6");
            decide(bench, "coil.lengthM", "1.2");

            SurveyView.House house = bench.survey().house();

            assertEquals("2.6", asked(house, "tank.baseM").now());
            assertEquals("yours", asked(house, "tank.baseM").origin());
            assertEquals("110", asked(house, "tank.volumeL").now(), "what was measured stays");
            assertEquals("not said", asked(house, "coil.heatKW").now(), "the example's heat went with the decision");
            assertTrue(asked(house, "coil.heatKW").otherwise().startsWith("Worked out from the fire"));
            assertEquals(List.of(), house.standing().open(), "the borrowed pipes were stretched with the tank");
            assertEquals(3, house.standing().yours());
            assertEquals(List.of(), house.standing().otherwise());
            assertTrue(
                    house.standing().ahead().startsWith("Your design counts 2 yours"),
                    house.standing().ahead());
            bench.survey().take();
            assertEquals("", bench.survey().house().standing().ahead(), "one house, one count");
        }
        try (CourseApp bench = open()) {
            assertEquals("2.6", asked(bench.survey().house(), "tank.baseM").now(), "kept over a restart");
            bench.designs().undo();
            bench.designs().undo();
            SurveyView.House back = bench.survey().house();
            assertEquals(
                    "borrowed", asked(back, "coil.lengthM").origin(), "what is undone in the design is undone here");
            assertEquals("2.6", asked(back, "tank.baseM").now());
        }
    }

    @Test
    void piecesThatWereWalkedAndTakenFollowADecision() {
        try (CourseApp bench = open()) {
            bench.survey().walk("hot", HOT);
            bench.survey().take();
            decide(bench, "tank.baseM", "2.5");
            decide(bench, "hotLegs.tube", "EN1057 35x1.2");

            SurveyView.House house = bench.survey().house();

            assertTrue(run(house, "hot").closes(), run(house, "hot").words());
            assertEquals(List.of(), run(house, "hot").moved());
            assertEquals(
                    List.of("EN1057 35x1.2", "EN1057 35x1.2"),
                    run(house, "hot").pieces().stream()
                            .map(SurveyView.Piece::tube)
                            .toList());
            assertEquals(List.of(), house.standing().otherwise());
            Design before = own(bench);
            bench.survey().take();
            for (int i = 0; i < 2; i++) {
                assertEquals(
                        before.hotLegs().get(i).riseM(),
                        own(bench).hotLegs().get(i).riseM(),
                        1e-9);
                assertEquals(
                        before.hotLegs().get(i).tube(),
                        own(bench).hotLegs().get(i).tube());
            }
        }
    }

    @Test
    void aPieceIsToldAsPeopleTellIt() {
        try (CourseApp bench = open()) {
            Map<String, String> piece = Map.of(
                    "name",
                    "ridge",
                    "way",
                    "along",
                    "length",
                    "1.5 m",
                    "slope",
                    "rises 30 cm",
                    "around",
                    "along the chimney");
            SurveyView.House house = bench.survey().walk("hot", List.of(piece));
            assertEquals("200 mm/m", run(house, "hot").pieces().get(0).slope());
            assertEquals("60 °C", run(house, "hot").pieces().get(0).around());

            Map<String, String> lost = new HashMap<>(piece);
            lost.put("around", "somewhere");
            lost.put("heading", "to the window");
            List<String> told = assertThrows(
                            RefusedException.class, () -> bench.survey().walk("hot", List.of(lost)))
                    .lines();
            assertTrue(
                    told.stream().anyMatch(line -> line.contains("room, loft, flue, outdoors, or a temperature")),
                    told.toString());
            assertTrue(told.stream().anyMatch(line -> line.contains("left, right, back, straight")), told.toString());
        }
    }

    @Test
    void whereFittingsAreToldItStandsWhatEachCounts() {
        try (CourseApp bench = open()) {
            for (String code : List.of("coil", "hot-run", "cold-run", "taps")) {
                assertTrue(counts(bench, code).get(0).startsWith("In EN1057 "), code);
            }
            assertEquals(List.of(), counts(bench, "tank"));
            List<String> loop = counts(bench, "hot-run");
            assertTrue(loop.contains("sharp 90 degree elbow: 0.9 m"), loop.toString());
            assertTrue(loop.contains("45 degree elbow: 0.5 m"), loop.toString());
            assertTrue(loop.get(loop.size() - 1).contains("none belongs there"), loop.toString());
            assertTrue(loop.stream().noneMatch(line -> line.contains("gate valve")), loop.toString());
            assertTrue(counts(bench, "taps").stream().anyMatch(line -> line.startsWith("gate valve fully open: ")));

            bench.choose(Units.US);
            List<String> us = counts(bench, "hot-run");
            assertTrue(us.contains("sharp 90 degree elbow: 3 ft"), us.toString());
            assertTrue(us.get(0).contains("US gal/min"), us.get(0));
        }
    }

    private static List<String> counts(CourseApp bench, String code) {
        return bench.survey().house().stations().stream()
                .filter(station -> station.code().equals(code))
                .findFirst()
                .orElseThrow()
                .counts();
    }

    @Test
    void whatWasMeasuredOtherwiseStaysAndTheDecisionItWouldReplaceIsTold() {
        try (CourseApp bench = open()) {
            bench.survey().tell(Map.of("site.altitudeM", "300"), false);
            assertFalse(
                    bench.answer("01-try", "tank", "2.5").words().contains("Your house"),
                    "nothing was told of the tank");
            bench.survey().tell(Map.of("tank.baseM", "2.4"), false);
            String words = bench.answer("01-try", "tank", "2.6").words();
            assertTrue(
                    words.contains("Your house was told otherwise and stays as it was told (")
                            && words.contains("2.60 m → 2.40 m"),
                    words);
            bench.answer("01-try", "tank", "2.4");
            decide(bench, "site.altitudeM", "900");

            SurveyView.House house = bench.survey().house();

            assertEquals("300", asked(house, "site.altitudeM").now());
            assertEquals(
                    1,
                    house.standing().otherwise().size(),
                    house.standing().otherwise().toString());
            assertTrue(
                    house.standing().otherwise().get(0).endsWith("900.00 m → 300.00 m"),
                    house.standing().otherwise().toString());
            assertFalse(house.standing().follows(), "it was measured here");
            assertTrue(bench.survey().take().words().contains("900.00 m → 300.00 m"));
            assertEquals(List.of(), bench.survey().house().standing().otherwise());
        }
    }

    @Test
    void aHouseBegunFromAnotherExampleTellsWhatWasDecidedAndTakesIt() {
        try (CourseApp bench = open()) {
            decide(bench, "tank.baseM", "2.6");
            SurveyView.House barn = bench.survey().afresh("upland-barn");

            assertEquals(0, barn.standing().yours());
            assertEquals(
                    1,
                    barn.standing().otherwise().size(),
                    barn.standing().otherwise().toString());
            assertTrue(barn.standing().follows());
            bench.survey().tell(Map.of("site.altitudeM", "300"), false);
            SurveyView.House house = bench.survey().follow();
            assertEquals("2.6", asked(house, "tank.baseM").now());
            assertEquals("300", asked(house, "site.altitudeM").now());
            assertEquals(2, house.standing().yours());
            assertEquals(List.of(), house.standing().open());
            assertFalse(house.standing().follows());
        }
    }

    @Test
    void sunAndAirAreEstimatedFromWhatIsRemembered() {
        try (CourseApp bench = open()) {
            SurveyView.House house = bench.survey()
                    .climateEstimate(Map.of(
                            "winter", "dull", "spring", "mixed", "summer", "clear", "autumn", "cloudy", "warmest",
                            "66 °F", "coldest", "0"));

            assertEquals(List.of(), house.standing().doubts());
            bench.survey().take();
            Design design = DesignJson.read(bench.rebuild().own().json());
            assertEquals(18.9, design.site().monthly().meanAirC().get(6), 0.05);
            assertEquals(Origin.ASSUMED, design.origin("site.monthly.meanAirC"));
        }
    }

    @Test
    void anEstimateThatCannotBeReadIsRefusedWhole() {
        try (CourseApp bench = open()) {
            RefusedException refused = assertThrows(RefusedException.class, () -> bench.survey()
                    .climateEstimate(Map.of("winter", "grey", "warmest", "hot")));

            List<String> paths = refused.faults().stream().map(Fault::path).toList();
            assertTrue(paths.containsAll(List.of("winter", "spring", "warmest", "coldest")), paths.toString());
        }
    }

    @Test
    void aWeatherFileBringsSunAndAirAndANorthernYearInTheSouthIsAskedAbout() {
        try (CourseApp bench = open()) {
            bench.survey().tell(Map.of("site.latitudeDeg", "-42"), false);
            String rows = "1;0\n2;1\n3;5\n4;9\n5;14\n6;17\n6,2;19\n5;18\n4;14\n3;9\n2;4\n1;1";

            SurveyView.House house = bench.survey().climateFile(rows);

            assertTrue(
                    house.standing().doubts().stream().anyMatch(doubt -> doubt.contains("other half of the earth")),
                    house.standing().doubts().toString());
            assertThrows(RefusedException.class, () -> bench.survey().climateFile("no weather"));
        }
    }

    @Test
    void aHouseCanBeBegunFromAnyExampleDwelling() {
        try (CourseApp bench = open()) {
            for (SurveyView.Dwelling dwelling : bench.survey().house().dwellings()) {
                SurveyView.House house = bench.survey().afresh(dwelling.code());

                assertEquals(List.of(), house.standing().open(), dwelling.code());
                assertEquals(List.of(), house.standing().doubts(), dwelling.code());
                assertEquals(0, house.standing().yours(), "a name is no value");
            }
            assertTrue(bench.survey().house().dwellings().size() >= 4);
            assertThrows(RefusedException.class, () -> bench.survey().afresh("castle"));
        }
    }

    /** What was taken and could not be read again would be set aside at the next start, and the whole survey with it. */
    @Test
    void nothingIsTakenThatCouldNotBeReadAgain() {
        try (CourseApp bench = open()) {
            SurveyApp survey = bench.survey();
            SurveyView.House before = survey.house();
            Map<String, String> piece = Map.of("way", "up", "length", "1 m");
            refused(() -> survey.walk("hot", List.of(and(piece, "around", "9000 °C"))), "hotLegs[0].aroundC");
            refused(() -> survey.walk("hot", List.of(and(piece, "lagging", "straw"))), "hotLegs[0].laggingMaterial");
            refused(() -> survey.walk("hot", List.of(and(piece, "elbows45", "51"))), "hotLegs[0].elbows45");
            refused(() -> survey.walk("cold", List.of(and(piece, "length", "200 m"))), "coldLegs[0].lengthM");
            refused(() -> survey.walk("hot", Collections.nCopies(21, piece)), "hotLegs");
            Map<String, String> tap =
                    Map.of("name", "sink", "level", "99 m", "tube", "22x1", "length", "4 m", "mixer", "90");
            refused(() -> survey.taps(Map.of(), List.of(tap)), "taps[0].levelM", "taps[0].mixerC");

            assertEquals(before, survey.house());
        }
    }

    @Test
    void whatIsNotKnownIsLeftOutAndNoneIsNought() {
        try (CourseApp bench = open()) {
            bench.survey().tell(Map.of("coil.heatKW", "1.8"), false);
            assertEquals("1.8", asked(bench.survey().house(), "coil.heatKW").now());
            for (String word : List.of("not said", "unknown", "I don't know")) {
                bench.survey().tell(Map.of("coil.heatKW", word, "coil.fittings.elbow90", "none"), false);
                assertEquals(
                        "not said", asked(bench.survey().house(), "coil.heatKW").now());
                assertEquals(
                        "0",
                        asked(bench.survey().house(), "coil.fittings.elbow90").now());
            }
            bench.survey().tell(Map.of("coil.fittings.elbow90", "two"), false);
            assertEquals(
                    "2", asked(bench.survey().house(), "coil.fittings.elbow90").now());
            SurveyView.House level = bench.survey()
                    .walk(
                            "hot",
                            List.of(Map.of("way", "along", "length", "1 m", "slope", "level", "elbows90", "none")));
            assertEquals("0 mm/m", run(level, "hot").pieces().get(0).slope());
        }
    }

    @Test
    void aRefusalNamesTheFieldAndTheUnitsOfWhoTypes() {
        try (CourseApp bench = open()) {
            bench.choose(loftcoil.engine.words.Units.US);
            SurveyApp survey = bench.survey();
            RefusedException burn =
                    assertThrows(RefusedException.class, () -> survey.tell(Map.of("fire.burnKgPerH", "3 m"), false));
            assertEquals(
                    List.of("Heater and fire, Wood burnt in an hour: “3 m”; allowed: a mass flow, such as in lb/h"
                            + " (the unit does not fit)"),
                    survey.told(burn));
            Map<String, String> tap =
                    Map.of("name", "sink", "level", "3 ft", "tube", "B88 L 1/2", "length", "9 ft", "mixer", "yes");
            RefusedException yes = assertThrows(RefusedException.class, () -> survey.taps(Map.of(), List.of(tap)));
            assertEquals(
                    List.of(
                            "The taps, line 1, Hottest water past the mixing valve: “yes”; allowed: the temperature it is"
                                    + " set to, such as 113 °F, or none where there is no valve"),
                    survey.told(yes));
            RefusedException way = assertThrows(
                    RefusedException.class,
                    () -> survey.walk("cold", List.of(Map.of("way", "sideways", "length", "1 m", "tube", "hose"))));
            assertTrue(
                    survey.told(way).stream()
                            .allMatch(line -> line.startsWith("The cold pipe, from tank to coil, line 1, ")),
                    survey.told(way).toString());
        }
    }

    /** 50 °F is 10 °C, 20 °F 6.67 °C below nought. */
    @Test
    void whoTypesWithoutUnitsMeansTheirOwn() {
        try (CourseApp bench = open()) {
            bench.choose(Units.US);
            SurveyApp survey = bench.survey();
            survey.tell(
                    Map.of(
                            "site.monthly.meanAirC", "50 50 50 50 50 50 50 50 50 50 50 20",
                            "site.coldestNightC", "minus four",
                            "tank.aroundC", "as the room"),
                    false);
            bench.choose(Units.METRIC);
            assertEquals(
                    "10, 10, 10, 10, 10, 10, 10, 10, 10, 10, 10, -6.66666667", now(bench, "site.monthly.meanAirC"));
            assertEquals("-20", now(bench, "site.coldestNightC"));
            assertEquals(now(bench, "site.roomC"), now(bench, "tank.aroundC"));

            bench.choose(Units.US);
            RefusedException far =
                    assertThrows(RefusedException.class, () -> survey.tell(Map.of("tank.waterlineM", "18 1/2"), false));
            assertEquals(
                    List.of("The tank, Waterline above the tank's base: 18 ft 6 in; allowed: 0 in to 16 ft 4-3/4 in"),
                    survey.told(far));
        }
    }

    private static String now(CourseApp bench, String path) {
        return bench.survey().house().stations().stream()
                .flatMap(station -> station.questions().stream())
                .filter(question -> question.path().equals(path))
                .findFirst()
                .orElseThrow()
                .now();
    }

    private static Map<String, String> and(Map<String, String> piece, String name, String text) {
        Map<String, String> more = new HashMap<>(piece);
        more.put(name, text);
        return more;
    }

    private static void refused(Executable told, String... paths) {
        RefusedException refused = assertThrows(RefusedException.class, told);
        assertEquals(List.of(paths), refused.faults().stream().map(Fault::path).toList());
    }
}

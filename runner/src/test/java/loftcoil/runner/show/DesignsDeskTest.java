package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Dwelling;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.Origin;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.survey.Survey;
import loftcoil.engine.survey.SurveyJson;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.progress.Trail;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DesignsDeskTest {

    @TempDir
    private Path folder;

    private LearnerStore store;
    private DesignsDesk desk;

    @BeforeEach
    void open() {
        store = new LearnerStore(ProgressFile.open(folder), 7);
        desk = new DesignsDesk(store);
    }

    @AfterEach
    void close() {
        store.close();
    }

    private void reopen() {
        store.close();
        open();
    }

    private void decide(String change, String value) {
        store.becomes(Changes.apply(store.design(), change, value), Trail.How.DECIDED);
    }

    private String baseM() {
        return Changes.current(store.design(), "tank.baseM");
    }

    private List<String> hows() {
        return desk.shelf().history().moments().stream()
                .map(DesignsView.Moment::how)
                .toList();
    }

    private List<String> files(String below) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(below))) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.contains(".json"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @EnumSource(Dwelling.class)
    void eachExampleDwellingIsABeginningAndTheOneFromBeforeIsOnTheShelf(Dwelling dwelling) {
        decide("tank.baseM", "2.6");
        DesignsView.Shelf shelf = desk.start(dwelling.code(), "My second house");

        assertEquals("My second house", store.design().name());
        assertEquals(dwelling.design().tank(), store.design().tank());
        assertEquals(1, shelf.others().size());
        desk.takeUp(shelf.others().get(0).key());
        assertEquals("2.6", baseM());
        assertEquals(
                List.of("My second house"),
                desk.shelf().others().stream().map(DesignsView.Card::name).toList());
    }

    @Test
    void namesBecomeFilesThatAnySystemTakes() throws IOException {
        for (String name : List.of("Müller’s hut / 2", "CON", "..", "日本", "a".repeat(100), "Müller’s hut / 2")) {
            desk.copy("", name);
        }
        List<String> names = files("designs").stream()
                .filter(name -> !name.endsWith(".trail.json"))
                .toList();
        assertEquals(6, names.size(), names.toString());
        assertTrue(
                names.containsAll(List.of("muller-s-hut-2.json", "muller-s-hut-2-2.json", "design-con.json")),
                names.toString());
        names.forEach(name -> assertTrue(name.matches("[a-z0-9][a-z0-9-]{0,70}\\.json"), name));
        assertTrue(desk.shelf().others().stream().anyMatch(card -> card.name().equals("日本")));
        assertThrows(RefusedException.class, () -> desk.copy("", " "));
    }

    @Test
    void whatIsRemovedCanBeBroughtBackWithItsHistory() {
        decide("tank.baseM", "2.6");
        DesignsView.Shelf started = desk.start("marsh-hut", "");
        String key = started.others().get(0).key();
        desk.remove(key);
        assertEquals(List.of(), desk.shelf().others());
        reopen();

        desk.bringBack(desk.shelf().removed().get(0).key());
        desk.takeUp(desk.shelf().others().get(0).key());

        assertEquals("2.6", baseM());
        desk.undo();
        assertEquals("2.2", baseM());
    }

    @Test
    void aDesignIsKeptAsAFileAndOpenedFromOne() {
        decide("tank.baseM", "2.6");
        DesignsView.Saved saved = desk.saved("");
        assertEquals("orchard-bothy.json", saved.name());
        desk.start("south-cabin", "");

        DesignsView.Shelf opened = desk.open("\uFEFF" + saved.json(), "somewhere.json");

        assertEquals("2.6", baseM());
        assertEquals(2, opened.others().size());
        RefusedException refused = assertThrows(RefusedException.class, () -> desk.open("{}", "x"));
        assertFalse(refused.faults().isEmpty());
        assertEquals("2.6", baseM());
    }

    @Test
    void anotherNameIsAChangeLikeAnyOther() throws IOException {
        desk.rename("", "Hut above the stream");
        assertEquals("Hut above the stream", store.design().name());
        desk.start("marsh-hut", "");
        desk.rename(desk.shelf().others().get(0).key(), "Old hut");
        assertTrue(files("designs").contains("old-hut.json"), files("designs").toString());
        assertEquals(2, files("designs").size());
    }

    @Test
    void whoAsksForADesignThatIsNotThereIsTold() {
        for (String key : List.of("none", "../design", "x/y")) {
            assertThrows(UnknownNameException.class, () -> desk.takeUp(key), key);
            assertThrows(UnknownNameException.class, () -> desk.remove(key), key);
            assertThrows(UnknownNameException.class, () -> desk.saved(key), key);
            assertThrows(UnknownNameException.class, () -> desk.bringBack(key), key);
        }
        assertThrows(UnknownNameException.class, () -> desk.backTo(99));
        assertThrows(RefusedException.class, () -> desk.start("castle", ""));
    }

    @Test
    void undoAndRedoWalkTheHistoryAndAreWrittenInIt() {
        decide("tank.baseM", "2.5");
        decide("tank.baseM", "2.7");
        decide("fire.litForH", "3");

        assertTrue(
                desk.shelf().history().undo().startsWith("Fire: Hours the fire burns, 3.0 h → "),
                desk.shelf().history().undo());
        desk.undo();
        desk.undo();
        assertEquals("2.5", baseM());
        reopen();
        desk.redo();
        assertEquals("2.7", baseM());
        desk.undo();
        desk.undo();
        assertEquals("2.2", baseM());
        assertEquals("Nothing is left to undo.", desk.undo().words());

        decide("tank.baseM", "2.9");
        assertEquals("Nothing is left to redo.", desk.redo().words());
        assertEquals(
                List.of(
                        "decided in a lesson",
                        "taken back",
                        "taken back",
                        "made again",
                        "taken back",
                        "taken back",
                        "decided in a lesson",
                        "decided in a lesson",
                        "decided in a lesson",
                        "begun"),
                hows());
    }

    @Test
    void backToThenIsAChangeThatCanBeTakenBack() {
        decide("tank.baseM", "2.5");
        decide("tank.baseM", "2.7");
        DesignsView.Moment first = desk.shelf().history().moments().get(2);
        assertTrue(first.at().isEmpty() || first.at().matches("\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d:\\d\\d"), first.at());
        desk.backTo(first.number());
        assertEquals("2.2", baseM());
        desk.undo();
        assertEquals("2.7", baseM());
    }

    @Test
    void aDesignChangedByHandBeforeTheStartIsOneMoreChange() throws IOException {
        decide("tank.baseM", "2.5");
        store.close();
        Files.writeString(
                folder.resolve("design.json"),
                DesignJson.write(Example.orchardBothy().withTankBaseM(2.8)));
        open();

        assertEquals("2.8", baseM());
        assertTrue(
                store.notices().stream()
                        .anyMatch(notice -> notice.contains("Tank base above the floor, 2.50 m → 2.80 m")),
                store.notices().toString());
        desk.undo();
        assertEquals("2.5", baseM());
    }

    @Test
    void aDesignChangedByHandMeanwhileIsTakenBeforeTheNextDecision() throws IOException {
        decide("tank.baseM", "2.5");
        Files.writeString(
                folder.resolve("design.json"),
                DesignJson.write(Example.orchardBothy().withTankBaseM(2.8)));
        assertEquals("2.8", baseM());
        decide("fire.litForH", "3");
        assertEquals("2.8", baseM());
        assertEquals(List.of("decided in a lesson", "changed by other means", "decided in a lesson", "begun"), hows());
    }

    @Test
    void aHandChangedDesignThatDoesNotFitIsKeptBesideWithItsFault() throws IOException {
        decide("tank.baseM", "2.5");
        String theirs =
                DesignJson.write(Example.orchardBothy()).replaceFirst("\"baseM\"\\s*:\\s*2.2", "\"baseM\": 9.9");
        Files.writeString(folder.resolve("design.json"), theirs);
        assertEquals("2.5", baseM());
        decide("fire.litForH", "3");

        assertEquals(theirs, Files.readString(folder.resolve("design.not-taken-1.json")));
        assertEquals(store.design(), DesignJson.read(Files.readString(folder.resolve("design.json"))));
        assertTrue(
                store.notices().get(0).contains("design.not-taken-1.json"),
                store.notices().toString());
        assertTrue(store.notices().get(0).contains("Legs"), store.notices().toString());

        store.close();
        Files.writeString(folder.resolve("design.json"), "{ no design");
        open();
        assertEquals("2.5", baseM());
        assertEquals("{ no design", Files.readString(folder.resolve("design.damaged-1.json")));
    }

    @Test
    void aDesignThatWasDeletedMeanwhileIsWrittenAgain() throws IOException {
        decide("tank.baseM", "2.5");
        Files.delete(folder.resolve("design.json"));
        assertEquals("2.5", baseM());
        assertTrue(Files.exists(folder.resolve("design.json")));
    }

    @Test
    void aHistoryThatCannotBeReadIsSetAsideAndTheDesignStands() throws IOException {
        decide("tank.baseM", "2.5");
        store.close();
        Files.writeString(folder.resolve("design.trail.json"), "nothing");
        open();
        assertEquals("2.5", baseM());
        assertEquals(List.of("begun"), hows());
        assertEquals("nothing", Files.readString(folder.resolve("design.trail.damaged-1.json")));
    }

    @Test
    void aDesignOnTheShelfThatIsNoneIsShownWithItsFaultAndLeftAlone() throws IOException {
        desk.copy("", "Second");
        Design before = store.design();
        Files.writeString(folder.resolve("designs/second.json"), "{}");
        DesignsView.Card card = desk.shelf().others().get(0);
        assertTrue(card.trouble().contains("name"), card.trouble());
        assertThrows(RefusedException.class, () -> desk.takeUp("second"));
        assertEquals(before, store.design());
        assertEquals("{}", Files.readString(folder.resolve("designs/second.json")));
    }

    private SurveyDesk survey() {
        return new SurveyDesk(store);
    }

    private String asked(String path) {
        return survey().house().stations().stream()
                .flatMap(station -> station.questions().stream())
                .filter(question -> question.path().equals(path))
                .findFirst()
                .orElseThrow()
                .now();
    }

    @Test
    void eachDesignHasASurveyOfItsOwn() throws IOException {
        survey().tell(Map.of("site.altitudeM", "1234"), false);
        desk.start("marsh-hut", "Hut by the water");
        assertFalse(Files.exists(folder.resolve("survey.json")), "nothing was measured of the hut");
        assertFalse(asked("site.altitudeM").equals("1234"));
        survey().tell(Map.of("site.altitudeM", "77"), false);
        assertEquals("Hut by the water", survey().house().design());

        String bothy = desk.shelf().others().get(0).key();
        desk.takeUp(bothy);
        reopen();
        assertEquals("1234", asked("site.altitudeM"));
        assertEquals("Orchard bothy", survey().house().design());
        assertEquals(
                List.of("hut-by-the-water.json", "hut-by-the-water.survey.json", "hut-by-the-water.trail.json"),
                files("designs"));

        desk.remove("hut-by-the-water");
        desk.bringBack("hut-by-the-water");
        desk.takeUp("hut-by-the-water");
        assertEquals("77", asked("site.altitudeM"));
    }

    @Test
    void aCopyHasTheSurveyTooUnderItsOwnName() {
        survey().tell(Map.of("site.altitudeM", "1234"), false);
        desk.copy("", "Second try");
        survey().tell(Map.of("site.altitudeM", "55"), false);
        desk.takeUp("second-try");

        assertEquals("1234", asked("site.altitudeM"));
        assertEquals("Second try", survey().house().name());
        desk.rename("", "Third try");
        assertEquals("Third try", survey().house().name());
    }

    @Test
    void theOneSurveyOfAnOlderFolderGoesToTheDesignItWasMadeFor() throws IOException {
        survey().tell(Map.of("site.altitudeM", "1234"), false);
        Survey measured = store.survey();
        desk.start("marsh-hut", "Hut by the water");
        store.close();
        Files.delete(folder.resolve("designs/orchard-bothy.survey.json"));
        Files.writeString(folder.resolve("survey.json"), SurveyJson.write(measured));
        open();

        assertFalse(asked("site.altitudeM").equals("1234"));
        assertTrue(
                store.notices().stream().anyMatch(notice -> notice.contains("“Orchard bothy”")),
                store.notices().toString());
        desk.takeUp("orchard-bothy");
        assertEquals("1234", asked("site.altitudeM"));
        reopen();
        assertEquals("1234", asked("site.altitudeM"));
        assertEquals(List.of(), store.notices());
    }

    /** A survey whose house has a name of its own is that of the design which is taken up, as it always was. */
    @Test
    void theSurveyOfAnOlderFolderStaysWithTheOnlyDesign() throws IOException {
        survey().tell(Map.of("site.altitudeM", "1234", "name", "Byre"), false);
        Survey measured = store.survey();
        store.close();
        Files.writeString(folder.resolve("survey.json"), SurveyJson.write(measured));
        open();

        assertEquals("1234", asked("site.altitudeM"));
        assertEquals(List.of(), store.notices());
    }

    /** The folder as a sudden end leaves it between the new design and its survey. */
    @Test
    void aSuddenEndWhileAnotherIsTakenUpLeavesNoSurveyWithTheWrongDesign() throws IOException {
        survey().tell(Map.of("site.altitudeM", "1234"), false);
        String before = Files.readString(folder.resolve("survey.json"));
        desk.start("marsh-hut", "Hut by the water");
        store.close();
        Files.writeString(folder.resolve("survey.json"), before);
        open();

        assertFalse(asked("site.altitudeM").equals("1234"));
        desk.takeUp("orchard-bothy");
        assertEquals("1234", asked("site.altitudeM"));
    }

    @Test
    void aSurveyChangedByHandMeanwhileGoesOnFromThereAndOursIsKept() throws IOException {
        survey().tell(Map.of("site.altitudeM", "1234"), false);
        Survey theirs = store.survey().with(Map.of("site.altitudeM", "99"), Origin.YOURS);
        survey().tell(Map.of("site.altitudeM", "1235"), false);
        Files.writeString(folder.resolve("survey.json"), SurveyJson.write(theirs));

        survey().tell(Map.of("tank.baseM", "2.3"), false);

        assertEquals("99", asked("site.altitudeM"));
        assertTrue(
                store.notices().stream()
                        .anyMatch(notice ->
                                notice.contains("survey.json was changed") && notice.contains("survey-before-")),
                store.notices().toString());
        String kept = files("").stream()
                .filter(name -> name.startsWith("survey-before-"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                1235.0,
                SurveyJson.read(Files.readString(folder.resolve(kept)))
                        .sketch()
                        .told()
                        .site()
                        .altitudeM());
    }

    @Test
    void aSurveyChangedToWhatIsNoneIsSetAsideAndOursGoesOn() throws IOException {
        survey().tell(Map.of("site.altitudeM", "1234"), false);
        Files.writeString(folder.resolve("survey.json"), "{\"house\": 3}");

        assertEquals("1234", asked("site.altitudeM"));
        survey().tell(Map.of("tank.baseM", "2.3"), false);
        reopen();
        assertEquals("1234", asked("site.altitudeM"));
        assertEquals("{\"house\": 3}", Files.readString(folder.resolve("survey.damaged-1.json")));
    }

    @Test
    void beginningTheSurveyAgainKeepsWhatWasMeasured() throws IOException {
        survey().tell(Map.of("site.altitudeM", "1234"), false);
        survey().afresh("marsh-hut");

        assertFalse(asked("site.altitudeM").equals("1234"));
        assertTrue(
                files("").stream().anyMatch(name -> name.startsWith("survey-before-")),
                files("").toString());
    }

    /** Nothing measured, nothing to go stale: a house that was never told is the design as it stands. */
    @Test
    void aHouseThatWasNeverToldFollowsTheDecisionsOfTheLessons() {
        survey().house();
        decide("tank.baseM", "2.6");

        assertEquals("2.6", asked("tank.baseM"));
        survey().tell(Map.of("site.altitudeM", "1234"), false);
        RebuildView.Taken taken = survey().take();
        assertEquals("2.6", baseM());
        assertTrue(taken.words().contains("1234.00 m"), taken.words());
        assertFalse(taken.words().contains("Tank base"), taken.words());
    }

    @Test
    void whatTheHouseUndoesOfTheLessonsIsTold() {
        survey().tell(Map.of("tank.volumeL", "110"), false);
        decide("tank.volumeL", "90");

        RebuildView.Taken taken = survey().take();
        assertTrue(taken.words().contains("90.0 L → 110 L"), taken.words());
    }

    @Test
    void whatADesignOfTheShelfDiffersInIsTold() {
        DesignsView.Shelf shelf = desk.start("south-cabin", "Cabin");
        String bothy = shelf.others().get(0).key();

        assertTrue(desk.differences(bothy).stream()
                .anyMatch(one -> one.label().equals("Latitude") && one.after().endsWith("north")));
        assertEquals(List.of(), desk.differences(""));
        assertThrows(UnknownNameException.class, () -> desk.differences("none"));
    }
}

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
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.progress.ProgressFile;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RebuildDeskTest {

    @TempDir
    private Path folder;

    private LearnerStore store;
    private RebuildDesk desk;

    @BeforeEach
    void open() {
        store = new LearnerStore(ProgressFile.open(folder), 7);
        desk = new RebuildDesk(store);
    }

    @AfterEach
    void close() {
        store.close();
    }

    private static List<RebuildView.Lever> levers(RebuildView.Start start) {
        return start.parts().stream().flatMap(part -> part.levers().stream()).toList();
    }

    @Test
    void everyNamedChangeIsALeverWithTheValueTheDesignHas() {
        RebuildView.Start start = desk.own();
        Design design = Example.orchardBothy();
        assertEquals(
                Changes.names().stream().sorted().toList(),
                levers(start).stream().map(RebuildView.Lever::name).sorted().toList());
        for (RebuildView.Lever lever : levers(start)) {
            String now = Changes.current(design, lever.name());
            assertEquals(lever.name().endsWith("FromH") ? now + ":00" : now, lever.current());
        }
        assertFalse(
                start.parts().stream().anyMatch(part -> part.words().equals("Other")),
                start.parts().toString());
        assertEquals(List.of(), start.kept());
    }

    @Test
    void nothingChangedIsNoDifference() {
        RebuildView.SideBySide same = desk.compare(desk.own().json(), Map.of("tank.baseM", "2.2"), false);
        assertTrue(same.groups().stream().allMatch(group -> group.changed() == 0));
        assertEquals(List.of(), same.effects());
        assertEquals(same.beforeWords(), same.afterWords());
    }

    @Test
    void eachChangeStandsByItselfAndAllStandTogether() {
        RebuildView.SideBySide both =
                desk.compare(desk.own().json(), Map.of("tank.baseM", "2.6", "loop.tube", "EN1057 28x0.9"), false);
        assertEquals(2, both.effects().size());
        RebuildView.Line flow = both.groups().get(0).lines().stream()
                .filter(line -> line.label().equals("flow round the loop"))
                .findFirst()
                .orElseThrow();
        assertEquals("better", flow.turn());
        assertTrue(flow.difference().startsWith("+"), flow.toString());
        assertFalse(both.year());
        assertTrue(both.before().svg().contains("2.20 m"), both.before().svg());
        assertTrue(both.after().svg().contains("2.60 m"), both.after().svg());
    }

    @Test
    void aTankBelowTheCoilIsADangerAtOnce() {
        RebuildView.SideBySide low = desk.compare(desk.own().json(), Map.of("tank.baseM", "-0.9"), false);
        assertEquals("danger", low.safety().level());
    }

    @Test
    void whatCannotBeBuiltIsRefusedWithItsField() {
        String own = desk.own().json();
        RefusedException refused =
                assertThrows(RefusedException.class, () -> desk.compare(own, Map.of("tank.baseM", "99"), false));
        assertEquals("tank.baseM", refused.faults().get(0).path());
        assertThrows(RefusedException.class, () -> desk.compare(own, Map.of("no.such", "1"), false));
        assertThrows(RefusedException.class, () -> desk.from("{}", "a file"));
        assertThrows(RefusedException.class, () -> desk.takeOver("not JSON", Map.of()));
        assertEquals(Example.orchardBothy().borrowed(), store.design());
    }

    @Test
    void takenOverTheOldOneStaysInTheFolderEvenOnTheSameDay() throws IOException {
        String first = desk.own().json();
        String keptFirst = desk.takeOver(first, Map.of("tank.baseM", "2.6")).kept();
        String second = desk.own().json();
        String keptSecond = desk.takeOver(second, Map.of("tank.baseM", "2.7")).kept();

        assertTrue(keptFirst.matches("design-before-\\d{4}-\\d\\d-\\d\\d\\.json"), keptFirst);
        assertTrue(keptSecond.startsWith(keptFirst.replace(".json", "")), keptSecond);
        assertFalse(keptSecond.equals(keptFirst));
        assertEquals(first, Files.readString(folder.resolve(keptFirst)));
        assertEquals(second, Files.readString(folder.resolve(keptSecond)));
        assertEquals("2.7", Changes.current(store.design(), "tank.baseM"));
        assertEquals(List.of(keptSecond, keptFirst), desk.own().kept());
        assertEquals(first, desk.kept(keptFirst).json());
    }

    @Test
    void aDesignOfAFileIsComparedWithoutBeingKept() {
        Design other = Example.orchardBothy().withTankBaseM(2.4);
        RebuildView.Start start = desk.from(DesignJson.write(other), "old.json");
        assertEquals("old.json", start.from());
        assertEquals("2.2", Changes.current(store.design(), "tank.baseM"));
    }

    @Test
    void onlyKeptDesignsCanBeNamed() {
        for (String name : List.of("progress.json", "../design.json", "design-before-2031-01-01.json", "")) {
            assertThrows(UnknownNameException.class, () -> desk.kept(name), name);
        }
    }

    @Test
    void pipesThatAreStretchedAreToldWithByHowMuch() {
        String words =
                desk.takeOver(desk.own().json(), Map.of("tank.baseM", "2.75")).words();
        assertTrue(words.contains("With it moved: Cold pipe “"), words);
        assertTrue(words.matches(".*Hot pipe “[^”]+”: Rise of the leg, \\d.\\d\\d m → \\d.\\d\\d m.*"), words);
    }

    @Test
    void aHeatThatIsBorrowedIsToldUntilItIsOnesOwn() {
        String own = desk.own().json();

        String still = desk.compare(own, Map.of("tank.baseM", "2.6"), false).heat();
        assertTrue(still.startsWith("The heat of the coil, 2.0 kW, is the example's and not your fire's"), still);
        String fire = desk.compare(own, Map.of("fire.burnKgPerH", "2.5"), false).heat();
        assertTrue(fire.startsWith("The old design's heat of the coil, 2.0 kW, was the example's"), fire);
        assertTrue(fire.contains("worked out from its fire"), fire);
        String stated = desk.compare(own, Map.of("coil.heatKW", "0.9"), false).heat();
        assertTrue(stated.contains("the new one's is as you state it"), stated);
        assertTrue(
                String.join(" ", ComparisonText.lines(desk.compare(own, Map.of("tank.baseM", "2.6"), false), 80))
                        .contains("is the example's and not your fire's"),
                "the terminal tells it too");

        desk.takeOver(own, Map.of("fire.burnKgPerH", "2.5"));
        assertEquals(
                "",
                desk.compare(desk.own().json(), Map.of("tank.baseM", "2.6"), false)
                        .heat());
        String another = DesignJson.write(Example.orchardBothy());
        assertEquals(
                "", desk.compare(another, Map.of("tank.baseM", "2.6"), false).heat(), "nobody borrowed it");
    }

    @Test
    void theYearsOfARebuildSayHowFarTheyAre() {
        assertEquals(0, desk.far().of());
        RebuildView.SideBySide both = desk.compare(desk.own().json(), Map.of("tank.baseM", "2.6"), true);
        assertTrue(both.year());
        assertEquals(new RebuildView.Far(3, 3), desk.far());
    }
}

package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.sheet.SheetJson;
import loftcoil.engine.sheet.SheetText;
import loftcoil.engine.study.Comparison;
import loftcoil.engine.study.Rebuild;
import loftcoil.engine.words.Units;
import loftcoil.runner.exercise.FaultySystem;
import loftcoil.runner.handout.HandoutHtml;
import loftcoil.runner.handout.Paper;
import loftcoil.runner.handout.RebuildSheet;
import loftcoil.runner.handout.SheetSetting;
import loftcoil.runner.progress.ProgressFile;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every face finds the same dangers in a design and calls them as grave, each read from the face's own output. */
class OneVerdictTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Path KEPT = Path.of("../engine/src/test/resources/loftcoil/engine/drift/designs.json");
    private static final Pattern CODE = Pattern.compile("LC-[A-Z]+(?:-[A-Z]+)*");
    /** What would tell somebody that nothing is wrong. */
    private static final Pattern CALM =
            Pattern.compile("No danger known|Nothing found, much|no promise|no danger is known|None of our checks");

    private static final Map<String, Design> DESIGNS = designs();
    /** A year is marched once for both tests. */
    private static final Map<String, Sheet> WHOLE = new HashMap<>();

    private static final Sheet BOTHY = Sheet.whole(Example.orchardBothy(), Sheet.USUAL_TANK_C);

    @TempDir
    private Path folder = Path.of("");

    /** Those in which the faces once contradicted one another, and of each other kind one. */
    private static final List<String> USUAL = List.of(
            "7 kW",
            "5 kW, base 1.0 m",
            "3.5 kW, base 0.6 m",
            "backward-at-night",
            "boiling",
            "tank-too-low",
            "no-fire");

    static Stream<String> usual() {
        return USUAL.stream();
    }

    static Stream<String> others() {
        return DESIGNS.keySet().stream().filter(name -> !USUAL.contains(name));
    }

    /** Those whose whole output is kept, and the three in which the faces once contradicted one another. */
    private static Map<String, Design> designs() {
        Map<String, Design> designs = new LinkedHashMap<>();
        try {
            for (Map.Entry<String, JsonNode> patch :
                    MAPPER.readTree(Files.readString(KEPT)).properties()) {
                if (patch.getValue().isObject()) {
                    designs.put(
                            patch.getKey(), new FaultySystem(patch.getValue().toString(), Map.of()).design());
                }
            }
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
        designs.put(
                "7 kW",
                Changes.apply(Example.orchardBothy(), "fire.burnKgPerH", "4").withCoilHeatKW(7));
        designs.put(
                "5 kW, base 1.0 m", Example.orchardBothy().withTankBaseM(1.0).withCoilHeatKW(5));
        designs.put(
                "3.5 kW, base 0.6 m", Example.orchardBothy().withTankBaseM(0.6).withCoilHeatKW(3.5));
        return designs;
    }

    @ParameterizedTest
    @MethodSource("usual")
    void everyFaceShowsTheSameDangers(String name) throws IOException {
        agree(name);
    }

    @ParameterizedTest
    @MethodSource("others")
    @Tag("thorough")
    void everyFaceShowsTheSameDangersOfOtherDesigns(String name) throws IOException {
        agree(name);
    }

    private void agree(String name) throws IOException {
        Design design = DESIGNS.get(name);
        try (ProgressFile files = ProgressFile.open(folder)) {
            LearnerStore store = new LearnerStore(files, 1);
            store.becomes(design, loftcoil.runner.progress.Trail.How.DECIDED);
            Sheet sheet = whole(name);
            assertEquals(design, store.design());
            View.Safety whole = SafetyWords.of(sheet.verdict(), sheet.design(), Units.METRIC);
            Set<String> codes = codes(whole.findings());
            String level = whole.level();

            assertEquals("", whole.open());
            assertEquals(codes, in(SafetyText.lines(whole)), "terminal and panel");
            assertEquals(codes, in(SheetText.lines(sheet)), "sheet as text");

            JsonNode json = MAPPER.readTree(SheetJson.write(sheet));
            assertEquals(level, json.at("/verdict/level").textValue());
            assertTrue(json.at("/verdict/yearJudged").booleanValue());
            assertEquals(codes, in(List.of(json.path("cautions").toString())), "sheet as JSON");

            Comparison compared = Comparison.of(BOTHY, sheet);
            RebuildView.SideBySide both = SideBySide.of(compared, List.of(), Units.METRIC);
            assertEquals(whole, both.safety());
            Set<String> beside = codes(both.raised());
            beside.addAll(codes(both.staying()));
            assertEquals(codes, beside, "side by side");
            JsonNode after = MAPPER.readTree(
                            ComparisonJson.write(compared, Rebuild.of(Example.orchardBothy(), List.of()), ""))
                    .path("verdictAfter");
            assertEquals(level, after.path("level").textValue());
            assertEquals(codes, in(List.of(after.toString())), "comparison as JSON");

            BuildSheet build = BuildSheet.of(sheet);
            String page =
                    HandoutHtml.buildSheet(build, new SheetSetting(Paper.A4, Units.METRIC, LocalDate.of(2026, 1, 2)));
            assertEquals(codes, in(List.of(page)), "build sheet");
            assertEquals(level.equals("danger"), page.contains("Do not build this as drawn"), "build sheet's heading");
            assertEquals(level.equals("danger"), !build.buildable());
        }
    }

    /** What is shown at once is never told away a second later: filling in only adds, but for what the year knows better. */
    @ParameterizedTest
    @MethodSource("usual")
    void theQuickVerdictOfPanelAndDecisionIsPartOfTheWhole(String name) {
        isPartOfTheWhole(name);
    }

    @ParameterizedTest
    @MethodSource("others")
    @Tag("thorough")
    void theQuickVerdictOfPanelAndDecisionIsPartOfTheWholeOfOtherDesigns(String name) {
        isPartOfTheWhole(name);
    }

    private static void isPartOfTheWhole(String name) {
        Design design = DESIGNS.get(name);
        View.Safety quick = LoopPanel.view(design, Units.METRIC).safety();
        assertEquals(
                quick, SafetyWords.of(SafetyVerdict.quick(design), design, Units.METRIC), "panel and decision's reply");
        boolean started = whole(name).starts().isPresent();
        assertEquals(
                started ? "How it starts and how its year goes are not judged yet." : "The year is not judged yet.",
                quick.open());
        Set<String> lost = codes(quick.findings());
        lost.removeAll(codes(SafetyWords.of(whole(name).verdict(), whole(name).design(), Units.METRIC)
                .findings()));
        lost.remove("LC-SCALD");
        assertEquals(Set.of(), lost);
    }

    /** Before starts and year are judged no face says that nothing is wrong, and each says what is open. */
    @Test
    void noFaceLooksSafeBeforeStartsAndYearAreJudged() throws IOException {
        Design design = Changes.apply(
                        Changes.apply(Example.orchardBothy(), "coil.turns", "bent from one length"),
                        "coil.tube",
                        "EN1057 22x1.2")
                .withCoilHeatKW(1);
        Sheet half = Sheet.of(design);
        assertEquals(List.of(), half.cautions());
        Comparison compared = Comparison.of(Sheet.of(Example.orchardBothy()), half);
        RebuildView.SideBySide both = SideBySide.of(compared, List.of(), Units.METRIC);
        SheetSetting setting = new SheetSetting(Paper.A4, Units.METRIC, LocalDate.of(2026, 1, 2));
        Map<String, String> faces = Map.of(
                "panel",
                        SafetyText.lines(LoopPanel.view(design, Units.METRIC).safety())
                                .toString(),
                "side by side", ComparisonText.lines(both, 80).toString(),
                "sheet as text", SheetText.lines(half).toString(),
                "build sheet", HandoutHtml.buildSheet(BuildSheet.of(half), setting),
                "rebuild on paper", RebuildSheet.html(Example.orchardBothy(), design, both, setting));
        faces.forEach((face, text) -> {
            assertTrue(text.contains("How it starts and how its year goes are not judged yet."), face + ": " + text);
            assertFalse(CALM.matcher(text).find(), face + ": " + text);
        });
        assertEquals("open", both.safety().level());
        assertFalse(BuildSheet.of(half).buildable());
        JsonNode json = MAPPER.readTree(SheetJson.write(half)).path("verdict");
        assertFalse(
                json.path("yearJudged").booleanValue()
                        || json.path("startsJudged").booleanValue(),
                json.toString());
    }

    @Test
    void aDesignWithoutFireAndPanesHasNoYearToWaitFor() throws IOException {
        ObjectNode bare = (ObjectNode) MAPPER.readTree(Example.orchardBothyJson());
        bare.remove(List.of("fire", "window"));
        Design design = DesignJson.read(bare.toString());
        assertEquals(
                "How it starts is not judged yet.",
                LoopPanel.view(design, Units.METRIC).safety().open());
    }

    @Test
    void aSheetOfACoolerTankIsNoMilder() {
        Design boils = DESIGNS.get("7 kW");
        assertEquals(SafetyVerdict.quick(boils), Sheet.of(boils, 15).verdict());
        assertEquals("danger", Sheet.of(boils, 80).verdict().level());
    }

    @Test
    void theWholeVerdictIsThatOfTheWholeSheetWhereverItIsAskedFor() {
        Design design = DESIGNS.get("7 kW");
        try (ProgressFile files = ProgressFile.open(folder)) {
            LearnerStore store = new LearnerStore(files, 1);
            store.becomes(design, loftcoil.runner.progress.Trail.How.DECIDED);
            assertEquals(SheetJson.write(whole("7 kW")), SheetJson.write(new WholeSheets(store).sheet()));
        }
        assertEquals(whole("7 kW").verdict(), SafetyVerdict.whole(design));
    }

    private static Sheet whole(String name) {
        return WHOLE.computeIfAbsent(name, key -> Sheet.whole(DESIGNS.get(key), Sheet.USUAL_TANK_C));
    }

    private static Set<String> codes(List<View.Finding> findings) {
        return findings.stream().map(View.Finding::code).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> in(List<String> lines) {
        return lines.stream()
                .flatMap(line -> CODE.matcher(line).results())
                .map(match -> match.group())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}

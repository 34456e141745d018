package loftcoil.runner.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Grounds;
import loftcoil.engine.words.Units;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.session.SharedSession;
import loftcoil.runner.show.CourseApp;
import loftcoil.runner.show.PaperHouse;
import loftcoil.runner.show.SurveyView;
import loftcoil.runner.show.TryCourse;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole houses walked through from scratch in the terminal, by what is typed there alone. */
class OwnHouseWalkTest {

    /** A number in metres, litres, kilograms or degrees Celsius. */
    private static final Pattern METRIC = Pattern.compile("\\b\\d[\\d.,]* (?:mm|cm|m|L|kg|°C)\\b(?!/)");

    @TempDir
    private Path folder;

    static List<PaperHouse> houses() {
        return List.of(PaperHouse.MILL, PaperHouse.CABIN, PaperHouse.HUT);
    }

    @ParameterizedTest
    @MethodSource("houses")
    void everyValueOfAHouseCanBeToldAndItBecomesTheDesign(PaperHouse house) {
        try (CourseApp bench = CourseApp.open(TryCourse.read(), ProgressFile.open(folder), SharedSession::lent, 7)) {
            bench.choose(house.equals(PaperHouse.CABIN) ? Units.US : Units.METRIC);
            List<String> typed = new ArrayList<>();
            List<SurveyView.Station> stations = bench.survey().house().stations();
            for (int i = 0; i < stations.size(); i++) {
                typed.add(Integer.toString(i + 1));
                station(stations.get(i), house, typed);
            }
            // Who lives there is asked again once the taps are one's own.
            typed.add("3");
            station(stations.get(2), house, typed);
            typed.addAll(List.of("take", "q"));
            ScriptedConsole console = ScriptedConsole.on(60, 20, typed);
            new MeasureWalk(bench.survey(), new Pages(console)).walk();
            console.assertAllReadable();

            assertTrue(console.all().contains("It is your design now."), console.all());
            assertEquals(0, console.left());
            Design own = DesignJson.read(bench.rebuild().own().json());
            assertEquals(house.answers().get("name"), own.name());
            assertEquals(
                    0,
                    Grounds.of(own).borrowed(),
                    bench.survey().house().standing().next());
            assertEquals(house.taps().size(), own.taps().size());
            assertEquals(2.5, own.trunk().orElseThrow().lengthM());
            assertTrue(console.all().contains("Nothing is borrowed any more: make it your design."), console.all());
        }
    }

    /** On a screen as most have it, and on a small one: no metric unit is left in what is said of a house in US units. */
    @ParameterizedTest
    @ValueSource(ints = {80, 60})
    void aHouseIsRebuiltInFeetAndInches(int columns) {
        try (CourseApp bench = CourseApp.open(TryCourse.read(), ProgressFile.open(folder), SharedSession::lent, 7)) {
            bench.choose(Units.US);
            ScriptedConsole console = ScriptedConsole.on(
                    columns,
                    20,
                    List.of("list", "tank.baseM = 8 ft 6", "fire.litFromH = half past six", "show", "take", "q"));
            new RebuildWalk(bench.rebuild(), new Pages(console)).walk();
            console.assertAllReadable();

            String all = console.all().replaceAll("\\s+", " ");
            assertTrue(all.contains("tank.baseM = 7 ft 2-5/8 in: Tank base above the floor"), all);
            assertTrue(all.contains("was 7 ft 2-5/8 in, now 8 ft 6."), all);
            assertTrue(all.contains("kept in your folder as design-before-"), all);
            assertEquals(
                    List.of(),
                    METRIC.matcher(all.replace("tank.baseM = 2.6 m", ""))
                            .results()
                            .map(MatchResult::group)
                            .toList());
            Design own = DesignJson.read(bench.rebuild().own().json());
            assertEquals(102 * 0.0254, own.tank().baseM(), 1e-6);
            assertEquals(6.5, own.fire().orElseThrow().litFromH(), 1e-9);
        }
    }

    private static void station(SurveyView.Station station, PaperHouse house, List<String> typed) {
        switch (station.code()) {
            case "hot-run" -> pieces(house.hot(), typed);
            case "cold-run" -> pieces(house.cold(), typed);
            case "taps" -> taps(house, typed);
            case "climate" -> climate(station, house, typed);
            case "people" -> {
                typed.add("yes");
                boolean own = typed.contains("shower");
                house.habits().forEach((name, text) -> typed.add(own || text.matches("[\\d.]+") ? text : ""));
                questions(station, house, typed);
            }
            case "panes" -> {
                typed.add("yes");
                questions(station, house, typed);
            }
            default -> questions(station, house, typed);
        }
    }

    private static void questions(SurveyView.Station station, PaperHouse house, List<String> typed) {
        station.questions().forEach(question -> typed.add(house.answers().getOrDefault(question.path(), "")));
    }

    private static void climate(SurveyView.Station station, PaperHouse house, List<String> typed) {
        if (house.skies().isEmpty()) {
            typed.add("yes");
            questions(station, house, typed);
            return;
        }
        typed.addAll(List.of("no", "yes"));
        List.of("winter", "spring", "summer", "autumn", "warmest", "coldest")
                .forEach(name -> typed.add(house.skies().get(name)));
    }

    private static void pieces(List<Map<String, String>> pieces, List<String> typed) {
        typed.add("yes");
        for (Map<String, String> piece : pieces) {
            List<String> asked = new ArrayList<>(List.of("way", "name", "length"));
            if ("along".equals(piece.get("way"))) {
                asked.addAll(List.of("slope", "heading"));
            }
            asked.addAll(List.of("elbows90", "elbows45", "tube", "lagging"));
            if (!piece.getOrDefault("lagging", "").isEmpty()) {
                asked.add("laggingThickness");
            }
            asked.add("around");
            asked.forEach(name -> typed.add(piece.getOrDefault(name, "")));
        }
        typed.add("");
    }

    private static void taps(PaperHouse house, List<String> typed) {
        typed.add("yes");
        List.of("length", "tube", "elbows90")
                .forEach(name -> typed.add(house.trunk().getOrDefault(name, "")));
        for (Map<String, String> tap : house.taps()) {
            List.of("name", "from", "level", "tube", "length", "elbows90", "mixer")
                    .forEach(name -> typed.add(tap.getOrDefault(name, "")));
        }
        typed.add("");
    }
}

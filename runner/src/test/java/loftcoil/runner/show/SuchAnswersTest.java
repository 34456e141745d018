package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loftcoil.engine.words.Units;
import loftcoil.runner.progress.ProgressFile;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the survey gives as an example can be typed as it stands, in either units. */
class SuchAnswersTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(Units.class)
    void eachExampleIsTaken(Units units) {
        SurveyView.Such such = SurveyView.Such.in(units);
        assertFalse(units == Units.US && such.warm().contains("°C"), such.warm());
        LearnerStore store = new LearnerStore(ProgressFile.open(folder), 7);
        store.choose(units);
        SurveyDesk desk = new SurveyDesk(store);
        for (String slope : such.slopes().split(", ", -1)) {
            for (String tube : List.of(such.tube(), such.wideTube())) {
                for (String length : such.lengths().split(", ", -1)) {
                    Map<String, String> piece = new HashMap<>(Map.of("way", "along", "slope", slope, "tube", tube));
                    piece.put("length", length.equals("1 in 50") ? such.guess().substring(2) : length);
                    assertEquals(
                            1, run(desk.walk("hot", List.of(piece))).pieces().size());
                }
            }
        }
        desk.climateEstimate(Map.of(
                "winter",
                "dull",
                "spring",
                "mixed",
                "summer",
                "clear",
                "autumn",
                "cloudy",
                "warmest",
                such.warm(),
                "coldest",
                "2 °C"));
        store.close();
    }

    private static SurveyView.Run run(SurveyView.House house) {
        return house.stations().stream()
                .map(SurveyView.Station::run)
                .filter(run -> run.code().equals("hot"))
                .findFirst()
                .orElseThrow();
    }
}

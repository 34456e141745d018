package loftcoil.engine.drift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import loftcoil.engine.caution.YearFacts;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.run.Pace;
import loftcoil.engine.run.YearRun;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A year as it is reckoned against the same in one-minute steps, and against the same with every day marched. */
class YearPaceLawTest {

    private static final Pace MINUTES = Pace.YEAR.withStepS(60).everyDay();

    private static final Map<String, ToDoubleFunction<YearRun>> FIGURES = Map.of(
            "sun", year -> year.energy().solarKWh(),
            "coil", year -> year.energy().coilKWh(),
            "used", year -> year.energy().usedKWh(),
            "lost", year -> year.energy().lossKWh(),
            "shortfall", YearRun::shortfallKWh,
            "wood", YearRun::woodKg);

    private static final Map<String, Design> DESIGNS = designs();

    private static Map<String, Design> designs() {
        Map<String, Design> designs = new LinkedHashMap<>(KeptDesigns.all());
        for (String heatKW : new String[] {"0.3", "0.5", "0.8", "1.2"}) {
            designs.put("bothy " + heatKW, Changes.apply(Example.orchardBothy(), "coil.heatKW", heatKW));
            Design tall = Changes.apply(Example.orchardBothy(), "tank.heightM", "1.8");
            designs.put("tall " + heatKW, Changes.apply(tall, "coil.heatKW", heatKW));
        }
        return designs;
    }

    static Stream<String> names() {
        return DESIGNS.keySet().stream();
    }

    /** Half a dozen figures within 0.2 %, the hottest water within what the verdicts add for it. */
    private static void assertAgainstMinutes(String name) {
        YearRun year = YearRun.of(DESIGNS.get(name));
        YearRun minutes = YearRun.of(DESIGNS.get(name), MINUTES);
        assertFigures(minutes, year, 0.002);
        assertEquals(minutes.hottestC(), year.hottestC(), YearFacts.BLUR_K);
    }

    private static void assertFigures(YearRun expected, YearRun actual, double share) {
        FIGURES.forEach((figure, value) -> {
            double whole = value.applyAsDouble(expected);
            assertEquals(whole, value.applyAsDouble(actual), share * Math.abs(whole) + 1e-9, figure);
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"bothy", "no-fire", "tall 0.8"})
    void theYearIsThatOfOneMinuteSteps(String name) {
        assertAgainstMinutes(name);
    }

    @Tag("thorough")
    @ParameterizedTest
    @MethodSource("names")
    void allYearsAreThoseOfOneMinuteSteps(String name) {
        assertTrue(DESIGNS.size() >= 14, "enough designs");
        assertAgainstMinutes(name);
    }

    /** What is lost by days that are not marched, by itself: a twentieth of a percent, a quarter of a kelvin. */
    @ParameterizedTest
    @MethodSource("names")
    void daysThatAreNotMarchedChangeNothingMuch(String name) {
        YearRun year = YearRun.of(DESIGNS.get(name));
        YearRun every = YearRun.of(DESIGNS.get(name), Pace.YEAR.everyDay());
        assertFigures(every, year, 0.0005);
        assertEquals(every.hottestC(), year.hottestC(), 0.25);
        assertEquals(every.extremes().coldestTankC(), year.extremes().coldestTankC(), 0.05);
        assertEquals(every.extremes().hottestDrawC(), year.extremes().hottestDrawC(), 0.25);
        assertEquals(every.extremes().leastAirC(), year.extremes().leastAirC(), 1e-9);
        assertEquals(every.extremes().longestWarmDays(), year.extremes().longestWarmDays(), 1);
    }
}

package loftcoil.engine.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.Fire;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two fires on a day. */
class TwiceADayLawTest {

    /** Lit at 17 for four hours. */
    private static final Design BOTHY = Example.orchardBothy();

    private static final String ONE = "\"litFromH\": 17.0, \"litForH\": 4.0";

    private static Design lit(double fromH, double forH, double againFromH, double againForH) {
        return DesignJson.read(Example.orchardBothyJson()
                .replace(
                        ONE,
                        "\"litFromH\": %s, \"litForH\": %s, \"litAgainFromH\": %s, \"litAgainForH\": %s"
                                .formatted(fromH, forH, againFromH, againForH)));
    }

    @Test
    void oneFireInTwoPartsIsOneFire() {
        YearRun two = YearRun.of(lit(17, 2, 19, 2));

        assertEquals(YearRun.of(BOTHY), two);
        assertEquals(YearRun.of(BOTHY), YearRun.of(lit(19, 2, 17, 2)), "whichever is told first");
    }

    @Test
    void aSecondFireBurnsItsWoodAndWarmsTheMorning() {
        YearRun one = YearRun.of(BOTHY);
        YearRun two = YearRun.of(lit(17, 4, 5, 2));

        assertEquals(6 / 4.0, two.woodKg() / one.woodKg(), 1e-6);
        assertTrue(two.shortfallKWh() < one.shortfallKWh());
        assertTrue(two.hottestC() >= one.hottestC());
    }

    @Test
    void aFireOverMidnightBurnsOnInTheMonthAfter() {
        Design late = lit(17, 2, 23, 4);

        assertEquals(6 * 212 * 1.4, YearRun.of(late).woodKg(), 1e-6, "212 days in the seven months");
    }

    @ParameterizedTest
    @CsvSource({"18, 2", "16, 2", "17, 1", "20.9, 1", "15, 24"})
    void oneFireIsOutBeforeTheOtherIsLit(double againFromH, double againForH) {
        RefusedException refused = assertThrows(RefusedException.class, () -> lit(17, 4, againFromH, againForH));

        assertEquals(
                List.of("fire.litAgainFromH"),
                refused.faults().stream().map(Fault::path).toList());
    }

    @Test
    void halfATellingIsRefused() {
        RefusedException refused =
                assertThrows(RefusedException.class, () -> Changes.apply(BOTHY, "fire.litAgainFromH", "6"));

        assertEquals("fire.litAgainForH", refused.faults().get(0).path());
        assertEquals("missing", refused.faults().get(0).given());
    }

    @ParameterizedTest
    @CsvSource({"17, 6", "5, 17", "6, 18", "4.5, 16.5"})
    void theNamedChangeFindsAnHourOfItsOwn(String fromH, double againFromH) {
        Design twice = Changes.apply(Changes.apply(BOTHY, "fire.litFromH", fromH), "fire.aDay", "twice");
        Fire fire = twice.fire().orElseThrow();

        assertEquals(againFromH, fire.litAgainFromH().orElseThrow());
        assertEquals(2, fire.litAgainForH().orElseThrow());
        assertEquals(6, fire.litHoursADay());
        assertEquals("twice", Changes.current(twice, "fire.aDay"));
        assertEquals(
                1,
                Changes.apply(twice, "fire.aDay", "once")
                        .fire()
                        .orElseThrow()
                        .lightings()
                        .size());
    }
}

package loftcoil.engine.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import org.junit.jupiter.api.Test;

/** What a year takes, counted: the counts hang on nothing but the design, so that a slowdown of kind fails on any computer. */
class YearWorkTest {

    private static final Design BOTHY = Example.orchardBothy();
    private static final int DAYS = 365 + 31;

    /** A day more or less may come of another rounding. */
    private static final double MOST_TIMES = 1.1;

    private static YearMarch march(Design design, Pace pace) {
        return YearMarch.of(SystemPlan.of(design, pace, Heatings.of(design)));
    }

    private static void assertWork(Design design, int daysKept, int stepsKept, int looksKept) {
        YearMarch year = march(design, Pace.YEAR);
        String made = year.marchedDays() + " days, " + year.steps() + " steps, " + year.looks() + " looks";
        assertTrue(year.marchedDays() > daysKept / 2 && year.marchedDays() <= MOST_TIMES * daysKept, made);
        assertTrue(year.steps() > stepsKept / 2 && year.steps() <= MOST_TIMES * stepsKept, made);
        assertTrue(year.looks() > looksKept / 2 && year.looks() <= MOST_TIMES * looksKept, made);
    }

    @Test
    void theBothysYear() {
        assertWork(BOTHY, 186, 38_592, 51_174);
    }

    @Test
    void theYearOfAGentleFire() {
        assertWork(Changes.apply(BOTHY, "coil.heatKW", "0.8"), 206, 43_392, 57_205);
    }

    @Test
    void everyDayIsMarchedWhereItIsAskedFor() {
        assertEquals(DAYS, march(BOTHY, Pace.ROUGH.everyDay()).marchedDays());
    }
}

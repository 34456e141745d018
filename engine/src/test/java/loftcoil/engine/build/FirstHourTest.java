package loftcoil.engine.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.SafeBothy;
import loftcoil.engine.words.MeasuredText;
import org.junit.jupiter.api.Test;

/** What the first hour says, with a heat that is stated and with one worked out from the fire. */
class FirstHourTest {

    private static final FirstHour STATED = FirstHourMaker.of(Example.orchardBothy());
    private static final FirstHour FROM_FIRE = FirstHourMaker.of(SafeBothy.with("/coil/heatKW", "null"));

    @Test
    void rowsStandAtTheMinutesOfTheLog() {
        List<String> minutes =
                STATED.rows().stream().map(row -> row.minute().metric()).toList();
        assertEquals(
                List.of("0 min", "1 min", "2 min", "5 min", "10 min", "15 min", "20 min", "30 min", "45 min", "60 min"),
                minutes);
        LogForm form = LogMaker.of(Example.orchardBothy()).get(0);
        assertEquals(minutes, form.rows().stream().map(MeasuredText::metric).toList());
    }

    @Test
    void theLogOfYearsHoldsBothEndsOfTheCoil() {
        List<String> columns = LogMaker.of(Example.orchardBothy()).get(1).columns().stream()
                .map(column -> column.heading().metric())
                .toList();
        assertTrue(columns.containsAll(List.of("Coil outlet", "Coil inlet")), columns.toString());
    }

    @Test
    void aStatedHeatHasNoEnds() {
        STATED.rows().forEach(row -> assertEquals(row.low(), row.high()));
    }

    @Test
    void aHeatFromTheFireHasEnds() {
        FirstHour.Row last = FROM_FIRE.rows().get(FROM_FIRE.rows().size() - 1);
        assertTrue(last.low().coilOutC().value() < last.mid().coilOutC().value());
        assertTrue(last.mid().coilOutC().value() < last.high().coilOutC().value());
        assertTrue(FROM_FIRE.notes().stream().anyMatch(note -> note.metric().contains("In brackets")));
    }

    @Test
    void theFirstSlugIsToldWithItsBurn() {
        String outlet = STATED.signs().get(0).what().metric();
        assertTrue(outlet.contains("First warm to the hand after about 1 min"), outlet);
        assertTrue(outlet.contains("burns within ten seconds"), outlet);
    }

    @Test
    void aColdFootOfTheColdLegIsRight() {
        String foot = STATED.signs().stream()
                .filter(sign -> sign.where().code().equals("sign.cold-leg-foot"))
                .findFirst()
                .orElseThrow()
                .what()
                .metric();
        assertTrue(foot.startsWith("Stays as cold as it was, 10 °C"), foot);
    }

    @Test
    void eachWrongPictureSaysWhatToDo() {
        assertTrue(STATED.wrongPictures().size() >= 8);
        for (FirstHour.WrongPicture wrong : STATED.wrongPictures()) {
            assertTrue(wrong.seen().metric().length() > 10);
            assertTrue(wrong.means().metric().length() > 10);
            assertTrue(wrong.act().metric().length() > 10);
        }
    }

    @Test
    void handsAreToldFromCoolToBurning() {
        assertEquals("cold", HandWarmth.words(10));
        assertEquals("cold", HandWarmth.words(-60));
        assertEquals("neither warm nor cold", HandWarmth.words(31));
        assertEquals("warm", HandWarmth.words(HandWarmth.WARM_C));
        assertEquals("do not touch: it burns at once", HandWarmth.words(90));
    }
}

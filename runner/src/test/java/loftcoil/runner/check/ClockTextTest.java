package loftcoil.runner.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClockTextTest {

    @ParameterizedTest
    @CsvSource({
        "17, 17",
        "17 h, 17",
        "17.5, 17.5",
        "'17,5', 17.5",
        "17:30, 17.5",
        "18.30, 18.5",
        "18h30, 18.5",
        "1830, 18.5",
        "0630, 6.5",
        "6:30 pm, 18.5",
        "6:30 p.m., 18.5",
        "6.30pm, 18.5",
        "5 pm, 17",
        "5PM, 17",
        "5 am, 5",
        "12 am, 0",
        "12:15 am, 0.25",
        "12 pm, 12",
        "noon, 12",
        "midday, 12",
        "midnight, 0",
        "half past six, 6.5",
        "Half past six in the evening, 18.5",
        "a quarter to seven pm, 18.75",
        "quarter past 7, 7.25",
        "ten past five in the afternoon, 17.166666666666668",
        "20 to 6 pm, 17.666666666666668",
        "six o'clock, 6",
        "6 o’clock, 6",
        "five past six, 6.083333333333333",
        "10 to 24, 23.833333333333332",
        "at five in the evening, 17",
        "ten at night, 22",
        "two at night, 2",
        "12 at night, 0",
        "quarter to one pm, 12.75",
        "about 17:00, 17",
        "17:30 pm, 17.5",
        "24, 24",
        "0, 0",
        "0:00, 0",
        "five to midnight, 23.916666666666668",
        "23:55, 23.916666666666668",
        "11.55 pm, 23.916666666666668",
        "11:55 p.m., 23.916666666666668",
        "half past midnight, 0.5",
        "Ten past noon, 12.166666666666666",
        "a quarter to noon, 11.75",
        "twenty-five past six pm, 18.416666666666668",
        "twenty five to six in the evening, 17.583333333333332",
        "fifteen minutes past 5 pm, 17.25",
        "10 min to 6 pm, 17.833333333333332",
        "quarter of seven pm, 18.75",
        "five till six pm, 17.916666666666668",
        "six in the evening, 18",
    })
    void readsTimesAsPeopleWriteThem(String typed, double hours) {
        assertEquals(hours, ClockText.read(typed).orElseThrow().hours(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "25:00",
                "24:30",
                "18:75",
                "17:30 am",
                "25",
                "half to six",
                "half to midnight",
                "60 past noon",
                "past midnight",
                "60 past 6",
                "half past",
                "soon",
                "-5",
                "173",
                "5 6",
                "17::30",
                "1e1",
                "NaN",
                "half past thirty",
                "99 past five",
                "12345",
                "5 pm pm",
                "17 kW"
            })
    void whatIsNoTimeIsNone(String typed) {
        assertEquals(Optional.empty(), ClockText.read(typed));
    }

    @ParameterizedTest
    @CsvSource({
        "5 pm, 17:00",
        "17.5, 17:30",
        "5, 5:00 in the morning (for the other half of the day write 17:00)",
        "half past six, 6:30 in the morning (for the other half of the day write 18:30)",
        "5 am, 5:00",
        "12, 12:00",
        "midnight, 0:00",
    })
    void saysHowItWasUnderstood(String typed, String words) {
        assertEquals(words, ClockText.read(typed).orElseThrow().words());
    }

    @Property
    void everyMinuteOfADayIsReadAsAClockShowsIt(@ForAll @IntRange(max = 1439) int minute) {
        String shown = String.format("%d:%02d", minute / 60, minute % 60);
        assertEquals(minute / 60.0, ClockText.read(shown).orElseThrow().hours(), 1e-9);
    }

    @Property
    void anyTextIsReadOrRefused(@ForAll String typed) {
        assertTrue(ClockText.read(typed)
                .map(ClockText::hours)
                .map(h -> h >= 0 && h <= 24)
                .orElse(true));
    }
}

package loftcoil.runner.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Measures as a builder reads them. The US values are conversions by NIST Special Publication 811 (2008), appendix B.8: 1 in =
 * 25.4 mm, 1 US gal = 3.785412 L, 1 lb = 0.45359237 kg, 1 oz = 28.34952 g, 1 Btu (IT) = 1055.056 J, 1 psi = 6894.757 Pa, 1 lbf = 4.448222 N, 1 inch of water
 * (4 °C) = 249.082 Pa,
 * 1 lb/ft = 1.488164 kg/m, 1 lb/ft³ = 16.01846 kg/m³, 1 ft² h °F/Btu = 0.1761102 m² K/W.
 */
class MeasureTextTest {

    private static final MeasureText METRIC = new MeasureText(Units.METRIC);
    private static final MeasureText US = new MeasureText(Units.US);

    @ParameterizedTest
    @CsvSource({
        "LENGTH_M, 0, 0 in",
        "LENGTH_M, 0.0254, 1 in",
        "LENGTH_M, 0.3048, 1 ft",
        "LENGTH_M, 1.0, 3 ft 3-1/4 in",
        "LENGTH_M, 2.2, 7 ft 2-1/2 in",
        "LENGTH_M, -0.35, −1 ft 1-3/4 in",
        "LENGTH_M, 0.3047, 1 ft",
        "SMALL_LENGTH_MM, 812.8, 32 in",
        "SMALL_LENGTH_MM, 811, 31-15/16 in",
        "SMALL_LENGTH_MM, 22, 7/8 in",
        "SMALL_LENGTH_MM, 0.9, 0.035 in",
        "SMALL_LENGTH_MM, 40, 1-9/16 in",
        "SLOPE_MM_PER_M, 20.833333, 0.25 in/ft",
        "AREA_M2, 0.8, 8.6 ft²",
        "VOLUME_L, 3.785412, 1.00 US gal",
        "VOLUME_L, 120, 31.7 US gal",
        "MASS_KG, 144, 317 lb",
        "MASS_KG, 1.53, 3.4 lb",
        "SMALL_MASS_G, 141.747615, 5.0 oz",
        "MASS_KG_PER_H, 1.5, 3.3 lb/h",
        "MASS_KG_PER_M, 0.587, 0.39 lb/ft",
        "DENSITY_KG_PER_M3, 2500, 156 lb/ft³",
        "RESISTANCE_M2K_PER_W, 1, 5.7 ft² h °F/Btu",
        "FLOW_L_PER_MIN, 1.9, 0.50 US gal/min",
        "TEMP_C, 60, 140 °F",
        "TEMP_C, -17.8, 0 °F",
        "TEMP_DIFF_K, 10, 18 °F",
        "SMALL_AREA_CM2, 33, 5.1 in²",
        "FLOW_L_PER_MIN, 0, 0.00 US gal/min",
        "FLOW_L_PER_MIN, 0.19, 0.050 US gal/min",
        "FLOW_L_PER_MIN, 7.5, 2.0 US gal/min",
        "FLOW_L_PER_MIN, 3.78, 1.0 US gal/min",
        "FLOW_L_PER_MIN, 0.02, 0.005 US gal/min",
        "PRESSURE_KPA, 10, 1.5 psi",
        "PRESSURE_KPA, 5, 0.73 psi",
        "FLOW_LITRES_A_MINUTE, 1.9, 0.50 US gallons a minute",
        "POWER_KW, 2, 2.0 kW",
        "PRESSURE_KPA, 100, 14.5 psi",
        "TIME_S, 2, 2.0 s",
        "POWER_W, 2000, 2000 W",
        "ENERGY_KWH, 1, 1.0 kWh",
        "PRESSURE_PA, 249.08891, 1.00 inH₂O",
        "PRESSURE_PA, 21.3, 0.0855 inH₂O",
        "SUN_KWH_PER_M2_DAY, 4.5, 4.50 kWh/m² a day",
        "HARDNESS_MG_PER_L, 171.18, 10.0 gpg",
        "HEAT_W_PER_M, 10, 3.05 W/ft",
        "HEAT_W_PER_M2, 100, 9.29 W/ft²",
        "CLOCK_H, 17.5, 5:30 pm",
        "CLOCK_H, 0, 12 midnight",
        "CLOCK_H, 12, 12 noon",
        "CLOCK_H, 0.25, 12:15 am",
        "FORCE_N, 1412, 317 lbf",
        "LOAD_KN_PER_M2, 8.24, 172 lbf/ft²",
        "TIME_MIN, 45, 45 min",
        "COUNT, 6, 6",
        "ANGLE_DEG, 34, 34°",
        "PERCENT, 58, 58 %",
    })
    void usUnits(MeasureKind kind, double si, String shown) {
        assertEquals(shown, US.of(new Measure(si, kind)).replace('\u00a0', ' '));
    }

    @ParameterizedTest
    @CsvSource({
        "LENGTH_M, 0.75, 0.75 m",
        "LENGTH_M, 0.072, 0.072 m",
        "LENGTH_M, -0.2, −0.20 m",
        "MASS_KG, 1187.2, 1187 kg",
        "MASS_KG, 1.53, 1.53 kg",
        "ENERGY_KWH, 1696, 1696 kWh",
        "ENERGY_KWH, 71.3, 71.3 kWh",
        "TEMP_C, 97.8, 98 °C",
        "FLOW_L_PER_MIN, 1.9, 1.9 L/min",
        "ANGLE_DEG, 34, 34°",
        "TIME_H, 12.34, 12.3 h",
        "TIME_H, 348.1, 348 h",
        "COUNT, 6, 6",
    })
    void metricUnits(MeasureKind kind, double si, String shown) {
        assertEquals(shown, METRIC.of(new Measure(si, kind)).replace('\u00a0', ' '));
    }

    @ParameterizedTest
    @EnumSource(MeasureKind.class)
    void everyKindCanBeShownInBothUnits(MeasureKind kind) {
        for (MeasureText measures : new MeasureText[] {METRIC, US}) {
            String shown = measures.of(new Measure(12.5, kind));
            assertFalse(shown.isBlank() || shown.contains("null"), shown);
            // A unit that is a phrase may go on in the next line, behind its first word.
            boolean phrase = kind == MeasureKind.FLOW_LITRES_A_MINUTE;
            assertEquals(phrase, shown.contains(" "), shown);
            assertFalse(shown.matches("[\\d.]+ .*"), shown);
        }
    }

    @Test
    void unitsSwitchInsideASentence() {
        MeasuredText words =
                MeasuredText.of("At **", Measure.celsius(60), "** the tank holds ", Measure.litres(120), ".");
        assertEquals("At **60 °C** the tank holds 120 L.", METRIC.words(words).replace('\u00a0', ' '));
        assertEquals(
                "At **140 °F** the tank holds 31.7 US gal.", US.words(words).replace('\u00a0', ' '));
    }

    @Test
    void aUnitThatFollowsIsSaidOnceAndTwoNumbersAreConverted() {
        MeasuredText words = MeasuredText.of(
                "between ",
                Measure.celsius(25).withoutUnit(),
                " and ",
                Measure.celsius(45),
                ", 0.26 finer: ",
                Measure.kelvins(0.26).finer(1));
        assertEquals(
                "between 25 and 45 °C, 0.26 finer: 0.3 °C", METRIC.words(words).replace('\u00a0', ' '));
        assertEquals(
                "between 77 and 113 °F, 0.26 finer: 0.5 °F", US.words(words).replace('\u00a0', ' '));
    }

    /** What is told finer is told so for a reason, such as a tank a tenth below boiling: 208 and 208 °F would not show it. */
    @Test
    void aFinerTemperatureIsFinerInTheirsToo() {
        Measure boiling = Measure.celsius(98.83).finer(1);
        assertEquals("98.8 °C", METRIC.of(boiling).replace('\u00a0', ' '));
        assertEquals("209.9 °F", US.of(boiling).replace('\u00a0', ' '));
    }

    /** Whatever asks for them, no face writes digits of a flow in gallons, or tenths of hundreds of hours, that nobody can know. */
    @Test
    void aFinerFlowOrLongTimeIsWrittenNoFinerThanMeansSomething() {
        Measure flow = Measure.rounded(2.3456, MeasureKind.FLOW_L_PER_MIN, 2);
        assertEquals("2.35 L/min", METRIC.of(flow).replace('\u00a0', ' '));
        assertEquals("0.62 US gal/min", US.of(flow).replace('\u00a0', ' '));
        Measure hours = Measure.rounded(348.123, MeasureKind.TIME_H, 1);
        assertEquals("348 h", METRIC.of(hours).replace('\u00a0', ' '));
        assertEquals("348 h", US.of(hours).replace('\u00a0', ' '));
    }

    @Test
    void fewerDigitsAreNeverFewerThanNone() {
        assertEquals("144 kg", METRIC.of(Measure.kilograms(143.9).finer(-1)).replace('\u00a0', ' '));
        assertEquals("80 kg", METRIC.of(Measure.kilograms(80).finer(-1)).replace('\u00a0', ' '));
        assertEquals("317 lb", US.of(Measure.kilograms(143.9).finer(-1)).replace('\u00a0', ' '));
        assertEquals("23 US gal", US.of(Measure.litres(88).finer(-1)).replace('\u00a0', ' '));
    }

    @Test
    void aNameIsNoCommonMark() {
        MeasuredText words =
                MeasuredText.of("tap for ", new MeasuredText.Name("*cold* [sink] <b> & _x_ `y` \\"), ", **full bore**");
        assertEquals(
                "tap for *cold* [sink] &lt;b&gt; &amp; _x_ `y` \\, <strong>full bore</strong>",
                Prose.inline(METRIC.words(words)));
    }

    @Test
    void endsThatReadAlikeAreSaidOnce() {
        assertEquals("54 to 56 °C", between(METRIC, 54, 56));
        assertEquals("54 °C", between(METRIC, 54, 54.2));
        assertEquals(
                "1 ft to 2 ft",
                US.between(Measure.metres(0.3048), Measure.metres(0.6096)).replace('\u00a0', ' '));
    }

    private static String between(MeasureText measures, double low, double high) {
        return measures.between(Measure.celsius(low), Measure.celsius(high)).replace('\u00a0', ' ');
    }
}

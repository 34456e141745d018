package loftcoil.engine.drift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.clear.ClearSearch;
import loftcoil.engine.clear.ClearWords;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.DesignField;
import loftcoil.engine.design.DesignFields;
import loftcoil.engine.design.Dwelling;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.sheet.SheetText;
import loftcoil.engine.study.ProgressListener;
import loftcoil.engine.survey.Station;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever is shown in one kind of units shows none of the other: every figure, caution, field, way to clear a danger and sheet. */
class UnitsWalkTest {

    /** Without watts and kilowatt-hours: they are the same for every reader. */
    private static final Pattern METRIC =
            Pattern.compile("(?<![\\w./])\\d[\\d.,]* ?(?:mm/m|mm|cm|m|m²|cm²|mL|L|L/min|L/h|kg|kg/h|kg/s"
                    + "|kg/m|kg/m³|g|t|°C|K|Pa|kPa|kN/m²|N|mg/L|W/\\(m² K\\)|W/m|W/m²|m² K/W|litres|metres|litres a minute)"
                    + "(?![\\w/²³])");

    private static final Pattern US = Pattern.compile(
            "(?<![\\w./])\\d[\\d.,/-]* ?(?:ft|in|in/ft|ft²|in²|US gal|US gal/min|US gallons a minute|lb|lb/h|lb/min|lb/ft|oz|°F|Btu|Btu/h"
                    + "|psi|inH₂O|lbf|lbf/ft²|gpg)(?![\\w²³])");

    private static void purely(Units units, String text) {
        Pattern other = units == Units.US ? METRIC : US;
        List<String> found =
                other.matcher(text).results().map(MatchResult::group).toList();
        assertEquals(List.of(), found, text);
    }

    @ParameterizedTest
    @EnumSource(Dwelling.class)
    void aSheetAsTextIsWhollyInOneKindOfUnits(Dwelling dwelling) {
        Sheet sheet = Sheet.whole(dwelling.design(), 40);
        for (Units units : Units.values()) {
            SheetText.lines(sheet, units, caution -> List.of()).forEach(line -> purely(units, line));
        }
        String us = String.join("\n", SheetText.lines(sheet, Units.US, caution -> List.of()));
        assertTrue(US.matcher(us).find(), us);
    }

    @ParameterizedTest
    @EnumSource(Dwelling.class)
    void allWordsOfABuildSheetAreWhollyInOneKindOfUnits(Dwelling dwelling) {
        BuildSheet sheet = BuildSheet.of(dwelling.design());
        List<MeasuredText> words = Stream.of(
                        sheet.parts().parts().stream().flatMap(part -> Stream.of(part.what(), part.why())),
                        sheet.cautions().stream().map(caution -> caution.words()),
                        sheet.asks().stream().map(ask -> ask.words()),
                        sheet.figures().stream().map(figure -> figure.doubt()))
                .flatMap(each -> each)
                .toList();
        assertFalse(words.isEmpty());
        for (Units units : Units.values()) {
            words.forEach(text -> purely(units, units.words(text)));
        }
    }

    @Test
    void whatClearsDangersIsWhollyInOneKindOfUnits() {
        var clears = ClearSearch.of(Dwelling.ORCHARD_BOTHY.design(), ProgressListener.NONE);
        assertFalse(clears.dangers().isEmpty());
        for (Units units : Units.values()) {
            clears.dangers()
                    .forEach(danger -> ClearWords.all(danger).forEach(text -> purely(units, units.words(text))));
        }
    }

    @Test
    void everyFieldChangeAndStationIsWhollyInOneKindOfUnits() {
        List<String> said = Stream.of(
                        DesignFields.known().stream().flatMap(UnitsWalkTest::said),
                        Changes.names().stream()
                                .map(Changes::describe)
                                .flatMap(change -> Stream.concat(
                                        Stream.of(change.label(), change.allowed()), change.options().stream())))
                .flatMap(each -> each)
                .toList();
        assertTrue(said.size() > 300, () -> said.size() + " texts");
        said.forEach(text -> purely(Units.US, Units.US.said(text)));
        for (Units units : Units.values()) {
            Stream.of(Station.values())
                    .forEach(station -> purely(units, units.said(station.help().metric())));
        }
    }

    private static Stream<String> said(DesignField field) {
        return Stream.concat(
                Stream.of(
                        field.label(),
                        field.help(),
                        field.allowed(),
                        field.leftOut().orElse("")),
                field.options().stream());
    }

    /** A unit of a field or a change that no kind knows would stay metric without a word. */
    @Test
    void everyMetricUnitOfAFieldHasAKindAndSoAUsUnit() {
        TreeSet<String> unknown = Stream.concat(
                        DesignFields.known().stream().map(DesignField::unit),
                        Changes.names().stream()
                                .map(name -> Changes.describe(name).unit()))
                .filter(unit -> !unit.isEmpty() && MeasureKind.ofUnit(unit).isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(List.of("bearers", "degrees")), unknown);
    }

    @ParameterizedTest
    @EnumSource(MeasureKind.class)
    void aTypedNumberComesBackAsItWas(MeasureKind kind) {
        for (Units units : Units.values()) {
            assertEquals(37.25, units.metric(kind, units.shown(kind, 37.25)), 1e-9);
        }
    }

    @Test
    void whatWasTypedStaysAndASpanIsTurnedAtBothEnds() {
        assertEquals("32 to 230 °F", Units.US.said("0 to 110 °C"));
        assertEquals("“2.2 m”; allowed: −1,312 ft to 16,404 ft", Units.US.said("“2.2 m”; allowed: -400 to 5000 m"));
        assertEquals("set to 113 °F", Units.US.said("set to 45 °C"));
        assertEquals("EN1057 22x0.9", Units.US.said("EN1057 22x0.9"));
        assertEquals("5:30 pm", Units.US.of(new Measure(17.5, MeasureKind.CLOCK_H)));
        assertEquals("17:30", Units.METRIC.of(new Measure(17.5, MeasureKind.CLOCK_H)));
    }
}

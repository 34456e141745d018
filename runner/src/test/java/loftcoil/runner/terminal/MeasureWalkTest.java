package loftcoil.runner.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Roof;
import loftcoil.runner.show.SurveyView;
import loftcoil.runner.show.TryApp;
import org.junit.jupiter.api.Test;

/** A house measured in the terminal. */
class MeasureWalkTest extends TryApp {

    private ScriptedConsole walk(String... typed) {
        ScriptedConsole console = new ScriptedConsole(typed);
        new MeasureWalk(bench.survey(), console).walk();
        return console;
    }

    private Design own() {
        return DesignJson.read(bench.rebuild().own().json());
    }

    @Test
    void aStationIsAnsweredAndTakenOver() {
        // Outside: name, latitude, longitude, clock, a guessed altitude, no coldest night, a flat roof; then it becomes
        // the design.
        ScriptedConsole console = walk("1", "Byre", "-42.1", "147.2", "10", "~ 1000 ft", "", "flat", "take", "q");

        assertEquals("Byre", own().name());
        assertEquals(-42.1, own().site().latitudeDeg());
        assertEquals(304.8, own().site().altitudeM(), 1e-9);
        assertEquals(Optional.of(Roof.FLAT), own().site().roof());
        assertTrue(console.all().contains("It is your design now."), console.all());
        assertTrue(console.all().contains("4 values are yours, 3 assumed,"), console.all());
        assertEquals(0, console.left());
    }

    @Test
    void aRunThatMissesSaysByHowMuchAndWhatMayBeWrong() {
        ScriptedConsole console =
                walk("6", "yes", "up", "riser", "1.4 m", "1", "0", "22 mm × 1", "none", "flue", "", "take", "q");

        assertTrue(console.all().contains("The hot pipe ends 40 cm below the return port."), console.all());
        assertTrue(console.all().contains("A piece was forgotten that leads up, 40 cm in all."), console.all());
        assertTrue(console.all().contains("not for cutting"), console.all());
        assertEquals(0, console.left());
    }

    @Test
    void aRefusedAnswerSaysWhyAndTheStationGoesOn() {
        ScriptedConsole console = walk("1", "", "95", "", "", "300 m", "", "q");

        assertTrue(
                console.all().contains("Outside: the place, Latitude: 95; allowed: -90 to 90 degrees"), console.all());
        assertTrue(console.all().contains("1 value is yours"), "one refused answer holds no other back");
        assertEquals(46.2, own().site().latitudeDeg());
        assertEquals(0, console.left());
    }

    @Test
    void whatMeansNothingIsAnsweredWithTheList() {
        assertTrue(walk("99", "q").all().contains("“99” means nothing here."));
    }

    @Test
    void aPieceOrTapThatIsRefusedIsAskedAgainAndTheOthersStay() {
        ScriptedConsole pipes = walk(
                "6",
                "yes",
                "up",
                "riser",
                "1.4 m",
                "1",
                "0",
                "22 mm × 1",
                "none",
                "flue", //
                "up",
                "lost",
                "long",
                "1",
                "0",
                "",
                "",
                "", //
                "up",
                "found",
                "40 cm",
                "1",
                "0",
                "",
                "",
                "",
                "",
                "q");
        assertTrue(pipes.all().contains("The hot pipe ends at the return port, as it should."), pipes.all());
        assertEquals(0, pipes.left());

        ScriptedConsole taps = walk(
                "10", "yes", "two", "hose", "1", //
                "sink", "", "1.1 m", "15x1", "1.2 m", "2", "none", //
                "2.5 m", "28x1", "1", //
                "sink", "", "1.1 m", "15x1", "1.2 m", "2", "none", //
                "tub", "", "high", "15x1", "1.2 m", "2", "none", //
                "tub", "", "0.9 m", "15x1", "1.2 m", "2", "none", "", "q");
        assertEquals(0, taps.left());
        assertEquals(
                List.of("sink", "tub"),
                bench.survey().house().stations().get(9).taps().stream()
                        .map(SurveyView.TapLine::name)
                        .toList());
    }
}

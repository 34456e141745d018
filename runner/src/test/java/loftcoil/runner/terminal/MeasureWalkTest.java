package loftcoil.runner.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
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
        // Outside: name, latitude, longitude, clock, a guessed altitude, no coldest night; then it becomes the design.
        ScriptedConsole console = walk("1", "Byre", "-42.1", "147.2", "10", "~ 1000 ft", "", "take", "q");

        assertEquals("Byre", own().name());
        assertEquals(-42.1, own().site().latitudeDeg());
        assertEquals(304.8, own().site().altitudeM(), 1e-9);
        assertTrue(console.all().contains("It is your design now."), console.all());
        assertTrue(console.all().contains("3 values are yours, 3 assumed,"), console.all());
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
}

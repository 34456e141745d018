package loftcoil.runner.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Function;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.caution.Conduct;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Units;
import loftcoil.runner.progress.LessonProgress.Recall;
import loftcoil.runner.show.TryApp;
import loftcoil.runner.show.View;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class TerminalFaceTest extends TryApp {

    @Override
    @BeforeEach
    protected void open() {
        super.open();
        bench.choose(Units.METRIC);
    }

    private ScriptedConsole walk(String... typed) {
        ScriptedConsole console = new ScriptedConsole(typed);
        new TerminalFace(bench, TerminalFaceTest::written, console).walk();
        return console;
    }

    static Function<BuildSheet, String> written(String file) {
        if (!file.endsWith(".pdf")) {
            throw RefusedException.of(file, "neither .html nor .pdf", "a file name that ends in .html or .pdf");
        }
        return sheet -> "The build sheet of '" + sheet.design().name() + "' is in " + file + ".";
    }

    @Test
    void theBuildSheetIsWrittenAsAFileAndAWrongNameIsRefusedFirst() throws InterruptedException {
        bench.startBuild();
        for (int i = 0; i < 6000 && bench.building().state() != View.BuildState.DONE; i++) {
            Thread.sleep(10);
        }
        String all = walk("p", "sheet.doc", "p", "", "q").all();

        assertTrue(all.contains("sheet.doc: neither .html nor .pdf"), all);
        assertTrue(all.contains("The build sheet of 'Orchard bothy' is in build-sheet.pdf."), all);
    }

    @Test
    void wordsAreFoundAndWhatIsNotAnsweredIsListed() {
        ScriptedConsole console = walk("f", "tank", "", "o", "", "f", "zebra", "q");
        assertTrue(console.all().contains("Words to find: "), console.all());
        assertTrue(console.all().contains("  1  "), console.all());
        assertTrue(console.all().contains("Number to go there, or Enter to stay: "), console.all());
        assertTrue(console.all().contains("Nothing in the course has all of these words."), console.all());
    }

    @Test
    void aWholeLessonIsWalkedAndItsOutcomesAreSaid() {
        // Prose, danger, guess, Java, question, choice in the order of seed 7, drawing, Java with a plot, decision;
        // then out.
        ScriptedConsole console =
                ScriptedConsole.on(60, 20, List.of("", "", "5 kg/m3", "", "1 Pa", "", "1", "2", "", "", "2.5 m", "q"));
        new TerminalFace(bench, TerminalFaceTest::written, console).walk();
        console.assertAllReadable();

        String all = console.all().replaceAll("\\s+", " ");
        assertTrue(all.contains("DANGER: Never light a fire under a dry coil."), all);
        assertTrue(all.contains("Noted: 5 kg/m"), all);
        assertTrue(all.contains("= 16.507"), all);
        assertTrue(all.contains("You guessed 5 kg/m"), all);
        assertTrue(all.contains("Not yet"), all);
        assertTrue(all.contains("Not that one."), all);
        assertTrue(all.contains("It floats."), all);
        assertTrue(all.contains("Plot: Flow against height"), all);
        assertTrue(all.contains("It is in your design now."), all);
        assertTrue(all.contains("All is kept."), all);
        assertEquals(0, console.left());
    }

    @Test
    void theEndOfInputLeavesAndKeepsTheWork() {
        walk("", "", "5 kg/m3");

        View.LessonLine line = bench.course().lessons().get(0);
        assertEquals(0, line.done());
        assertEquals("guess", bench.lesson("01-try").at());
    }

    @Test
    void javaCanBeEditedAndProblemsStandWithTheirLine() {
        ScriptedConsole console = walk("", "", "", "e", "int a = ;", "e", "40 + 2", "o", "q");

        assertTrue(console.all().contains("line 1, column"), console.all());
        assertTrue(console.all().contains("= 42"), console.all());
        assertTrue(console.all().contains("   3 | cold - warm"), console.all());
    }

    @Test
    void puttingTheLessonsTextBackCanBeUndone() {
        ScriptedConsole console = walk("", "", "", "e", "int a = ;", "o", "o", "q");

        assertTrue(console.all().contains("The lesson's text is back; o again brings yours."), console.all());
        int back = console.all().indexOf("Your text is back.");
        assertTrue(back > 0 && console.all().indexOf("   1 | int a = ;", back) > 0, console.all());
    }

    @Test
    void javaWrittenAsAnAnswerIsThereForTheNextTry() {
        // To the second lesson's question, wrong once, then its text is offered again.
        ScriptedConsole console = walk("w", "2", "", "s", "e", "int x = 20; 2 * x", "e", "int x = 21; 2 * x", "q");

        String all = console.all();
        assertTrue(all.contains("Not yet"), all);
        assertTrue(all.contains("int x = 20; 2 * x"), all);
        assertTrue(all.contains("Right"), all);
    }

    @Test
    void aFaultySystemIsMendedLineByLine() {
        ScriptedConsole console = walk(
                "w",
                "2",
                "",
                "s",
                "",
                "raise it",
                "tank.baseM = 12",
                "loop.laggingMm = 60",
                "judge",
                "back",
                "vent.valve = b",
                "loop.valves = 1",
                "tank.baseM = 2,2",
                "?",
                "judge",
                "q");

        String all = console.all();
        assertTrue(all.contains("Find the fault: a cold tank"), all);
        assertTrue(all.contains("The loop does not circulate"), all);
        assertTrue(all.contains("−1 to 3 m"), all);
        assertTrue(all.contains("a none, b a valve"), all);
        assertTrue(all.contains("“raise it” is no change"), all);
        assertTrue(all.contains("tank.baseM: “12”; allowed"), all);
        assertTrue(all.contains("It does not do what it should yet."), all);
        assertTrue(all.contains("Heat does not push down."), all);
        assertTrue(all.contains("Valve in the open vent: a valve"), all);
        assertTrue(all.contains("“loop.valves = 1” is no change"), all);
        assertTrue(all.contains("Tank base above the floor: 2.2 m (as found -0.6 m)"), all);
        assertTrue(all.contains("It works."), all);
        assertTrue(all.contains("without changing “Valve in the open vent”"), all);
    }

    @Test
    void theDraggedValueCanBeSetAndIsHeldToItsRange() {
        ScriptedConsole console =
                walk("", "", "", "s", "", "", "", "v", "2,5", "v", "8 ft", "v", "99", "v", "high", "v", "2 kg", "q");

        assertTrue(console.all().contains("tank at 2.5"), console.all());
        assertTrue(console.all().contains("99; allowed: 1 to 3 m"), console.all());
        assertTrue(console.all().contains("“high”"), console.all());
        assertTrue(console.all().contains("the unit does not fit"), console.all());
    }

    @Test
    void helpTheDesignAndTheLessonsAreAtHandEverywhere() {
        ScriptedConsole console = walk("?", "d", "w", "9", "w", "2", "", "", "q");

        String all = console.all();
        assertTrue(all.contains("q      leave; all is kept"), all);
        assertTrue(all.contains("Heights above the floor"), all);
        assertTrue(all.contains("There is no lesson 9; the list goes from 1 to 2."), all);
        assertTrue(all.contains("More  (about 3 minutes)"), all);
    }

    @Test
    void termsCanBeLookedUpAtEveryPrompt() {
        String all = walk("t", "DRIV", "t", "zebra", "t", "", "q").all();
        assertTrue(all.contains("drive: what pushes the water round. (first in: A first try)"), all);
        assertTrue(all.contains("No term has “zebra” in it; t and Enter lists all."), all);
        assertTrue(all.contains("bore: the inside diameter of a pipe."), all);
    }

    @Test
    void theTableOfConductIsToldAtEveryPrompt() {
        String all = walk("!", "q").all().replaceAll("\\s+", " ");
        for (Conduct rule : Conduct.values()) {
            assertTrue(
                    all.contains("- " + rule.when().metric() + ": " + rule.act().metric()), all);
        }
        assertTrue(all.contains(Conduct.worth().metric()), all);
    }

    @Test
    void whatMeansNothingIsNamedBeforeTheList() {
        String all = walk("lots", "q").all();
        assertTrue(all.contains("“lots” means nothing at this prompt."), all);
        assertTrue(all.contains("q      leave; all is kept"), all);
    }

    @Test
    void goingBackShowsTheStepBefore() {
        ScriptedConsole console = walk("", "b", "q");

        long shown = console.all()
                .lines()
                .filter(line -> line.contains("Warm water is lighter than cold."))
                .count();
        assertEquals(2, shown);
    }

    @Test
    void theRefresherIsWalkedAndAFadedLessonIsOpened() {
        // Not readable, then wrong; a choice by its number; not remembered; then the faded lesson, and out.
        ScriptedConsole console = walk("r", "much", "1 Pa", "1", "", "1", "q");

        String all = console.all();
        assertTrue(all.contains("0 of 3 questions answered."), all);
        assertTrue(all.contains("One lesson has faded."), all);
        assertTrue(all.contains("  1  A first try  (6 min; 2 of 3 missed)"), all);
        assertEquals(Recall.FADED, bench.course().lessons().get(0).recall());
        assertEquals(0, console.left());
    }

    @Test
    void aRebuildIsTriedShownAndTakenOver() {
        ScriptedConsole console =
                walk("n", "list", "tank.baseM = 99", "tank.baseM = 2.6", "show", "take", "old", "1", "q", "q");

        String all = console.all().replaceAll("\\s+", " ");
        assertTrue(all.contains("tank.baseM = 2.2 m: Tank base above the floor"), all);
        assertTrue(all.contains("tank.baseM: 99"), all);
        assertTrue(all.contains("Each change by itself"), all);
        assertTrue(all.contains("kept in your folder as design-before-"), all);
        assertTrue(all.contains("(design-before-"), all);
        assertEquals(
                "2.6", Changes.current(DesignJson.read(bench.rebuild().own().json()), "tank.baseM"));
        assertEquals(0, console.left());
    }

    @Test
    void whatWouldClearTheDangersIsSearchedAndCanBeStopped() {
        ScriptedConsole console = walk("c", "s", "q");
        String all = console.all();
        assertTrue(all.contains("Enter looks again, s stops: "), all);
        assertTrue(all.contains("Stopped."), all);
        assertEquals(0, console.left());
    }

    /** A tap without a mixing valve scalds; with no heat in the coil nothing else hurts, so that the search is short. */
    @Test
    void whatWouldClearADangerIsTakenByItsNumber() throws InterruptedException {
        bench.designs().open(DesignJson.write(Example.orchardBothy().withCoilHeatKW(0)), "cold.json");
        View.Clears clears = bench.searchClears();
        while (clears.state() == View.ClearState.SEARCHING) {
            Thread.sleep(20);
            clears = bench.clears();
        }
        String all = walk("c", "99", "1", "g", "undo", "q", "q").all().replaceAll("\\s+", " ");

        assertTrue(all.contains("“99” is no number of these."), all);
        assertTrue(all.contains("It is in your design now: "), all);
        assertTrue(all.contains("Gone with it: "), all);
        assertTrue(all.contains("Type g and then undo to take it back."), all);
        assertTrue(all.contains("Taken back: "), all);
    }
}

package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import loftcoil.runner.progress.AnswerState;
import loftcoil.runner.progress.FolderException;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.session.SharedSession;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CourseAppTest extends TryApp {

    private static final String LESSON = "01-try";
    private static final String WEIGH =
            """
            double cold = Water.densityKgPerM3(10);
            double warm = Water.densityKgPerM3(60);
            cold - warm
            """;

    private void reopen() {
        bench.close();
        open();
    }

    private <S extends View.Step> S step(String stepId, Class<S> kind) {
        return bench.lesson(LESSON).steps().stream()
                .filter(step -> step.id().equals(stepId))
                .map(kind::cast)
                .findFirst()
                .orElseThrow();
    }

    private String source(String stepId) {
        return step(stepId, View.Snippet.class).source();
    }

    @Test
    void aSnippetGivesTheValueOfItsLastLine() {
        View.Run run = bench.run(LESSON, "weigh", WEIGH, Map.of());

        assertEquals(View.RunState.DONE, run.state(), run.words());
        // IAPWS SR6-08(2011): 999.7019 - 983.1953 kg/m3.
        assertEquals(16.507, Double.parseDouble(run.value()), 0.001);
        assertTrue(step("weigh", View.Snippet.class).ran());
    }

    @Test
    void aSnippetRunsThoseAboveItFirst() {
        View.Run run = bench.run(LESSON, "lift", source("lift"), Map.of("tankBaseM", 2.5));

        assertEquals(View.RunState.DONE, run.state(), run.words());
        assertTrue(run.printed().startsWith("tank at 2.5, lighter by 16.5"), run.printed());
        assertEquals(1, run.charts().size());
        assertTrue(run.charts().get(0).svg().contains("<svg"));
        assertEquals(
                List.of("Tank base above the floor [m]", "forward [L/min]").size(),
                run.charts().get(0).columns().size());
    }

    @Test
    void aDraggedValueOutsideItsRangeIsHeldToTheRange() {
        View.Run run = bench.run(LESSON, "lift", source("lift"), Map.of("tankBaseM", 99.0));

        assertTrue(run.printed().startsWith("tank at 3.0,"), run.printed());
    }

    @Test
    void aCoarsePictureIsDrawnFromValuesNearBy() {
        assertEquals(List.of(), bench.coarse(LESSON, "lift", source("lift"), Map.of("tankBaseM", 2.5)));

        View.Run run = bench.run(LESSON, "lift", source("lift"), Map.of("tankBaseM", 2.5));

        List<View.Picture> same = bench.coarse(LESSON, "lift", source("lift"), Map.of("tankBaseM", 2.5));
        assertEquals(plain(run.charts()), plain(same));
        assertEquals(
                1,
                bench.coarse(LESSON, "lift", source("lift"), Map.of("tankBaseM", 2.8))
                        .size());
        assertEquals(List.of(), bench.coarse(LESSON, "lift", source("lift") + " ", Map.of("tankBaseM", 2.5)));
    }

    /** Charts without the number that each gets of its own. */
    private static List<String> plain(List<View.Picture> charts) {
        return charts.stream()
                .map(chart -> chart.svg().replaceAll("lc-chart-\\d+", "lc-chart"))
                .toList();
    }

    @Test
    void whatIsRunAheadLeavesTheValueAtWhichTheSliderStands() {
        bench.run(LESSON, "lift", source("lift"), Map.of("tankBaseM", 2.5));

        bench.ahead(LESSON, "lift", source("lift"), Map.of("tankBaseM", 3.0), Map.of("tankBaseM", 2.5));

        assertEquals("2.5", bench.run(LESSON, "weigh", "tankBaseM", Map.of()).value());
    }

    @Test
    void aDraggedRunIsEqualToOneThatWasNotDragged() {
        for (double value : new double[] {1.5, 3.0, 2.5}) {
            bench.run(LESSON, "lift", source("lift"), Map.of("tankBaseM", value));
        }
        View.Run dragged = bench.run(LESSON, "lift", source("lift"), Map.of("tankBaseM", 2.0));
        reopen();
        View.Run fresh = bench.run(LESSON, "lift", source("lift"), Map.of("tankBaseM", 2.0));

        assertEquals(plain(fresh.charts()), plain(dragged.charts()));
        assertEquals(fresh.printed(), dragged.printed());
        assertEquals(fresh.value(), dragged.value());
    }

    @Test
    void javaAboveThatFailsIsNamed() {
        bench.run(LESSON, "weigh", "double cold = nothing;", Map.of());
        reopen();

        View.Run run = bench.run(LESSON, "lift", source("lift"), Map.of());

        assertTrue(run.words().contains("weigh"), run.words());
    }

    @Test
    void oneStopWhileJavaAboveRunsStopsAllOfIt() throws Exception {
        Path begun = folder.resolve("begun");
        bench.keep(LESSON, "weigh", "new java.io.File(\"" + begun + "\").createNewFile();\nwhile (true) { }");
        CompletableFuture<View.Run> run =
                CompletableFuture.supplyAsync(() -> bench.run(LESSON, "lift", "while (true) { }", Map.of()));
        while (!Files.exists(begun) && !run.isDone()) {
            TimeUnit.MILLISECONDS.sleep(5);
        }
        bench.stop();

        assertEquals(View.RunState.STOPPED, run.get().state());
        assertTrue(
                run.get().words().startsWith("Ended, as you asked."), run.get().words());
        bench.keep(LESSON, "weigh", WEIGH);
        View.Run after =
                bench.run(LESSON, "lift", step("lift", View.Snippet.class).original(), Map.of());
        assertEquals(View.RunState.DONE, after.state(), after.words());
    }

    @Test
    void anEditedSnippetIsThereAgainAfterReopening() {
        bench.run(LESSON, "weigh", "int mine = 3;", Map.of());
        reopen();

        assertEquals("int mine = 3;", source("weigh"));
        assertEquals("weigh", bench.lesson(LESSON).at());
        assertEquals(
                step("weigh", View.Snippet.class).original(),
                bench.putBack(LESSON, "weigh").source());
    }

    @Test
    void problemsAreSaidWithTheirLine() {
        View.Run run = bench.run(LESSON, "weigh", "int a = 1;\nint b = ;\n", Map.of());

        assertEquals(View.RunState.PROBLEMS, run.state());
        assertEquals(2, run.problems().get(0).line());
    }

    @Test
    void anEngineRefusalIsSaidWithoutClassNames() {
        View.Run run = bench.run(LESSON, "weigh", "Water.densityKgPerM3(200)", Map.of());

        assertEquals(View.RunState.THREW, run.state());
        assertTrue(run.words().contains("0 to 110"), run.words());
        assertFalse(run.words().contains("Exception"), run.words());
    }

    @Test
    void aPredictionIsNotedAndComparedAfterTheRun() {
        View.Reply noted = bench.answer(LESSON, "guess", "5 g/L");
        View.Run run = bench.run(LESSON, "weigh", WEIGH, Map.of());

        assertEquals(AnswerState.NOTED, noted.state(), noted.words());
        assertEquals(1, run.predictions().size());
        assertTrue(run.predictions().get(0).contains("5 g/L"), run.predictions().get(0));
        assertTrue(run.predictions().get(0).contains("17 kg"), run.predictions().get(0));
        View.Run changed = bench.run(LESSON, "weigh", WEIGH.replace("60", "90"), Map.of());
        assertEquals(List.of(), changed.predictions(), "the guess was not made of these numbers");
    }

    @Test
    void aRightAnswerInAnotherUnitIsRight() {
        double pascals = headPa();

        View.Reply reply = bench.answer(LESSON, "head", pascals / 1000 + " kPa");

        assertEquals(AnswerState.RIGHT, reply.state(), reply.words());
        assertTrue(reply.source().contains("SR6-08"), reply.source());
        assertEquals(1, bench.course().lessons().get(0).done());
    }

    /** Handbook densities at 40 and 60 °C, 992.22 and 983.20 kg/m3, and the height the question gives. */
    private double headPa() {
        String text = step("head", View.Question.class).markdown();
        double heightM = Double.parseDouble(text.replaceAll("(?s).*columns of ([0-9.]+) m.*", "$1"));
        return 9.80665 * heightM * (992.22 - 983.20);
    }

    @Test
    void threeWrongAnswersBringTheWorkedSolution() {
        View.Reply first = bench.answer(LESSON, "head", "1 Pa");
        View.Reply unread = bench.answer(LESSON, "head", "no idea");
        bench.answer(LESSON, "head", "2 Pa");
        View.Reply third = bench.answer(LESSON, "head", "3 Pa");

        assertEquals("", first.workedMarkdown());
        assertEquals(AnswerState.UNREAD, unread.state());
        assertEquals(3, third.tries().wrong());
        assertTrue(third.workedMarkdown().contains("Pa"), third.workedMarkdown());
    }

    @Test
    void aTypicalMistakeGetsItsOwnHint() {
        View.Reply reply = bench.answer(LESSON, "head", headPa() / 9.80665 + " Pa");

        assertEquals(AnswerState.WRONG, reply.state());
        assertTrue(reply.hintMarkdown().contains("gravity"), reply.hintMarkdown());
    }

    @Test
    void aWrongDimensionIsToldAsSuch() {
        View.Reply reply = bench.answer(LESSON, "head", "2 L/min");

        assertEquals(AnswerState.UNREAD, reply.state());
        assertTrue(reply.words().contains("volume flow"), reply.words());
        assertTrue(reply.words().contains("pressure"), reply.words());
    }

    @Test
    void aDecisionGoesIntoTheDesignInAnyUnitAndStays() {
        View.Reply reply = bench.answer(LESSON, "tank", "9 ft");
        reopen();

        assertEquals(AnswerState.DECIDED, reply.state(), reply.words());
        assertEquals("2.7432 m", step("tank", View.Question.class).current());
        assertTrue(
                bench.design().picture().says().contains("tank base 2.74 m"),
                bench.design().picture().says());
        View.Run run = bench.run(LESSON, "weigh", "design.tank().baseM()", Map.of());
        assertEquals("2.7432", run.value());
    }

    @Test
    void aSliderStartsAtWhatWasDecidedThoughNoStopIsThere() {
        bench.answer(LESSON, "tank", "2.6 m");

        assertEquals(2.6, step("lift", View.Snippet.class).drag().orElseThrow().start());
        View.Run run = bench.run(LESSON, "lift", source("lift"), Map.of());
        assertTrue(run.printed().startsWith("tank at 2.6,"), run.printed());
    }

    @Test
    void oneValueTriedAfterAnotherLeavesNothingOfTheFirstInThePipes() {
        bench.answer(LESSON, "tank", "2.2 m");
        String once = sheetOf();
        bench.answer(LESSON, "tank", "0.2 m");
        bench.answer(LESSON, "tank", "2 ft");
        bench.answer(LESSON, "tank", "2.2 m");

        assertEquals(once, sheetOf());
    }

    private String sheetOf() {
        return bench.run(LESSON, "weigh", "design.hotLegs() + \" \" + design.coldLegs()", Map.of())
                .value();
    }

    @Test
    void aDecisionThatStopsTheLoopIsToldAtOnce() {
        View.Reply sunk = bench.answer(LESSON, "tank", "-1 m");
        assertEquals(AnswerState.DECIDED, sunk.state(), sunk.words());
        View.Safety told = sunk.stands().orElseThrow().safety();
        assertEquals("danger", told.level());
        assertTrue(told.findings().stream().anyMatch(finding -> finding.code().equals("LC-TANK-LOW")), told.toString());

        View.Reply high = bench.answer(LESSON, "tank", "2.2 m");
        assertTrue(
                high.stands().orElseThrow().safety().findings().stream()
                        .noneMatch(finding -> finding.code().equals("LC-TANK-LOW")),
                high.toString());
    }

    @Test
    void aDecisionTheDesignCannotTakeIsRefusedWithTheRange() {
        View.Reply reply = bench.answer(LESSON, "tank", "900 m");

        assertEquals(AnswerState.UNREAD, reply.state());
        assertTrue(reply.hintMarkdown().contains("allowed"), reply.hintMarkdown());
        assertEquals("2.2 m", step("tank", View.Question.class).current());
    }

    @Test
    void aDamagedDesignIsSetAsideAndTold() throws IOException {
        bench.close();
        Files.writeString(folder.resolve("design.json"), "{\"name\": 3");
        open();

        assertTrue(bench.course().notices().stream().anyMatch(notice -> notice.contains("design.json")));
        assertEquals("{\"name\": 3", Files.readString(folder.resolve("design.damaged-1.json")));
    }

    @Test
    void javaIsAskedForAndItsLastValueCounts() {
        assertEquals(
                AnswerState.WRONG,
                bench.answer("02-more", "twice", "int x = 20; 2 * x").state());
        assertEquals(
                AnswerState.RIGHT,
                bench.answer("02-more", "twice", "int x = 21; 2 * x").state());
    }

    @Test
    void javaThatGivesNoNumberIsToldWhyInPlainWords() {
        String text = bench.answer("02-more", "twice", "\"42\"").words();
        assertTrue(text.contains("of type String, not a number"), text);
        String nothing =
                bench.answer("02-more", "twice", "System.out.println(42);").words();
        assertTrue(nothing.contains("has no value"), nothing);
        View.Reply broken = bench.answer("02-more", "twice", "int x = 21;\n2 * ;");
        assertTrue(broken.words().contains("Line 2: "), broken.words());
        assertFalse(broken.words().contains("allowed"), broken.words());
        assertEquals(0, broken.tries().wrong());
    }

    @Test
    void javaThatNeverEndsIsToldInPlainWords(@TempDir Path apart) {
        try (CourseApp soon =
                CourseApp.open(TryCourse.read(), ProgressFile.open(apart), SharedSession::lentWithShortLimits, 7)) {
            String endless = soon.answer("02-more", "twice", "while (true) { }").words();
            assertTrue(endless.contains("a loop that never ends"), endless);
        }
    }

    @Test
    void commonSlipsInJavaAreToldInPlainWords() {
        View.Run pattern = bench.run(LESSON, "weigh", "System.out.printf(\"%d\", 3.5);", Map.of());
        assertTrue(pattern.words().contains("the pattern does not fit"), pattern.words());
        View.Run none = bench.run(LESSON, "weigh", "List.of().stream().findFirst().get()", Map.of());
        assertTrue(none.words().contains("nothing here to take"), none.words());
        View.Run other = bench.run(LESSON, "weigh", "throw new IllegalStateException(\"mine\");", Map.of());
        assertTrue(
                other.words().contains("IllegalStateException") && other.words().contains("mine"), other.words());
    }

    @Test
    void whatALearnerWritesCannotBendTheReference() {
        bench.run(LESSON, "weigh", "class Water { static double densityKgPerM3(double t) { return 1; } }", Map.of());

        assertEquals(
                AnswerState.RIGHT,
                bench.answer(LESSON, "head", headPa() + " Pa").state());
    }

    @Test
    void lessonsDoNotShareNames() {
        bench.run(LESSON, "weigh", "int onlyHere = 1;", Map.of());

        assertEquals(
                View.RunState.PROBLEMS,
                bench.run("02-more", "other", "onlyHere + 1", Map.of()).state());
    }

    @Test
    void aFaultySystemIsShownAsFoundAndAsMoved() {
        MendView found = bench.mend("02-more", "low-tank", "");
        assertTrue(found.circulates().contains("does not circulate"), found.circulates());
        assertEquals("-0.6", lever(found, "tank.baseM").value());
        assertEquals(List.of("none", "a valve"), lever(found, "vent.valve").options());
        assertEquals("0.00 L/min", found.figures().get(0).value());
        MendView raised = bench.mend("02-more", "low-tank", "tank.baseM = 2.2");
        assertTrue(raised.circulates().startsWith("The loop circulates"), raised.circulates());
        assertEquals("2.2", lever(raised, "tank.baseM").value());
        assertEquals("-0.6", lever(raised, "tank.baseM").found());
        assertFalse(raised.picture().orElseThrow().svg().isEmpty());
        MendView refused = bench.mend("02-more", "low-tank", "tank.baseM = 12");
        assertTrue(refused.picture().isEmpty() && refused.refused().get(0).contains("-1 to 3 m"));
        assertThrows(UnknownNameException.class, () -> bench.mend("02-more", "twice", ""));
    }

    private static MendView.Lever lever(MendView view, String change) {
        return view.levers().stream()
                .filter(each -> each.change().equals(change))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aFaultySystemIsJudgedByWhatItDoes() {
        View.Reply lagged = bench.answer("02-more", "low-tank", "loop.laggingMm = 60");
        assertEquals(AnswerState.WRONG, lagged.state());
        assertTrue(lagged.hintMarkdown().contains("**Not yet:** The loop circulates."), lagged.hintMarkdown());
        assertTrue(lagged.hintMarkdown().contains("Heat does not push down."), lagged.hintMarkdown());
        assertEquals(
                AnswerState.UNREAD,
                bench.answer("02-more", "low-tank", "raise it").state());
        View.Reply raised = bench.answer("02-more", "low-tank", "tank.baseM = 2");
        assertEquals(AnswerState.RIGHT, raised.state());
        assertEquals("It works.", raised.words());
        assertEquals("Raise it.", raised.workedMarkdown());
        reopen();
        View.Question again = (View.Question) bench.lesson("02-more").steps().stream()
                .filter(each -> each.id().equals("low-tank"))
                .findFirst()
                .orElseThrow();
        assertEquals("mend", again.form());
        assertEquals("tank.baseM = 2", again.reply().orElseThrow().answer());
        assertEquals("It works.", again.reply().orElseThrow().words(), "said again as it was said");
    }

    @Test
    void whereTheFolderCannotTakeTheWorkItGoesOnInMemoryAndIsSavedLater() throws IOException {
        // A folder where the new file would be written: it cannot be, whoever runs the test.
        Path inTheWay = Files.createDirectories(folder.resolve("progress.json.new/in the way"));
        Files.createDirectories(folder.resolve("design.json.new/in the way"));
        assertEquals(
                View.RunState.DONE,
                bench.run(LESSON, "weigh", "1 + 1", Map.of()).state());
        assertEquals(AnswerState.DECIDED, bench.answer(LESSON, "tank", "2.6 m").state());
        assertTrue(
                bench.unsaved().orElseThrow().contains("progress.json"),
                bench.unsaved().toString());
        assertThrows(FolderException.class, () -> bench.save());
        assertEquals("1 + 1", source("weigh"));

        Files.delete(inTheWay);
        Files.delete(folder.resolve("design.json.new/in the way"));
        Files.delete(folder.resolve("progress.json.new"));
        Files.delete(folder.resolve("design.json.new"));
        bench.save();
        assertTrue(bench.unsaved().isEmpty());
        reopen();
        assertEquals("1 + 1", source("weigh"));
        assertEquals("2.6 m", step("tank", View.Question.class).current());
    }

    @Test
    void anUnknownLessonOrStepIsRefusedByName() {
        assertTrue(assertThrows(UnknownNameException.class, () -> bench.lesson("99-none"))
                .getMessage()
                .contains("99-none"));
        assertTrue(assertThrows(UnknownNameException.class, () -> bench.run(LESSON, "none", "1", Map.of()))
                .getMessage()
                .contains("none"));
    }

    @Test
    void aYearThatCannotBeIsSaidInTheVerdictAndTheRestIsJudged() {
        bench.survey().tell(Map.of("site.latitudeDeg", "-42.1"), false);
        bench.survey().take();

        View.Safety safety = bench.safety();

        assertTrue(safety.open().startsWith("The year could not be judged: "), safety.open());
        assertTrue(safety.open().contains("more of the kind"), safety.open());
        assertEquals(bench.design().safety().findings(), safety.findings());
    }

    @Test
    void aDecisionAnswersWithFiguresBeforeAndAfterAndWithItsDanger() {
        View.Reply reply = bench.answer(LESSON, "tank", "-1 m");

        View.Effect quick = reply.stands().orElseThrow().effect().orElseThrow();
        assertTrue(reply.words().contains("This is dangerous"), reply.words());
        assertTrue(quick.raised().stream().anyMatch(found -> found.code().equals("LC-TANK-LOW")), quick.toString());
        assertEquals("circulates", quick.lines().get(0).label());
        assertEquals(
                List.of("yes", "no"),
                List.of(quick.lines().get(0).before(), quick.lines().get(0).after()));
        assertTrue(quick.moved().get(0).startsWith("Cold pipe “"), quick.moved().toString());
        assertTrue(quick.open().contains("not judged yet"), quick.open());

        View.Effect whole = bench.effect();
        assertEquals(quick.number(), whole.number());
        assertEquals("", whole.open());
        assertTrue(
                whole.lines().stream()
                        .anyMatch(line -> line.label().equals("hottest water in the tank")
                                && !line.before().isEmpty()
                                && !line.after().isEmpty()),
                whole.lines().toString());
    }

    @Test
    void aHouseOfWhichNothingIsMeasuredHasTheLatestDecision() {
        assertEquals("borrowed", origin("tank.baseM"));

        bench.answer(LESSON, "tank", "2.6 m");

        assertEquals("yours", origin("tank.baseM"));
    }

    private String origin(String path) {
        return bench.survey().house().stations().stream()
                .flatMap(station -> station.questions().stream())
                .filter(question -> question.path().equals(path))
                .map(question -> question.origin())
                .findFirst()
                .orElseThrow();
    }
}

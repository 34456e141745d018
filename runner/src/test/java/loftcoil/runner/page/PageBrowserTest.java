package loftcoil.runner.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import loftcoil.engine.caution.Conduct;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** A learner's ways through the page in a real browser, with a bench behind it that only pretends. */
class PageBrowserTest extends BrowserCase {

    private final FakeApp bench = new FakeApp();
    private PageServer server;

    @BeforeEach
    void open() throws Exception {
        server = PageServer.open(bench, PageSetup.anyPort());
        browser.size(1366, 768);
        browser.colours("light");
        browser.troubles();
        browser.open(server.address());
    }

    @AfterEach
    void close() {
        server.close();
    }

    @Test
    void aLessonIsReadAndTheAddressStaysClean() {
        assertEquals("Warm water is lighter · Loftcoil", browser.driver().getTitle());
        assertFalse(
                browser.driver().getCurrentUrl().contains("open"),
                browser.driver().getCurrentUrl());
        assertEquals(1, browser.driver().findElements(By.tagName("h1")).size());
        assertTrue(browser.step("p1").getText().contains("<b>this is not a tag</b>"));
        assertTrue(browser.text("c1", ".warning-word").contains("Danger"));
        assertEquals(List.of(), browser.troubles());
    }

    @Test
    void aSnippetRunsAndItsChartNumbersAndTheGuessAreSeen() {
        browser.run("density-curve");
        WebElement chart = browser.in("density-curve", "figure svg");
        assertTrue(chart.getSize().getWidth() > 400, "the chart fills its place");
        assertTrue(chart.getAccessibleName().contains("The flow rises"), chart.getAccessibleName());
        assertEquals("#9c4318", browser.in("density-curve", "polyline").getDomAttribute("stroke"));
        browser.click(browser.in("density-curve", ".numbers summary"));
        assertEquals(
                21,
                browser.step("density-curve")
                        .findElements(By.cssSelector("tbody tr"))
                        .size());
        assertTrue(browser.text("density-curve", ".value").contains("999.7"));
        assertTrue(browser.text("density-curve", ".guesses").contains("you guessed 10 g"));
        assertEquals(List.of(), browser.troubles());
    }

    @Tag("thorough")
    @Test
    void wordsAreFoundByTypingAndLeadToTheirLesson() {
        browser.click(browser.driver().findElement(By.linkText("Words")));
        browser.until("the words", () -> shownWords().size() == 3);
        assertEquals("Words · Loftcoil", browser.driver().getTitle());
        assertEquals("page", browser.driver().findElement(By.linkText("Words")).getDomAttribute("aria-current"));
        WebElement field = browser.driver().findElement(By.id("words-find"));
        field.sendKeys("leg");
        assertEquals(List.of("cold leg"), shownWords());
        assertEquals(
                "1 of 3 terms",
                browser.driver()
                        .findElement(By.cssSelector("main [role=status]"))
                        .getText());
        field.sendKeys("endary");
        assertEquals(List.of(), shownWords());
        assertEquals(List.of(), browser.accessibilityFaults());
        field.clear();
        field.sendKeys("drive");
        browser.click(browser.driver().findElement(By.cssSelector(".words > div:not([hidden]) a")));
        browser.until("the lesson", () -> browser.driver().getTitle().startsWith("Warm water"));
        assertEquals(List.of(), browser.troubles());
    }

    @Tag("thorough")
    @Test
    void theTableOfConductIsOneStepAwayAtAllWidths() {
        for (int width : new int[] {360, 1366}) {
            browser.size(width, 800);
            browser.click(browser.driver().findElement(By.linkText("In an emergency")));
            browser.until("the table", () -> shownRules().size() == Conduct.values().length);
            assertEquals(
                    Stream.of(Conduct.values()).map(rule -> rule.act().metric()).toList(), shownRules());
            assertEquals("In an emergency · Loftcoil", browser.driver().getTitle());
            assertEquals(0, browser.overflow(), "no scrolling sideways");
            assertEquals(List.of(), browser.accessibilityFaults());
            browser.driver().executeScript("location.hash = '#/words'");
            browser.until("the words", () -> shownWords().size() == 3);
        }
        assertEquals(List.of(), browser.troubles());
    }

    private List<String> shownRules() {
        return browser.driver().findElements(By.cssSelector(".conduct section p")).stream()
                .map(WebElement::getText)
                .toList();
    }

    @Tag("thorough")
    @Test
    void anAddressLeadsToOneWord() {
        browser.driver().executeScript("location.hash = '#/words/cold-leg'");
        browser.until("the word", () -> "word-cold-leg"
                .equals(browser.driver().switchTo().activeElement().getDomAttribute("id")));
        assertEquals(List.of(), browser.troubles());
    }

    private List<String> shownWords() {
        return browser.driver().findElements(By.cssSelector(".words > div:not([hidden]) dt")).stream()
                .map(WebElement::getText)
                .toList();
    }

    @Test
    void wrongThenRightIsToldApartAndTheRiserFills() {
        for (int tries = 1; tries <= 3; tries++) {
            browser.answer("push", "88");
            assertTrue(browser.text("push", ".said-wrong").contains("Look at the difference"));
            assertEquals(tries == 3, browser.has("push", ".worked"));
        }
        browser.answer("push", "176.6 Pa");
        assertTrue(browser.text("push", ".said-right").contains("Right"));
        assertFalse(browser.text("push", ".source").contains("IAPWS"), "the source is folded");
        browser.driver()
                .findElement(By.cssSelector("#step-push .source summary"))
                .click();
        assertTrue(browser.text("push", ".source").contains("IAPWS"));
        browser.answer("way", "Up on the right");
        browser.until("the riser", () -> browser.driver()
                .findElement(By.cssSelector(".riser-water"))
                .getDomAttribute("style")
                .contains("67%"));
        assertTrue(browser.driver()
                .findElement(By.cssSelector("#lessons a[aria-current]"))
                .getText()
                .contains("2 of 3"));
        assertEquals(List.of(), browser.troubles());
    }

    @Tag("thorough")
    @Test
    void afterAReloadTheWorkIsStillThere() {
        browser.type("density-curve", "1 + 1");
        browser.run("density-curve");
        browser.answer("push", "88");
        browser.in("way", "input").click();
        browser.reload();
        assertEquals("1 + 1", browser.source("density-curve"));
        assertTrue(browser.has("density-curve", "figure svg"), "the chart is shown again");
        assertEquals("88", browser.in("push", ".typed input").getDomProperty("value"));
        assertTrue(browser.has("push", ".said-wrong"));
        assertTrue(browser.in("way", "input").isSelected(), "what was chosen but not sent");
        assertEquals(List.of(), browser.troubles());
    }

    @Tag("thorough")
    @Test
    void editingIsKeptWithoutRunningAndCanBePutBackAndUndone() {
        browser.type("density-curve", "mine");
        browser.until("keeping", () -> bench.calls.contains("keep density-curve"));
        browser.click(browser.driver().findElement(By.xpath("//button[.='Put back the lesson’s text']")));
        browser.until("the lesson's text", () -> browser.source("density-curve").equals(FakeCourse.DENSITY));
        browser.click(browser.driver().findElement(By.xpath("//button[.='Undo putting back']")));
        assertEquals("mine", browser.source("density-curve"));
        browser.reload();
        assertEquals("mine", browser.source("density-curve"));
    }

    @Tag("thorough")
    @Test
    void aSlowSliderShowsACoarsePictureUntilTheWholeOneIsThere() {
        browser.goTo(FakeCourse.SECOND);
        bench.millis = 400;
        browser.run("flow-against-height");
        bench.held = new CountDownLatch(1);
        WebElement slider = browser.in("flow-against-height", "input[type=range]");

        slider.sendKeys(Keys.ARROW_RIGHT);

        browser.until("the mark", () -> browser.has("flow-against-height", ".is-coarse .coarse"));
        assertTrue(browser.text("flow-against-height", ".coarse").startsWith("Coarse picture"));
        browser.until(
                "the mark said",
                () -> browser.driver().findElement(By.id("said")).getText().startsWith("Coarse"));
        bench.held.countDown();
        browser.until("the whole one", () -> !browser.has("flow-against-height", ".coarse"));
        browser.until("an end of the slider run ahead", () -> bench.calls.stream()
                .anyMatch(call -> call.startsWith("ahead flow-against-height {tankBaseM=")));
        assertEquals(List.of(), browser.troubles());
    }

    @Tag("thorough")
    @Test
    void aSliderIsDraggedByKeyboardAndTheChartFollows() {
        browser.goTo(FakeCourse.SECOND);
        browser.run("flow-against-height");
        String before = browser.in("flow-against-height", "polyline").getDomAttribute("points");
        WebElement figure = browser.in("flow-against-height", "figure");
        WebElement slider = browser.in("flow-against-height", "input[type=range]");
        slider.sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.PAGE_UP);
        assertEquals("2.80 m", browser.text("flow-against-height", "output"));
        assertEquals("2.80 m", slider.getDomAttribute("aria-valuetext"));
        browser.until("the chart", () -> !browser.in("flow-against-height", "polyline")
                .getDomAttribute("points")
                .equals(before));
        browser.until("the last value", () -> bench.calls.contains("run flow-against-height {tankBaseM=2.8}"));
        assertEquals(figure, browser.in("flow-against-height", "figure"), "the figure stays, its drawing changes");
        browser.reload();
        assertEquals("2.80 m", browser.text("flow-against-height", "output"));
        assertEquals(List.of(), browser.troubles());
    }

    @Test
    void aProblemIsShownAtItsLineAndLeadsThere() {
        browser.type("density-curve", "int a = 1;\n    oops;");
        browser.run("density-curve");
        assertTrue(browser.text("density-curve", ".problems").contains("Line 2: There is no oops here."));
        assertTrue(browser.text("density-curve", ".line-problem").contains("oops"));
        browser.click(browser.in("density-curve", ".problems button"));
        assertTrue(browser.focused().contains("Java: density curve"), browser.focused());
        browser.press("x");
        assertEquals("int a = 1;\n    xoops;", browser.source("density-curve"));
    }

    @Tag("thorough")
    @Test
    void anEndlessRunIsStopped() {
        browser.type("density-curve", "while (true) {}");
        browser.click(browser.in("density-curve", ".sheet-foot .main"));
        WebElement stop =
                browser.driver().findElement(By.xpath("//section[@id='step-density-curve']//button[.='Stop']"));
        browser.until("the stop button", stop::isDisplayed);
        browser.click(stop);
        browser.waitForRun("density-curve");
        assertTrue(browser.text("density-curve", ".result").contains("You stopped it."));
        assertTrue(browser.focused().contains("Run"), "the focus comes back: " + browser.focused());
    }

    @Tag("thorough")
    @Test
    void aDecisionGoesIntoTheDesignAndItsDrawings() {
        browser.goTo(FakeCourse.SECOND);
        browser.answer("tank-height", "2.60");
        browser.until(
                "the panel",
                () -> browser.driver().findElement(By.id("loop")).getText().contains("2.60 m"));
        assertTrue(browser.text("tank-height", ".current").contains("2.60 m"));
        assertTrue(browser.in("d1", "svg").getAccessibleName().contains("2.60"), "the drawing in the lesson follows");
    }

    @Tag("thorough")
    @Test
    void theLoopOpensLarge() {
        browser.click(browser.driver().findElement(By.cssSelector(".loop .enlarge")));
        WebElement large = browser.driver().findElement(By.cssSelector("dialog.large svg"));
        assertTrue(large.getAccessibleName().contains("The coil is near the floor"), large.getAccessibleName());
        assertEquals(List.of(), browser.accessibilityFaults());
        browser.press(Keys.ESCAPE);
        browser.until("closing", () -> browser.driver()
                .findElements(By.cssSelector("dialog.large"))
                .isEmpty());
        assertTrue(browser.focused().contains("Show large"), browser.focused());
    }

    @Test
    void theKeyboardAloneIsEnough() {
        browser.press(Keys.TAB);
        assertTrue(browser.focused().contains("Skip to the lesson"), browser.focused());
        browser.press(Keys.ENTER);
        tabTo("Your guess");
        browser.press("10 g", Keys.ENTER);
        browser.until("the note", () -> browser.has("litre", ".said-noted"));
        tabTo("Java: density curve");
        browser.chord(Keys.CONTROL, Keys.ENTER);
        browser.waitForRun("density-curve");
        browser.press("//", Keys.TAB);
        assertTrue(browser.source("density-curve").startsWith("//    "), "Tab types spaces in the editor");
        browser.press(Keys.ESCAPE);
        assertTrue(browser.focused().contains("Run"), browser.focused());
        tabTo("Up on the right");
        browser.press(Keys.SPACE, Keys.ENTER);
        browser.until("the reply", () -> browser.has("way", ".said-right"));
        tabTo("Next: ");
        browser.press(Keys.ENTER);
        browser.until("the next lesson", () -> browser.driver().getTitle().startsWith("Why the tank"));
        assertEquals(List.of(), browser.troubles());
    }

    @Test
    void nobodyIsCaughtInAnEditorOrChangesItInPassing() {
        String before = browser.source("density-curve");
        tabTo("Java: density curve");
        browser.press(Keys.TAB);
        assertTrue(browser.focused().contains("Run"), browser.focused());
        browser.chord(Keys.SHIFT, Keys.TAB);
        assertTrue(browser.focused().contains("Java: density curve"), browser.focused());
        browser.chord(Keys.SHIFT, Keys.TAB);
        assertFalse(browser.focused().contains("Java: density curve"), browser.focused());
        assertEquals(before, browser.source("density-curve"));
    }

    @Test
    void whatCameOfARunIsSaidWholeAndTheButtonKeepsTheFocus() {
        tabTo("Java: density curve");
        browser.press(Keys.TAB, Keys.ENTER);
        browser.until("the printed line", () -> said().contains("a litre at 10 °C weighs 999.7 g"));
        assertTrue(said().contains("The flow rises"), "what the chart says: " + said());
        assertTrue(browser.focused().contains("Run"), browser.focused());
        browser.type("density-curve", "int a = 1;\n    oops;");
        browser.run("density-curve");
        browser.until("the problem", () -> said().contains("Line 2: There is no oops here."));
        browser.in("push", ".typed input").sendKeys("88", Keys.TAB, Keys.ENTER);
        browser.until("the reply", () -> browser.has("push", ".said-wrong"));
        assertTrue(browser.focused().contains("Check"), browser.focused());
    }

    @Tag("thorough")
    @Test
    void escapeStopsWhatRuns() {
        browser.type("density-curve", "while (true) {}");
        browser.click(browser.in("density-curve", ".sheet-foot .main"));
        browser.until(
                "a run", () -> browser.text("density-curve", ".sheet-foot").contains("Running"));
        browser.press(Keys.ESCAPE);
        browser.waitForRun("density-curve");
        assertTrue(browser.text("density-curve", ".result").contains("You stopped it."));
        assertTrue(browser.focused().contains("Run"), browser.focused());
    }

    @Tag("thorough")
    @Test
    void theLessonHasAListOfItsHeadingsAndOfWhatIsNotAnswered() {
        assertEquals(List.of("push", "way", "own"), openQuestions());
        browser.answer("push", "176.6 Pa");
        browser.until("one left", () -> openQuestions().equals(List.of("way", "own")));
        browser.driver().executeScript("document.getElementById('skip-question').click()");
        assertEquals("step-way", browser.driver().switchTo().activeElement().getDomAttribute("id"));
        assertEquals(List.of(), browser.accessibilityFaults());
    }

    @Tag("thorough")
    @Test
    void searchFindsAndLeadsThere() {
        browser.click(browser.driver().findElement(By.linkText("Search")));
        browser.until(
                "the field",
                () -> !browser.driver().findElements(By.id("search-for")).isEmpty());
        browser.press("nothing");
        browser.until(
                "the words",
                () -> browser.driver().findElement(By.tagName("main")).getText().contains("Nothing in the course"));
        assertEquals(List.of(), browser.accessibilityFaults());
        browser.driver().findElement(By.id("search-for")).clear();
        browser.driver().findElement(By.id("search-for")).sendKeys("legs");
        browser.until("a hit", () -> !browser.driver()
                .findElements(By.cssSelector(".found-list a"))
                .isEmpty());
        browser.click(browser.driver().findElement(By.cssSelector(".found-list a")));
        browser.until("the question", () -> "step-push"
                .equals(browser.driver().switchTo().activeElement().getDomAttribute("id")));
        assertEquals(List.of(), browser.troubles());
    }

    private List<String> openQuestions() {
        return browser.driver().findElements(By.cssSelector("#outline .unanswered a")).stream()
                .map(link -> link.getDomAttribute("href").replaceFirst(".*/", ""))
                .toList();
    }

    private String said() {
        return browser.driver().findElement(By.id("said")).getDomProperty("textContent");
    }

    @Tag("thorough")
    @Test
    void theEditorOffersWhatCanStandThere() {
        browser.type("density-curve", "Water");
        browser.driver()
                .executeScript(
                        "const e = arguments[0].CodeMirror; e.focus(); e.setCursor({line: 0, ch: 5})",
                        browser.in("density-curve", ".CodeMirror"));
        browser.press(".");
        browser.until("the list", () -> !browser.driver()
                .findElements(By.cssSelector(".CodeMirror-hint"))
                .isEmpty());
        browser.press("e");
        browser.until(
                "a shorter list",
                () -> browser.driver()
                                .findElements(By.cssSelector(".CodeMirror-hint"))
                                .size()
                        == 1);
        browser.press(Keys.ENTER);
        assertEquals("Water.expansionPerK(", browser.source("density-curve").replace("()", "("));
        assertEquals(List.of(), browser.troubles());
    }

    @Tag("thorough")
    @Test
    void theQuestionMarkOpensHelpUnlessSomethingIsTyped() {
        browser.in("push", ".typed input").sendKeys("?");
        assertTrue(browser.driver().findElements(By.cssSelector("dialog[open]")).isEmpty());
        browser.driver().executeScript("document.activeElement.blur()");
        browser.press("?");
        browser.until("help", () -> !browser.driver()
                .findElements(By.cssSelector("dialog[open]"))
                .isEmpty());
        assertEquals(List.of(), browser.accessibilityFaults());
        browser.press(Keys.ESCAPE);
        assertTrue(browser.driver().findElements(By.cssSelector("dialog[open]")).isEmpty());
    }

    @Tag("thorough")
    @Test
    void aDeepLinkLeadsToItsStepAndAnUnknownLessonIsSaidSo() {
        browser.goTo(FakeCourse.SECOND + "/tank-height");
        assertEquals(
                "step-tank-height", browser.driver().switchTo().activeElement().getDomAttribute("id"));
        browser.driver().executeScript("location.hash = '#/99-none'");
        browser.until(
                "the words",
                () -> browser.driver().findElement(By.tagName("main")).getText().contains("No such lesson"));
    }

    @Test
    void whenTheServerIsGoneNothingTypedIsLost() {
        browser.type("density-curve", "kept here");
        server.close();
        browser.click(browser.in("density-curve", ".sheet-foot .main"));
        browser.until(
                "the strip", () -> browser.driver().findElement(By.id("banner")).isDisplayed());
        assertTrue(browser.driver().findElement(By.id("banner")).getText().contains("does not answer"));
        assertEquals("kept here", browser.source("density-curve"));
        assertEquals(List.of(), browser.accessibilityFaults());
    }

    @Tag("thorough")
    @ParameterizedTest
    @CsvSource({"light, 1366, 768", "dark, 360, 740"})
    void whileWorkIsUnsavedAStripStaysUntilSavingSucceeds(String colours, int width, int height) {
        browser.colours(colours);
        browser.size(width, height);
        bench.full = "/home/orchard/loftcoil: its disk is full. Free some room on it";
        WebElement strip = browser.driver().findElement(By.id("unsaved"));
        browser.type("density-curve", "typed on a full disk");
        browser.until("the strip", strip::isDisplayed);
        assertTrue(strip.getText().contains("/home/orchard/loftcoil: its disk is full"), strip.getText());
        browser.run("density-curve");
        assertTrue(browser.text("density-curve", ".value").contains("999.7"), "Java runs all the same");
        browser.click(strip.findElement(By.tagName("button")));
        long before = tries();
        browser.until("another try", () -> tries() > before);
        assertTrue(strip.isDisplayed(), "still not saved");
        assertEquals(0, browser.overflow(), "no scrolling sideways");
        assertEquals(List.of(), browser.accessibilityFaults());
        bench.full = null;
        browser.until("all saved", () -> !strip.isDisplayed());
    }

    private long tries() {
        return bench.calls.stream().filter("save"::equals).count();
    }

    @Tag("thorough")
    @ParameterizedTest
    @CsvSource({"light, 1366, 768", "dark, 1366, 768", "light, 360, 740", "dark, 390, 844", "light, 1000, 700"})
    void eachWidthAndColourSetIsReadableByAll(String colours, int width, int height) {
        browser.colours(colours);
        browser.size(width, height);
        browser.run("density-curve");
        browser.answer("push", "88");
        browser.answer("way", "Up on the right");
        assertEquals(0, browser.overflow(), "no scrolling sideways");
        assertEquals(List.of(), browser.accessibilityFaults());
        browser.goTo(FakeCourse.SECOND);
        browser.run("flow-against-height");
        browser.type("flow-against-height", "oops");
        browser.run("flow-against-height");
        browser.answer("tank-height", "2.60");
        assertEquals(0, browser.overflow(), "no scrolling sideways");
        assertEquals(List.of(), browser.accessibilityFaults());
        assertEquals(List.of(), browser.troubles());
    }

    @Tag("thorough")
    @Test
    void aFaultySystemIsMendedByItsLevers() {
        browser.goTo(FakeCourse.THIRD);
        browser.until("the system", () -> browser.has("low-tank", ".mend svg"));
        assertTrue(browser.text("low-tank", ".circulates").contains("does not circulate"));
        browser.click(browser.in("low-tank", ".form-foot .main"));
        browser.until("the request", () -> browser.text("low-tank", ".reply").contains("change something, first."));
        assertTrue(browser.focused().contains("Tank base"), browser.focused());
        browser.press(Keys.HOME, Keys.PAGE_UP, Keys.PAGE_UP, Keys.PAGE_UP);
        browser.until(
                "the flow", () -> browser.text("low-tank", ".mend-figures").contains("2.0 L/min"));
        assertTrue(browser.text("low-tank", ".moved .found").contains("found at: -0.6 m"));
        assertTrue(browser.in("low-tank", ".mend svg").getAccessibleName().contains("2"), "the drawing follows");
        browser.press(Keys.END);
        browser.until(
                "the refusal", () -> browser.text("low-tank", ".mend-refused").contains("cannot be built"));
        assertEquals(List.of(), browser.accessibilityFaults());
        browser.press(Keys.PAGE_DOWN);
        browser.until(
                "the end of it",
                () -> browser.in("low-tank", ".mend-refused").getText().isEmpty());
        browser.click(browser.in("low-tank", ".form-foot .main"));
        browser.until("the reply", () -> browser.has("low-tank", ".said-right"));
        assertTrue(bench.calls.contains("answer low-tank tank.baseM = 2"), bench.calls.toString());
        browser.click(browser.in("low-tank", ".mend-levers button"));
        browser.until("the verdict of before", () -> browser.text("low-tank", ".reply")
                .contains("You have moved something since."));
        assertEquals(List.of(), browser.troubles());
    }

    @Tag("thorough")
    @Test
    void whatWasMovedStandsAfterAReloadUntilItIsPutBack() {
        browser.goTo(FakeCourse.THIRD);
        browser.until("the system", () -> browser.has("low-tank", ".mend select"));
        browser.in("low-tank", ".mend select").sendKeys("none");
        browser.until(
                "the change", () -> browser.text("low-tank", ".mend-figures").contains("none"));
        browser.reload();
        browser.until("the system", () -> browser.has("low-tank", ".mend select"));
        assertEquals("none", browser.in("low-tank", ".mend select").getDomProperty("value"));
        browser.click(browser.in("low-tank", ".mend-levers button"));
        browser.until(
                "all back", () -> browser.text("low-tank", ".mend-figures").contains("a valve"));
        assertFalse(browser.has("low-tank", ".moved"));
    }

    @Tag("thorough")
    @ParameterizedTest
    @CsvSource({"light, 1366, 768", "dark, 1366, 768", "light, 360, 740", "dark, 390, 844"})
    void aFaultySystemIsReadableByAll(String colours, int width, int height) {
        browser.colours(colours);
        browser.size(width, height);
        browser.goTo(FakeCourse.THIRD);
        browser.until("the system", () -> browser.has("low-tank", ".mend svg"));
        browser.click(browser.in("low-tank", ".mend select"));
        browser.in("low-tank", ".mend select").sendKeys("none", Keys.ENTER);
        browser.until("the mark", () -> browser.has("low-tank", ".moved"));
        browser.click(browser.in("low-tank", ".form-foot .main"));
        browser.until("the reply", () -> browser.has("low-tank", ".said-wrong"));
        assertEquals(0, browser.overflow(), "no scrolling sideways");
        assertEquals(List.of(), browser.accessibilityFaults());
        assertEquals(List.of(), browser.troubles());
    }

    private void tabTo(String name) {
        List<String> met = new ArrayList<>();
        for (int n = 0; n < 60; n++) {
            String focused = browser.focused();
            if (focused.contains(name)) {
                return;
            }
            met.add(focused);
            browser.press(focused.contains("Java: ") ? Keys.ESCAPE : Keys.TAB);
        }
        throw new AssertionError("Tab does not reach " + name + ", only " + met);
    }
}

package loftcoil.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.page.LiveCourseCase;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/**
 * The whole course by keyboard alone: in each lesson Tab goes from stop to stop, and the first of each kind is worked. The focus is
 * always on something that can be seen, with a ring round it, and everything that can be worked is reached.
 */
@Tag("thorough")
class KeyboardWalkTest extends LiveCourseCase {

    private static final int MOST_STOPS = 400;

    /** Where the focus is: its kind, its name, and what is wrong with it. */
    private static final String WHERE =
            """
            const now = document.activeElement;
            if (!now || now === document.body) return {kind: 'none', id: 0, name: '', wrong: ''};
            window.stops = window.stops || new Map();
            if (!window.stops.has(now)) window.stops.set(now, window.stops.size + 1);
            const box = now.getBoundingClientRect();
            const ringed = (each) => getComputedStyle(each).outlineStyle !== 'none' && parseFloat(getComputedStyle(each).outlineWidth) >= 2;
            const ring = [now, now.closest('.code'), now.closest('.typed-line'), now.querySelector('h1')].some((each) => each && ringed(each));
            const x = Math.min(Math.max(box.left + box.width / 2, 1), innerWidth - 1);
            const seen = [0.5, 0.05, 0.2, 0.8, 0.95].some((part) => {
              const y = box.top + box.height * part;
              if (y < 0 || y >= innerHeight) return false;
              const top = document.elementFromPoint(x, y);
              return top && (now.contains(top) || top.contains(now) || (now.labels && [...now.labels].some((label) => label.contains(top))));
            });
            const kind = now.closest('.CodeMirror') ? 'editor' : now.matches('input') ? now.type
              : now.matches('.drawn-frame') ? 'plot' : now.matches('.term') ? 'term' : now.matches('.main') ? 'main ' + now.textContent : now.localName;
            const done = now.getAttribute('aria-disabled') === 'true';
            return {kind: kind + (now.closest('main') ? '' : ' outside'), id: window.stops.get(now), inMain: Boolean(now.closest('main')),
              name: now.getAttribute('aria-label') || now.textContent.slice(0, 40), busy: done,
              wrong: (ring ? '' : 'no ring ') + (seen ? '' : `not seen, at ${Math.round(box.top)} to ${Math.round(box.bottom)} of ${innerHeight}`)};
            """;

    private static final String REACHED =
            """
            const stops = 'a[href], button, input, select, textarea, summary, [tabindex="0"], [contenteditable="true"]';
            const left = [...document.querySelectorAll('main :is(' + stops + ')')].filter((each) => each.checkVisibility({visibilityProperty: true})
              && !each.disabled && each.tabIndex >= 0 && !window.stops.has(each) && !each.closest('dialog')
              && !(each.type === 'radio' && [...window.stops.keys()].some((other) => other.name === each.name)));
            return left.map((each) => each.localName + ' ' + (each.getAttribute('aria-label') || each.textContent).slice(0, 60));
            """;

    private static final String COUNTED =
            """
            if (window.asked === undefined) {
              const fetch = window.fetch;
              window.asked = 0;
              window.fetch = (...what) => { window.asked += 1; return fetch(...what).finally(() => { window.asked -= 1; }); };
            }
            """;

    @Override
    protected Course course() {
        return CourseReader.builtIn();
    }

    @Test
    void everyLessonIsWalkedWorkedAndLeft() {
        Set<String> worked = new TreeSet<>();
        bench.choose(loftcoil.engine.words.Units.METRIC);
        browser.reload();
        for (String lesson :
                bench.course().lessons().stream().map(line -> line.id()).toList()) {
            browser.goTo(lesson);
            untilAllSystemsAreThere();
            worked.addAll(walk(lesson));
        }
        assertTrue(
                worked.containsAll(Set.of(
                        "editor",
                        "main Run",
                        "main Check",
                        "main Note my guess",
                        "radio",
                        "text",
                        "range",
                        "checkbox",
                        "plot",
                        "term",
                        "summary")),
                "worked: " + worked);
        assertEquals(List.of(), browser.troubles());
    }

    /** A faulty system is reckoned when the reader comes near. */
    private static void untilAllSystemsAreThere() {
        browser.until(
                "the systems",
                () -> Boolean.TRUE.equals(
                        browser.driver()
                                .executeScript(
                                        """
                const waits = [...document.querySelectorAll('main .question')].filter((each) => /Loading the system/.test(each.textContent));
                if (waits.length) waits[0].scrollIntoView();
                return !waits.length;
                """)));
    }

    private Set<String> walk(String lesson) {
        browser.driver().executeScript("window.stops = new Map(); document.getElementById('skip-question').focus()");
        browser.driver().executeScript(COUNTED);
        browser.chord(Keys.SHIFT, Keys.TAB);
        Set<String> worked = new HashSet<>();
        Map<?, ?> at = where();
        for (int stop = 0; stop < MOST_STOPS; stop++) {
            String kind = (String) at.get("kind");
            assertEquals("", at.get("wrong"), lesson + ": " + at);
            if (Boolean.TRUE.equals(at.get("inMain")) && worked.add(kind)) {
                work(lesson, kind, at);
                // An empty answer is sent back to its field.
                at = where();
            }
            browser.press(Keys.TAB);
            Map<?, ?> next = where();
            if (next.get("kind").equals("none")) {
                assertEquals(List.of(), browser.driver().executeScript(REACHED), lesson + ": not reached by Tab");
                return worked;
            }
            assertTrue(!next.get("id").equals(at.get("id")), lesson + ": Tab does not leave " + at);
            at = next;
        }
        throw new AssertionError(lesson + ": Tab does not come to an end");
    }

    private static Map<?, ?> where() {
        return (Map<?, ?>) browser.driver().executeScript(WHERE);
    }

    /** Works it as its keys are, and holds that the focus is where it was. */
    private static void work(String lesson, String kind, Map<?, ?> at) {
        switch (kind) {
            case "editor" -> {
                browser.chord(Keys.CONTROL, Keys.ENTER);
                untilCalm();
                stays(lesson, at);
                browser.press(" ", Keys.BACK_SPACE, Keys.ESCAPE);
                assertEquals("main Run", where().get("kind"), lesson + ": Esc leaves the editor");
                browser.chord(Keys.SHIFT, Keys.TAB);
                stays(lesson, at);
            }
            case "main Run" -> {
                browser.press(Keys.ENTER);
                untilCalm();
                stays(lesson, at);
            }
            case "text" -> {
                browser.press("1", Keys.ENTER);
                untilCalm();
                stays(lesson, at);
            }
            case "radio" -> {
                browser.press(Keys.SPACE, Keys.ENTER);
                untilCalm();
                stays(lesson, at);
            }
            case "range" -> {
                browser.press(Keys.ARROW_RIGHT, Keys.ARROW_LEFT);
                untilCalm();
                stays(lesson, at);
            }
            case "select" -> {
                browser.press(Keys.ARROW_DOWN);
                untilCalm();
                stays(lesson, at);
            }
            case "checkbox" -> {
                browser.press(Keys.SPACE);
                untilCalm();
                stays(lesson, at);
            }
            case "plot" -> {
                browser.press(Keys.END, Keys.ARROW_LEFT);
                stays(lesson, at);
            }
            case "term" -> {
                browser.press(Keys.ENTER, Keys.ESCAPE);
                stays(lesson, at);
            }
            case "summary" -> {
                browser.press(Keys.ENTER);
                stays(lesson, at);
            }
            default -> {
                if (kind.startsWith("main ")) {
                    browser.press(Keys.ENTER);
                    untilCalm();
                    assertTrue(!where().get("kind").equals("none"), lesson + ": the focus is lost after " + at);
                }
            }
        }
    }

    /** Until nothing runs and the page asks for nothing any more. */
    private static void untilCalm() {
        browser.driver().executeScript(COUNTED);
        browser.until(
                "calm",
                () -> Boolean.TRUE.equals(
                        browser.driver()
                                .executeAsyncScript(
                                        """
                        const done = arguments[arguments.length - 1];
                        const calm = () => !window.asked && !document.querySelector('main [aria-disabled=true], main .checking, main[aria-busy]');
                        const before = calm();
                        setTimeout(() => done(before && calm()), 250);
                        """)));
    }

    private static void stays(String lesson, Map<?, ?> at) {
        Map<?, ?> now = where();
        assertEquals(at.get("id"), now.get("id"), lesson + ": the focus was on " + at + ", and is on " + now);
    }
}

package loftcoil.runner.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LessonParserTest {

    private static final String HEAD = "---\ntitle: T\nstep: 3\nminutes: 20\nneeds:\n---\n# T\n";
    private static final String WHOLE =
            """
            ---
            title: Warm water is lighter
            step: 3
            minutes: 25
            needs: 01-first, 02-second
            ---
            # Warm water is lighter

            Some text with a [word](words.md#drive).

            | a | b |
            |---|---|
            | 1 | 2 |

            ## Weigh

            [Predict: how much lighter?](../exercises/03-warm/lighter-litre.json)

            ```java name=weigh
            double a = 1;

            a + 1
            ```

            After it.

            > **Danger.** Never light a fire
            > under a frozen loop.

            > plain quotation

            ![Your loop to scale](drawings/your-loop.svg)

            ```java name=slide drag=tankBaseM from=-1 to=3.5 by=0.05 start=2.2 unit=m label="Tank base above the floor"
            tankBaseM * 2
            ```

            ```text
            not run
            ```

            [Decide: how high?](../exercises/03-warm/height.json)
            """;

    private static Lesson parse(String text) {
        return LessonParser.parse("03-warm", "lessons/03-warm.md", text);
    }

    private static int line(Fault fault) {
        return Integer.parseInt(fault.path().split(":", -1)[1]);
    }

    private static List<Fault> faults(String text) {
        return assertThrows(RefusedException.class, () -> parse(text)).faults();
    }

    /** A draw port has nothing to draw above the waterline. */
    @Test
    void aSliderEndsWhereItsValuesBeginToMeanNothing() {
        Drag written = new Drag("portM", 0.05, 1.2, 0.01, 0.6, "tank.drawPortM", "tank.waterlineM", "m", "Draw port");
        Map<String, String> design = Map.of("tank.drawPortM", "0.9", "tank.waterlineM", "0.666");

        Drag own = written.own(design::get);

        assertEquals(0.66, own.to(), 1e-9);
        assertEquals(0.66, own.start(), 1e-9);
        assertEquals(0.05, own.from());
    }

    @Test
    void aWholeLessonIsCutIntoItsSteps() {
        Lesson lesson = parse(WHOLE);
        assertEquals("Warm water is lighter", lesson.title());
        assertEquals(3, lesson.step());
        assertEquals(25, lesson.minutes());
        assertEquals(List.of("01-first", "02-second"), lesson.needs());
        assertEquals(
                List.of(
                        "text_warm-water-is-lighter",
                        "text_weigh",
                        "lighter-litre",
                        "weigh",
                        "after_weigh",
                        "caution_never-light-a-fire-under-a",
                        "after_caution_never-light-a-fire-under-a",
                        "drawing_your-loop-to-scale",
                        "slide",
                        "after_slide",
                        "height"),
                lesson.steps().stream().map(Step::id).toList());
    }

    @Test
    void eachStepHoldsWhatTheFileHas() {
        List<Step> steps = parse(WHOLE).steps();
        Step.Prose prose = assertInstanceOf(Step.Prose.class, steps.get(0));
        assertTrue(prose.markdown().startsWith("# Warm water is lighter\n\nSome text"), prose.markdown());
        assertTrue(prose.markdown().endsWith("| 1 | 2 |"), prose.markdown());
        assertEquals(7, prose.line());
        assertEquals(
                new Step.Question(
                        "lighter-litre", 17, Step.Asked.PREDICT, "how much lighter?", "03-warm/lighter-litre"),
                steps.get(2));
        assertEquals(new Step.Snippet("weigh", 20, "double a = 1;\n\na + 1", Optional.empty()), steps.get(3));
        Step.Caution caution = assertInstanceOf(Step.Caution.class, steps.get(5));
        assertTrue(caution.danger());
        assertEquals("Never light a fire\nunder a frozen loop.", caution.markdown());
        assertEquals("> plain quotation", ((Step.Prose) steps.get(6)).markdown());
        assertEquals("Your loop to scale", ((Step.Drawing) steps.get(7)).caption());
        assertEquals(
                Optional.of(new Drag("tankBaseM", -1, 3.5, 0.05, 2.2, "", "", "m", "Tank base above the floor")),
                ((Step.Snippet) steps.get(8)).drag());
        assertEquals("```text\nnot run\n```", ((Step.Prose) steps.get(9)).markdown());
        assertEquals(Step.Asked.DECIDE, ((Step.Question) steps.get(10)).asked());
    }

    @Test
    void lineEndsOfOtherSystemsAndAByteOrderMarkChangeNothing() {
        assertEquals(parse(WHOLE), parse("\uFEFF" + WHOLE.replace("\n", "\r\n")));
        assertEquals(parse(WHOLE), parse(WHOLE.replace('\n', '\r')));
    }

    @Test
    void namesStayWhileOtherTextIsEdited() {
        List<String> before = parse(WHOLE).steps().stream().map(Step::id).toList();
        String edited = WHOLE.replace("Some text", "> **Caution.** Something new.\n\nOther text");
        List<String> after = parse(edited).steps().stream().map(Step::id).toList();
        assertTrue(after.containsAll(before), after.toString());
    }

    @Test
    void allFaultsAreFoundAtOnceEachWithItsPlace() {
        String text =
                """
                ---
                title: T
                minutes: soon
                minutes: 5
                colour: red
                needs: 1st
                ---
                no heading

                ```java

                ```

                <b>bold</b>

                ![x](far.svg)

                [out](https://example.org)

                ```java name=a
                int a;
                """;
        List<Fault> faults = faults(text);
        assertEquals(
                List.of(3, 4, 5, 6, 7, 8, 10, 10, 14, 14, 16, 18, 20),
                faults.stream().map(LessonParserTest::line).toList(),
                faults.toString());
        Fault last = faults.get(faults.size() - 1);
        assertEquals(
                "lessons/03-warm.md:20:1: a fence that is never closed; allowed: a line of ``` after the last line of code",
                last.line());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "```java name=a\\n``` | the snippet is empty",
                "```java\\n1\\n``` | a java snippet without a name",
                "```java name=Two\\n1\\n``` | name=Two",
                "```java name=a colour=red\\n1\\n``` | unknown key “colour”",
                "```java name=a name=b\\n1\\n``` | “name” stands there twice",
                "```java name=a what\\n1\\n``` | cannot read “what”",
                "```java name=a\\n1\\n```\\n\\n```java name=a\\n2\\n``` | a second step named “a”",
                "- item\\n\\n  ```java name=a\\n  1\\n  ``` | a java snippet inside a list or a quotation",
                "```java name=a from=1\\n1\\n``` | from without drag",
                "```java name=a drag=x from=0 to=1 by=0.1 start=0 label=L\\nx\\n``` | drag without unit",
                "```java name=a drag=int from=0 to=1 by=0.1 start=0 unit=m label=L\\nint\\n``` | drag=int",
                "```java name=a drag=x from=0 to=1 by=0.1 start=0 unit=m label=L\\ny\\n``` | drag=x is not used by the snippet",
                "```java name=a drag=x from=1 to=0 by=0.1 start=0 unit=m label=L\\nx\\n``` | from=1 to=0",
                "```java name=a drag=x from=NaN to=1 by=0.1 start=0 unit=m label=L\\nx\\n``` | from=NaN",
                "```java name=a drag=x from=0 to=1e999 by=0.1 start=0 unit=m label=L\\nx\\n``` | to=1e999",
                "```java name=a drag=x from=0 to=1 by=0 start=0 unit=m label=L\\nx\\n``` | by=0",
                "```java name=a drag=x from=0 to=1 by=0.1 start=2 unit=m label=L\\nx\\n``` | start=2",
                "```java name=a drag=x from=0 to=1 by=0.3 start=0 unit=m label=L\\nx\\n``` | start or to is not on a stop",
                "text [Question: a](../exercises/01-a/b.json) more | link to an exercise inside other text",
                "[Guess: a](../exercises/01-a/b.json) | link to an exercise called “Guess: a”",
                "[Question: a](../exercises/b.json) | link to “../exercises/b.json”",
                "> [Question: a](../exercises/01-a/b.json) | link to an exercise inside other text",
                "text ![x](drawings/your-loop.svg) | an image inside other text",
                "![](drawings/your-loop.svg) | an image without words",
                "[x](javascript:alert) | link to the outside, “javascript:alert”",
                "[x](//example.org/a) | link to the outside, “//example.org/a”",
                "[x][y]\\n\\n[y]: words.md | a link defined apart from its text",
                "<!-- note --> | raw HTML",
                "> **Danger.** | a warning without words",
                "# Again | a second heading of the first level",
            })
    void oneFault(String body, String what) {
        List<Fault> faults = faults(HEAD + "\n" + body.replace("\\n", "\n") + "\n");
        assertEquals(List.of(what), faults.stream().map(Fault::given).toList());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            nullValues = "-",
            value = {
                "title: T\\nstep: 3\\nminutes: 2\\nneeds: | no front matter",
                "---\\ntitle: T\\nstep: 3\\nminutes: 2\\nneeds: | front matter is never closed",
                "---\\ntitle:\\nstep: 3\\nminutes: 2\\nneeds:\\n---\\n# T | title is empty",
                "---\\ntitle: T\\nstep: 11\\nminutes: 2\\nneeds:\\n---\\n# T | step is “11”",
                "---\\ntitle: T\\nstep: 3\\nminutes: 2.5\\nneeds:\\n---\\n# T | minutes is “2.5”",
                "---\\ntitle: T\\nstep: 3\\nminutes: 2\\nhello\\nneeds:\\n---\\n# T | not a key and its value: “hello”",
                "---\\ntitle: T\\nstep: 3\\nminutes: 2\\nneeds:\\n---\\n## T | no heading",
                "---\\ntitle: T\\nstep: 3\\nminutes: 2\\nneeds:\\n--- | no heading",
            })
    void headFault(String text, String what) {
        List<String> found =
                faults(text.replace("\\n", "\n")).stream().map(Fault::given).toList();
        assertTrue(found.contains(what), found.toString());
    }

    @Test
    void frontMatterThatIsNeverClosedIsOneFault() {
        String text =
                "---\ntitle: T\nstep: 3\nminutes: 2\nneeds:\n\n# T\n\n" + "Water rises.\nSo: it is.\n\n".repeat(100);
        assertEquals(
                List.of("front matter is never closed"),
                faults(text).stream().map(Fault::given).toList());
    }

    @Test
    void anEmptyFileAndAHugeOneAreRefused() {
        assertEquals("no front matter", faults("").get(0).given());
        assertEquals(1, faults("x".repeat(LessonParser.LONGEST + 1)).size());
    }
}

package loftcoil.runner.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loftcoil.engine.fault.Fault;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

class LessonParserAnyTextTest {

    @Property(tries = 2000)
    void anyMarkdownIsALessonOrAnOrderlyRefusal(@ForAll("markdown") String text) {
        ParsedLesson parsed = LessonParser.read("01-any", "any.md", text);
        int lines = text.split("\r\n|\r|\n", -1).length;
        for (Fault fault : parsed.faults()) {
            String[] place = fault.path().split(":", -1);
            int line = Integer.parseInt(place[1]);
            assertTrue(line >= 1 && line <= lines, () -> fault + " in " + lines + " lines");
            assertTrue(Integer.parseInt(place[2]) >= 1, fault::toString);
            assertFalse(fault.given().isBlank() || fault.allowed().isBlank(), fault::toString);
            assertEquals(1, fault.line().lines().count(), fault::line);
        }
        if (parsed.faults().isEmpty()) {
            List<String> ids = parsed.lesson().steps().stream().map(Step::id).toList();
            Set<String> different = new HashSet<>(ids);
            assertEquals(ids.size(), different.size(), ids::toString);
        }
    }

    @Provide
    Arbitrary<String> markdown() {
        Arbitrary<String> piece = Arbitraries.of(
                "---\ntitle: T\nstep: 3\nminutes: 20\nneeds:\n---\n# T\n",
                "---\n",
                "# T\n",
                "## Part\n",
                "```java name=a\nint a;\n```\n",
                "```java name=b drag=x from=0 to=1 by=0.1 start=0 unit=m label=L\nx\n```\n",
                "```java\n",
                "~~~\n",
                "```",
                "> ",
                "- ",
                "    ",
                "\n\n",
                "[Question: a](../exercises/01-a/b.json)\n\n",
                "![a](drawings/your-loop.svg)\n\n",
                "> **Caution.** hot\n\n",
                "[a](b.md)",
                "<b>",
                "[a]: b\n",
                "**",
                "| a |\n|---|\n| b |\n",
                "\\",
                "\r",
                "\u0000",
                "\t");
        Arbitrary<String> any = Arbitraries.strings().ofMaxLength(12);
        return Arbitraries.frequencyOf(Tuple.of(4, piece), Tuple.of(1, any))
                .list()
                .ofMaxSize(20)
                .map(parts -> String.join("", parts));
    }

    @Example
    void deepNestingDoesNotExhaustTheStack() {
        for (String piece : List.of("> ", "- ", "[", "**a ", "![", "<b>", "* _")) {
            ParsedLesson parsed = LessonParser.read("01-deep", "deep.md", "# T\n\n" + piece.repeat(20_000) + "x");
            assertFalse(parsed.faults().isEmpty());
        }
    }
}

package loftcoil.runner.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProseHtmlTest {

    private final ProseHtml prose = new ProseHtml();

    @Test
    void htmlInTheTextIsShownNotObeyed() {
        assertEquals("<p>a &lt;script&gt;b&lt;/script&gt; c</p>\n", prose.html("a <script>b</script> c"));
        assertFalse(prose.html("[x](javascript:alert)").contains("javascript"));
        assertFalse(prose.html("![x](javascript:alert)").contains("javascript"));
    }

    @ParameterizedTest
    @CsvSource({
        "02-tank-above-coil.md, #/02-tank-above-coil",
        "./02-tank-above-coil.md, #/02-tank-above-coil",
        "../lessons/02-tank-above-coil.md, #/02-tank-above-coil",
        "02-tank-above-coil.md#part, #/02-tank-above-coil",
        "words.md, #/words",
        "words.md#cold-leg, #/words/cold-leg",
        "../exercises/01-warm-water/two-legs.json, #/01-warm-water/two-legs"
    })
    void linksBetweenFilesBecomePlacesInThePage(String to, String place) {
        assertEquals("<p><a href=\"" + place + "\">x</a></p>\n", prose.html("[x](" + to + ")"));
    }

    @Test
    void linksOutsideOpenApartAndTellNothing() {
        String html = prose.html("[x](https://example.org/a)");
        assertTrue(html.contains("target=\"_blank\"") && html.contains("rel=\"noopener noreferrer\""), html);
    }

    @Test
    void tablesAndDrawingsOfTheLessonAreShown() {
        assertTrue(prose.html("| a |\n|---|\n| b |").contains("<td>b</td>"));
        assertTrue(prose.html("![coil](drawings/01-coil.svg)").contains("src=\"/drawings/01-coil.svg\""));
    }
}

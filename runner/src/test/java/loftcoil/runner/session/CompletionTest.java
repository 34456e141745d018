package loftcoil.runner.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Timeout(900)
class CompletionTest {

    private Session session;

    @BeforeAll
    void open() {
        session = SharedSession.lentWithShortLimits();
        session.run("earlier", "double tankHeight = 2;\ndouble tankVolume(double d) { return d; }");
    }

    @AfterAll
    void close() {
        session.close();
    }

    private List<String> at(String withCursor) {
        int cursor = withCursor.indexOf('|');
        return session.complete(withCursor.replace("|", ""), cursor).stream()
                .map(Suggestion::text)
                .toList();
    }

    @Test
    void namesOfTheSessionComplete() {
        assertEquals(List.of("tankHeight", "tankVolume("), at("double y = tank|"));
    }

    @Test
    void aSuggestionSaysWhereItGoes() {
        String source = "int a = 1;\nMath.sq| + a";
        Suggestion suggestion =
                session.complete(source.replace("|", ""), source.indexOf('|')).get(0);
        assertEquals("sqrt(", suggestion.text());
        assertEquals(source.indexOf("sq"), suggestion.from());
    }

    @Test
    void ourNamesComeFirstEachWithItsMeaning() {
        List<Suggestion> water = session.complete("Water.", 6);
        assertTrue(water.get(0).meaning().length() > 5, () -> water.get(0).text() + " has no meaning; all: " + water);
        Suggestion density = water.stream()
                .filter(each -> each.text().startsWith("densityKgPerM3"))
                .findFirst()
                .orElseThrow();
        assertEquals("kilograms in a cubic metre of water at a temperature in °C", density.meaning());
        List<String> names = at("Example.orchardBothy().tank().|");
        assertTrue(names.indexOf("volumeL()") < names.indexOf("equals("), names.toString());
    }

    @Test
    void variablesOfTheSameSnippetCompleteBeforeTheyRun() {
        assertTrue(at("String label = \"a\";\nint lab2 = 1;\nlabel.subs|").contains("substring("));
        assertTrue(at("double fooBar = 1;\nfoo|").contains("fooBar"));
    }

    @Test
    void theEnginesTypesComeFirst() {
        assertEquals("Plot", at("Plo|").get(0));
        assertEquals("Fault", at("Fau|").get(0));
    }

    @Test
    void methodsOfEveryObjectComeLastAndNothingTwice() {
        List<String> all = at("\"a\".|");
        assertFalse(all.isEmpty());
        assertEquals(all.size(), new HashSet<>(all).size());
        assertTrue(all.indexOf("notify()") > all.indexOf("length()"));
    }

    @Test
    void emptyAndBrokenSourcesAreHarmless() {
        assertTrue(at("|").size() > 0);
        at("}}} ((|");
        at("\"open |");
        assertEquals(
                List.of(),
                session.complete("", 99).stream()
                        .filter(suggestion -> suggestion.from() > 0)
                        .toList());
    }
}

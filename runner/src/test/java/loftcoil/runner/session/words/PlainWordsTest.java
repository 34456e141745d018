package loftcoil.runner.session.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words for findings that need no compiler; those of real mistakes are in {@code ProblemsTest}. */
class PlainWordsTest {

    private static String words(String code, String message) {
        return PlainWords.of(new Finding("compiler.err." + code, message, "x", 0, Set.of("tankHeight")));
    }

    @ParameterizedTest
    @CsvSource({"plto, plot", "lenght, length", "tankHeigth, tankHeight", "Sytem, System"})
    void aMistypedNameIsRecognised(String typed, String meant) {
        String words = words("cant.resolve", "cannot find symbol\n  symbol:   variable " + typed);
        assertTrue(words.endsWith("Did you mean " + meant + "?"), words);
    }

    /** Three letters are near to too many names: “ten” is no misspelt “tan”. */
    @Test
    void aShortNameIsNotGuessedAt() {
        assertFalse(words("cant.resolve", "cannot find symbol\n  symbol:   variable bas")
                .contains("Did you mean"));
    }

    @Test
    void theParticularRuleComesBeforeTheGeneral() {
        assertTrue(words("limit.string.overflow", "constant string too long").contains("too long a text"));
        assertTrue(words("limit.code", "code too large").contains("too long a piece"));
        assertTrue(words("x", "incompatible types: possible lossy conversion from double to int")
                .endsWith("or (int) Math.round(…) where a whole number is meant."));
        assertTrue(words("x", "incompatible types: possible lossy conversion from double to long")
                .endsWith("Use double for the variable."));
    }

    @Test
    void typesOfJavaAreKnownByTheirLastName() {
        assertTrue(
                words("unreported.exception.need.to.catch.or.throw", "unreported exception java.io.IOException; must")
                        .startsWith("This can fail with IOException, and"));
        assertEquals(
                "area takes (double,List<String>), but is given (nothing).",
                words(
                        "cant.apply.symbol",
                        "method area in class REPL cannot be applied to given types;\n  required: double,"
                                + "java.util.List<java.lang.String>\n  found:    no arguments\n  reason: lists differ"));
    }

    @Test
    void whatNoRuleKnowsIsTheCompilersFirstLine() {
        assertEquals("odd thing", words("odd", "odd thing\n  more"));
        assertEquals("this cannot be read as Java", words("odd", ""));
    }
}

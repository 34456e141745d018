package loftcoil.engine.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a sentence takes into its holes, and what it does not. */
class SentencesTest {

    private final Sentences sentences = Sentences.read(SentencesTest.class, "sentences-test.properties");

    @Test
    void aSentenceSaysItsMeasuresAndKeepsItsCode() {
        MeasuredText said = sentences.say("near", "where", "riser", "margin", Measure.kelvins(4.3));
        assertEquals("The riser comes within 4.3 K of boiling – at °C.", said.metric());
        assertEquals("near", said.code());
        assertTrue(
                said.parts().contains(Measure.kelvins(4.3).finer(1)),
                said.parts().toString());
    }

    @Test
    void textThatHasMeasuresKeepsThem() {
        MeasuredText inner = MeasuredText.of("a tank of ", Measure.litres(120));
        assertEquals(
                "Look: a tank of 120 L", sentences.say("look", "what", inner).metric());
    }

    @Test
    void joinedSentencesKeepBothCodes() {
        MeasuredText both =
                MeasuredText.of(sentences.say("look", "what", "here"), " ", sentences.say("look", "what", "there"));
        assertEquals("look look", both.code());
    }

    @Test
    void whatDoesNotFitIsAFaultOfTheProgram() {
        assertThrows(IllegalStateException.class, () -> sentences.say("nothing"));
        assertThrows(IllegalStateException.class, () -> sentences.say("near", "where", "riser"));
        assertThrows(IllegalStateException.class, () -> sentences.say("look", "what", "a", "margin", "b"));
        assertThrows(
                IllegalStateException.class,
                () -> sentences.say("near", "where", "riser", "margin", Measure.celsius(4.3)));
        assertThrows(IllegalStateException.class, () -> sentences.say("near", "where", "riser", "margin", "a little"));
        assertThrows(IllegalStateException.class, () -> Sentences.read(SentencesTest.class, "no-such.properties"));
    }

    @Test
    void theCodesAreThoseOfTheFile() {
        assertEquals(Set.of("look", "near"), sentences.codes());
    }
}

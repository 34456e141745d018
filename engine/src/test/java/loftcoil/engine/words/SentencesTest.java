package loftcoil.engine.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a sentence takes into its holes, and what it does not. */
class SentencesTest {

    private final Sentences sentences = Sentences.read(SentencesTest.class, "sentences-test.properties");

    @Test
    void aSentenceSaysItsMeasuresAndKeepsItsCode() {
        MeasuredText said = sentences.say("near", "where", "riser", "margin", Measure.kelvins(4.3));
        assertEquals("The riser comes within 4.3 °C of boiling – at °C.", said.metric());
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
    void aSentenceInAHoleKeepsItsCode() {
        MeasuredText inner = sentences.say("look", "what", "here");
        assertEquals("look look", sentences.say("look", "what", inner).code());
    }

    @Test
    void aStringIsANameAndNoCommonMark() {
        assertTrue(sentences.say("look", "what", "*here*").parts().contains(new MeasuredText.Name("*here*")));
    }

    @Test
    void aNumberThatStandsFastIsAMeasureAndMayLeaveItsUnitToTheNext() {
        MeasuredText said = sentences.say("grow");
        assertEquals("They grow between −2.5 and 45 °C.", said.metric());
        assertTrue(said.parts().contains(Measure.celsius(45)), said.parts().toString());
    }

    @Test
    void sentencesThatBelongTogetherShareWhatFillsThem() {
        List<MeasuredText> said =
                sentences.sayEach("tank", List.of("what", "why"), "volume", Measure.litres(120), "name", "Ann's");
        assertEquals(
                List.of("tank of 120 L", "Ann's, 120 L."),
                said.stream().map(MeasuredText::metric).toList());
        assertEquals("tank.why", said.get(1).code());
        assertThrows(
                IllegalStateException.class,
                () -> sentences.sayEach("tank", List.of("what"), "volume", Measure.litres(120), "name", "x"));
        assertThrows(IllegalStateException.class, () -> sentences.sayEach("tank", List.of("why"), "name", "no volume"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"twice", "brace", "kind", "hole", "unmeasured"})
    void aResourceThatIsMisspeltCannotBeRead(String fault) {
        String file = "sentences-bad-" + fault + ".properties";
        assertTrue(SentencesTest.class.getResource(file) != null, file);
        assertThrows(IllegalStateException.class, () -> Sentences.read(SentencesTest.class, file));
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
        assertEquals(Set.of("grow", "look", "near", "tank.what", "tank.why"), sentences.codes());
    }
}

package loftcoil.engine.survey;

import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Sentences;

/** The sentences of the survey. */
final class SurveyWords {

    static final Sentences SENTENCES = Sentences.read(SurveyWords.class, "survey.properties");

    private SurveyWords() {}

    static MeasuredText say(String code, Object... filling) {
        return SENTENCES.say(code, filling);
    }
}

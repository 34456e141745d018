package loftcoil.runner.lesson;

import java.util.regex.Pattern;

/**
 * How long a lesson takes, counted: its words at 200 a minute, which is slow reading (for adults some 240 are the mean of many
 * studies: Brysbaert 2019, from memory), a minute for each question and half a minute for each run of a snippet.
 */
public final class LessonMinutes {

    private static final double WORDS_A_MINUTE = 200;
    private static final double FOR_A_QUESTION = 1;
    private static final double FOR_A_RUN = 0.5;

    /** What holds at least one letter or digit, marks around it left out. */
    private static final Pattern WORD = Pattern.compile("\\S*[\\p{L}\\p{N}]\\S*");

    private static final Pattern TARGET = Pattern.compile("]\\([^)]*\\)");

    private LessonMinutes() {}

    /**
     * The minutes of a lesson, rounded up.
     *
     * @param lesson all of it; Java is run and not read word by word
     */
    public static int of(Lesson lesson) {
        double minutes = 0;
        for (Step step : lesson.steps()) {
            if (step instanceof Step.Prose prose) {
                minutes += words(prose.markdown()) / WORDS_A_MINUTE;
            } else if (step instanceof Step.Caution caution) {
                minutes += words(caution.markdown()) / WORDS_A_MINUTE;
            } else if (step instanceof Step.Question) {
                minutes += FOR_A_QUESTION;
            } else if (step instanceof Step.Snippet) {
                minutes += FOR_A_RUN;
            }
        }
        return (int) Math.ceil(minutes);
    }

    private static long words(String markdown) {
        return WORD.matcher(TARGET.matcher(markdown).replaceAll("]")).results().count();
    }
}

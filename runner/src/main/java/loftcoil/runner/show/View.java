package loftcoil.runner.show;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.List;
import java.util.Optional;
import loftcoil.runner.progress.AnswerState;
import loftcoil.runner.progress.LessonProgress;

/**
 * Everything a face can show. Text is CommonMark where the component is named {@code markdown}, plain otherwise; numbers are
 * already words.
 */
public final class View {

    private View() {}

    /**
     * The list of lessons.
     *
     * @param lessons in order
     * @param open name of the lesson to open first
     * @param folder where the learner's work is kept
     * @param notices things the learner should know, such as a damaged file that was set aside
     * @param units whose units all is shown in: {@code metric} or {@code us}
     * @param unitsSaid whether somebody chose them; else they are asked for
     */
    public record Course(
            List<LessonLine> lessons,
            String open,
            String folder,
            List<String> notices,
            String units,
            boolean unitsSaid) {}

    /**
     * One lesson in the list.
     *
     * @param id its name
     * @param title what it is called
     * @param minutes how long it takes
     * @param done questions answered right or decided
     * @param of questions in all, predictions not counted
     * @param recall what the refresher found
     */
    public record LessonLine(String id, String title, int minutes, int done, int of, LessonProgress.Recall recall) {}

    /**
     * A lesson with the learner's work in it.
     *
     * @param id its name
     * @param title what it is called
     * @param minutes how long it takes
     * @param steps in reading order
     * @param before name of the lesson before; empty at the first
     * @param after name of the lesson after; empty at the last
     * @param at name of the step last worked on; empty at the start
     */
    public record Lesson(
            String id, String title, int minutes, List<Step> steps, String before, String after, String at) {}

    /** A step with the learner's work in it. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Prose.class, name = "prose"),
        @JsonSubTypes.Type(value = Caution.class, name = "caution"),
        @JsonSubTypes.Type(value = Drawing.class, name = "drawing"),
        @JsonSubTypes.Type(value = Snippet.class, name = "snippet"),
        @JsonSubTypes.Type(value = Question.class, name = "question")
    })
    public sealed interface Step {
        /** Name of the step. */
        String id();
    }

    /** Text to read. */
    public record Prose(String id, String markdown) implements Step {}

    /** A warning. */
    public record Caution(String id, boolean danger, String markdown) implements Step {}

    /** The learner's own loop, drawn to scale. */
    public record Drawing(String id, String caption, Picture picture) implements Step {}

    /**
     * Java to run.
     *
     * @param id name of the step
     * @param source what stands in the editor
     * @param original what the lesson has
     * @param ran true where it has run to its end before
     * @param drag the value to drag, if any
     * @param folds lines of preparation that a face leaves out of sight until they are asked for
     */
    public record Snippet(
            String id, String source, String original, boolean ran, Optional<Slider> drag, List<Fold> folds)
            implements Step {

        /** With the folds that its text has. */
        public Snippet(String id, String source, String original, boolean ran, Optional<Slider> drag) {
            this(id, source, original, ran, drag, Preparation.of(source));
        }
    }

    /** The lines of some Java that only prepare or draw. */
    public static List<Fold> folds(String source) {
        return Preparation.of(source);
    }

    /**
     * Lines of Java that need not be seen: the line before the first says what they do.
     *
     * @param from first line out of sight, from 1
     * @param to last line out of sight
     */
    public record Fold(int from, int to) {

        /** How many lines. */
        public int count() {
            return to - from + 1;
        }
    }

    /**
     * Something to answer.
     *
     * @param id name of the step
     * @param asked {@code predict}, {@code question}, {@code decide} or {@code again}
     * @param form {@code quantity}, {@code choice}, {@code java}, {@code decision} or {@code mend}
     * @param label a short name
     * @param markdown the question
     * @param unit the unit the reference is in; empty where there is none
     * @param options texts to choose among; empty where typed
     * @param starter code to begin from; empty where none
     * @param current the decided value in the design now; empty where it is no decision
     * @param reply what was last said to the learner, if anything
     * @param lines the form of Java without typing: line by line what may stand there; empty where there is none
     */
    public record Question(
            String id,
            String asked,
            String form,
            String label,
            String markdown,
            String unit,
            List<String> options,
            String starter,
            String current,
            Optional<Reply> reply,
            List<List<String>> lines)
            implements Step {}

    /**
     * What is said to an answer.
     *
     * @param answer the answer as typed
     * @param state what came of it
     * @param words what to say first
     * @param hintMarkdown a hint; empty where none
     * @param tries the wrong answers so far
     * @param workedMarkdown the worked solution; empty until it is due
     * @param source where the reference value is from; empty until answered
     * @param stands what stands in the design now; empty where nothing was decided
     */
    public record Reply(
            String answer,
            AnswerState state,
            String words,
            String hintMarkdown,
            Counted tries,
            String workedMarkdown,
            String source,
            Optional<Stands> stands) {

        /** A reply that changed no design. */
        public Reply(
                String answer,
                AnswerState state,
                String words,
                String hintMarkdown,
                Counted tries,
                String workedMarkdown,
                String source) {
            this(answer, state, words, hintMarkdown, tries, workedMarkdown, source, Optional.empty());
        }
    }

    /**
     * Wrong answers to a question.
     *
     * @param wrong how many so far
     * @param left how many more until the worked solution opens; 0 where it has, or never does
     */
    public record Counted(int wrong, int left) {

        /** Of a reply to what is no try. */
        static final Counted NONE = new Counted(0, 0);
    }

    /**
     * What stands in the design after a decision.
     *
     * @param current the decided value, as the design has it
     * @param safety what the design's dangers come to with it, the year left open
     * @param effect what the decision changed, the year left open; empty where the answer is one of before
     */
    public record Stands(String current, Safety safety, Optional<Effect> effect) {}

    /**
     * What the last change of the design comes to.
     *
     * @param number the state in the design's history that it made
     * @param danger in a sentence, where it brings a danger or a caution or one stays that was there before; empty where there is none
     * @param lines the few figures that matter, before and after
     * @param raised cautions that come with it
     * @param settled cautions that are gone with it
     * @param changed dangers that stay and read otherwise now, since what it decides bears on them
     * @param moved what moved with it without being named, such as pipes that are stretched
     * @param open what is not judged yet, in a sentence; empty where all is
     */
    public record Effect(
            int number,
            String danger,
            List<RebuildView.Line> lines,
            List<Finding> raised,
            List<Finding> settled,
            List<Finding> changed,
            List<String> moved,
            String open) {

        /** The same with what moved said otherwise. */
        public Effect withMoved(List<String> other) {
            return new Effect(number, danger, lines, raised, settled, changed, other, open);
        }
    }

    /**
     * The one verdict on a design's dangers.
     *
     * @param level {@code danger}, {@code warning}, {@code note}, {@code clear}, or {@code open} where nothing was found and not all is
     *     judged
     * @param label the level as it is shown
     * @param words what follows from it; may be empty
     * @param findings what was found, the gravest first
     * @param leading how many of them lead; the others stand after a heading or in a fold
     * @param more what those others are called together; empty where there are none
     * @param open what is not judged yet, in a sentence; empty where all is
     */
    public record Safety(
            String level, String label, String words, List<Finding> findings, int leading, String more, String open) {}

    /**
     * One thing that can hurt somebody.
     *
     * @param code its code, the same on every face
     * @param severity {@code danger}, {@code warning} or {@code note}
     * @param label the severity as it is shown
     * @param text plain words with the figure that raised it
     */
    public record Finding(String code, String severity, String label, String text) {}

    /** How far a build sheet is; the code is what pages hold. */
    public enum BuildState {
        /** Nobody has asked for it yet, or the design has changed since. */
        @JsonProperty("none")
        NONE,
        /** It is being worked out. */
        @JsonProperty("working")
        WORKING,
        /** It was ended before its end. */
        @JsonProperty("stopped")
        STOPPED,
        /** Year or starts cannot be worked out. */
        @JsonProperty("refused")
        REFUSED,
        /** It is there. */
        @JsonProperty("done")
        DONE
    }

    /**
     * How far the build sheet of the learner's design is.
     *
     * @param state how far
     * @param percent how much of the work is done, 0 to 100; by what it takes as a rule
     * @param words what is being worked out, or why it ended; may be empty
     */
    public record Building(BuildState state, int percent, String words) {}

    /** How far the search for what clears dangers is; the code is what pages hold. */
    public enum ClearState {
        /** Nobody has searched yet, or the design has changed since. */
        @JsonProperty("none")
        NONE,
        /** It is searching. */
        @JsonProperty("searching")
        SEARCHING,
        /** It was ended before its end. */
        @JsonProperty("stopped")
        STOPPED,
        /** It went to its end. */
        @JsonProperty("done")
        DONE
    }

    /**
     * What would clear the dangers of the learner's design.
     *
     * @param state how far the search is
     * @param done parts done
     * @param of parts in all
     * @param dangers what was found, one entry for each kind of danger; empty until there is something
     * @param words what else is to be said; may be empty
     */
    public record Clears(ClearState state, int done, int of, List<ClearedDanger> dangers, String words) {}

    /**
     * What would clear one danger.
     *
     * @param code code of the danger
     * @param head what stands before the ways, or that none was found
     * @param ways changes of what is built, the cheapest first
     * @param rarerHead what stands before conduct; empty where there is none
     * @param rarer conduct that makes it rarer
     */
    public record ClearedDanger(String code, String head, List<String> ways, String rarerHead, List<String> rarer) {}

    /**
     * What clears a danger, taken into the learner's design.
     *
     * @param words what was done, and what is dangerous in it
     * @param effect figures before and after, cautions that came and went; {@link LearnerApp#effect} has it with the year
     */
    public record Followed(String words, Effect effect) {}

    /** How a snippet ended; the code is what pages hold. */
    public enum RunState {
        /** It ran to its end. */
        @JsonProperty("done")
        DONE,
        /** It does not read as Java. */
        @JsonProperty("problems")
        PROBLEMS,
        /** It threw. */
        @JsonProperty("threw")
        THREW,
        /** It was ended. */
        @JsonProperty("stopped")
        STOPPED
    }

    /**
     * What came of running a snippet.
     *
     * @param state how it ended
     * @param words one line on what happened; empty where all is well
     * @param printed what it printed
     * @param value its last value; empty where none
     * @param type the Java type of the value
     * @param problems what the compiler found
     * @param charts what it drew
     * @param predictions what the learner had guessed, beside what it came to
     * @param millis how long it took
     */
    public record Run(
            RunState state,
            String words,
            String printed,
            String value,
            String type,
            List<Problem> problems,
            List<Picture> charts,
            List<String> predictions,
            long millis) {}

    /**
     * Where the learner's Java does not read.
     *
     * @param line from 1
     * @param column from 1
     * @param words in plain words
     * @param compiler the compiler's own words
     */
    public record Problem(int line, int column, String words, String compiler) {}

    /**
     * Something drawn, with what it says for those who cannot see it.
     *
     * @param title what it is called
     * @param svg a self-contained SVG element; colours carry classes so that a page can restyle them
     * @param says the alternative text
     * @param columns headings of the table of its numbers
     * @param rows the numbers, as words
     */
    public record Picture(String title, String svg, String says, List<String> columns, List<List<String>> rows) {}

    /**
     * The learner's design at a glance.
     *
     * @param name what the design is called
     * @param picture the loop to scale
     * @param figures label and value pairs
     * @param circulates in a few sentences: does it circulate, and with which tank; empty where a danger says the same
     * @param safety what its dangers come to, the year left open
     */
    public record Design(
            String name, Picture picture, Picture plan, List<Figure> figures, String circulates, Safety safety) {}

    /**
     * A place in the course that was searched for.
     *
     * @param kind {@code lesson}, {@code caution}, {@code java}, {@code question} or {@code word}
     * @param lesson name of its lesson; empty for a word
     * @param step name of the step, or of a word within its address
     * @param where what the lesson is called; empty for a word
     * @param head the heading it stands under, the question's label, or the word
     * @param excerpt some words around what was found
     */
    public record Found(String kind, String lesson, String step, String where, String head, String excerpt) {}

    /** A labelled figure. */
    public record Figure(String label, String value) {}

    /**
     * The glossary.
     *
     * @param terms in their order; empty where the course has none
     */
    public record Words(List<Term> terms) {}

    /**
     * One word of the glossary.
     *
     * @param name the word
     * @param markdown what it means
     * @param lesson name of the lesson it first stands in; empty where none is named
     * @param lessonTitle what that lesson is called
     */
    public record Term(String name, String markdown, String lesson, String lessonTitle) {}

    /**
     * What to do in the worst hour, and before a fire.
     *
     * @param title what it is called
     * @param rules in the order in which somebody looks for them
     * @param worth what the table is worth, and what comes before it
     */
    public record ConductTable(String title, List<ConductRule> rules, String worth) {}

    /**
     * One rule of it.
     *
     * @param code its code, the same on every face
     * @param when when it holds
     * @param act what to do
     */
    public record ConductRule(String code, String when, String act) {}

    /**
     * One way to go on typing.
     *
     * @param text what would stand there
     * @param from offset it would start at, from 0
     * @param meaning what it is, in one line; empty where that is not known
     */
    public record Suggestion(String text, int from, String meaning) {}
}

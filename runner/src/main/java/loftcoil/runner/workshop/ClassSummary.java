package loftcoil.runner.workshop;

import java.util.List;
import java.util.Map;
import loftcoil.runner.course.Course;
import loftcoil.runner.progress.LessonProgress;

/**
 * What a teacher wants to know of a class: who is where, which question trips whom, and with which wrong idea.
 *
 * @param lessons the lessons of the course, in order
 * @param learners a row for each learner
 * @param questions a row for each question, in the order of the course
 * @param skipped what lies in the folder and could not be used
 */
public record ClassSummary(
        List<LessonName> lessons,
        List<LearnerRow> learners,
        List<QuestionRow> questions,
        List<ClassRoll.Skipped> skipped) {

    /** Keeps copies of the lists. */
    public ClassSummary {
        lessons = List.copyOf(lessons);
        learners = List.copyOf(learners);
        questions = List.copyOf(questions);
        skipped = List.copyOf(skipped);
    }

    /**
     * A lesson.
     *
     * @param id its name
     * @param title what it is called
     * @param of how many questions and decisions it has
     */
    public record LessonName(String id, String title, int of) {}

    /**
     * One learner.
     *
     * @param name name of the folder or file
     * @param last where the learner is: the lesson last open and the step; empty where nothing was begun
     * @param done by lesson, how many questions and decisions are done
     * @param tries answers judged in all
     * @param wrong wrong answers in all
     * @param faded titles of the lessons that the refresher found faded
     */
    public record LearnerRow(String name, String last, List<Integer> done, int tries, int wrong, List<String> faded) {
        /** Keeps copies of the lists. */
        public LearnerRow {
            done = List.copyOf(done);
            faded = List.copyOf(faded);
        }
    }

    /**
     * One question.
     *
     * @param lesson title of its lesson
     * @param label what it is called
     * @param tried learners who tried it
     * @param rightFirst learners whose first answer was right
     * @param rightLater learners who were right after a wrong answer
     * @param wrong names of the learners who tried and were not right yet
     * @param ideas how many learners had each wrong idea, the most frequent first
     * @param otherWrong wrong answers in which no known idea was seen
     */
    public record QuestionRow(
            String lesson,
            String label,
            int tried,
            int rightFirst,
            int rightLater,
            List<String> wrong,
            List<Map.Entry<String, Integer>> ideas,
            int otherWrong) {
        /** Keeps copies of the lists. */
        public QuestionRow {
            wrong = List.copyOf(wrong);
            ideas = List.copyOf(ideas);
        }

        /** Learners whose first answer was not right. */
        public int tripped() {
            return tried - rightFirst;
        }
    }

    /**
     * Sums up a class.
     *
     * @param course the course the class takes
     * @param roll its learners
     */
    public static ClassSummary of(Course course, ClassRoll roll) {
        List<Asked> asked = Asked.all(course);
        List<LessonName> lessons = course.lessons().stream()
                .map(lesson -> new LessonName(
                        lesson.id(),
                        lesson.title(),
                        LessonProgress.counted(lesson).size()))
                .toList();
        return new ClassSummary(
                lessons,
                roll.learners().stream()
                        .map(learner -> LearnerRows.row(course, asked, learner))
                        .toList(),
                asked.stream()
                        .filter(Asked::judged)
                        .map(each -> QuestionRows.row(each, roll.learners()))
                        .toList(),
                roll.skipped());
    }

    /** The questions that tripped anybody, the one that tripped most learners first. */
    public List<QuestionRow> tripping() {
        return questions.stream()
                .filter(row -> row.tripped() > 0)
                .sorted((one, other) -> Integer.compare(other.tripped(), one.tripped()))
                .toList();
    }
}

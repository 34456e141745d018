package loftcoil.runner.workshop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a whole class made of one question. */
final class QuestionRows {

    private QuestionRows() {}

    static ClassSummary.QuestionRow row(Asked asked, List<ClassRoll.Learner> learners) {
        List<String> wrong = new ArrayList<>();
        Map<String, Integer> ideas = new LinkedHashMap<>();
        int tried = 0;
        int rightFirst = 0;
        int rightLater = 0;
        int other = 0;
        for (ClassRoll.Learner learner : learners) {
            Tried each = asked.by(learner.progress());
            if (each.tries() > 0) {
                tried++;
                rightFirst += each.rightFirst() ? 1 : 0;
                rightLater += each.right() && !each.rightFirst() ? 1 : 0;
                other += each.otherWrong();
                each.ideas().forEach(idea -> ideas.merge(asked.idea(idea), 1, Integer::sum));
                if (!each.right()) {
                    wrong.add(learner.name());
                }
            }
        }
        List<Map.Entry<String, Integer>> sorted = ideas.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                .map(entry -> Map.entry(entry.getKey(), entry.getValue()))
                .toList();
        return new ClassSummary.QuestionRow(
                asked.lesson().title(), asked.step().label(), tried, rightFirst, rightLater, wrong, sorted, other);
    }
}

package loftcoil.runner.exercise;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import loftcoil.engine.json.JsonFields;

/** Checks that every {@code {{name}}} of an exercise has a number, and that every number is told to the learner. */
final class PlaceholderCheck {

    private PlaceholderCheck() {}

    static void check(JsonFields fields, Exercise exercise) {
        Set<String> names = exercise.about().vary().keySet();
        String shown = exercise instanceof Code code ? exercise.text() + code.starter() : exercise.text();
        Set<String> told = in(exercise.text());
        for (String name : names) {
            boolean inStarter = exercise instanceof Code && shown.contains(name);
            if (!told.contains(name) && !inStarter) {
                fields.fault(
                        "vary." + name, "not in the text", "{{" + name + "}} in text, so that the learner knows it");
            }
        }
        unknown(fields, "text", exercise.text(), names);
        unknown(fields, "source", exercise.about().source(), names);
        Set<String> inSolution = new HashSet<>(names);
        if (exercise instanceof Reckoned) {
            inSolution.add("answer");
        }
        unknown(fields, "solution.text", exercise.about().solution().text(), inSolution);
        if (exercise instanceof Choice choice) {
            for (int i = 0; i < choice.options().size(); i++) {
                unknown(
                        fields,
                        "choices[" + i + "].text",
                        choice.options().get(i).text(),
                        names);
                unknown(
                        fields,
                        "choices[" + i + "].say",
                        choice.options().get(i).say(),
                        names);
            }
        }
        List<KnownMistake> mistakes = exercise instanceof Reckoned reckoned ? reckoned.mistakes() : List.of();
        for (int i = 0; i < mistakes.size(); i++) {
            unknown(fields, "mistakes[" + i + "].hint", mistakes.get(i).hint(), names);
        }
    }

    private static void unknown(JsonFields fields, String field, String text, Set<String> allowed) {
        for (String name : in(text)) {
            if (!allowed.contains(name)) {
                fields.fault(
                        field,
                        "{{" + name + "}}",
                        allowed.isEmpty() ? "no {{…}}, as nothing varies" : "{{…}} of " + allowed);
            }
        }
    }

    private static Set<String> in(String text) {
        Set<String> names = new HashSet<>();
        Matcher place = Numbers.PLACE.matcher(text);
        while (place.find()) {
            names.add(place.group(1));
        }
        return names;
    }
}

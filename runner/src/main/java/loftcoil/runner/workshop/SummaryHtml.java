package loftcoil.runner.workshop;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import loftcoil.runner.look.Colours;
import loftcoil.runner.show.Html;

/** A class as one page: no scripts, nothing from elsewhere, readable on paper. */
public final class SummaryHtml {

    private static final String STYLE = "summary.css";

    private SummaryHtml() {}

    /** The page as text. */
    public static String write(ClassSummary summary) {
        StringBuilder out = new StringBuilder(
                """
                <!doctype html>
                <html lang="en">
                <head>
                <meta charset="utf-8">
                <meta name="viewport" content="width=device-width, initial-scale=1">
                <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
                <meta name="color-scheme" content="light dark">
                <title>Class summary · Loftcoil</title>
                <style>
                """);
        out.append(Colours.sheet())
                .append(style())
                .append("</style>\n</head>\n<body>\n<main>\n<h1>Class summary</h1>\n");
        if (summary.learners().isEmpty()) {
            out.append(
                    "<p>No learner’s work was found in the folder. Copy each learner’s own folder into it, named after the"
                            + " learner, and run the command again.</p>\n");
        } else {
            out.append(where(summary)).append(trips(summary)).append(all(summary));
        }
        out.append(skipped(summary));
        return out.append("</main>\n</body>\n</html>\n").toString();
    }

    private static String where(ClassSummary summary) {
        List<String> head = new ArrayList<>(List.of("Learner", "Last at", "Answers", "Wrong"));
        summary.lessons()
                .forEach(lesson -> head.add("<abbr title=\"" + Html.text(lesson.title()) + "\">"
                        + Html.text(lesson.id().substring(0, 2)) + "</abbr>"));
        head.add("Faded");
        List<List<String>> rows = new ArrayList<>();
        for (ClassSummary.LearnerRow learner : summary.learners()) {
            List<String> row = new ArrayList<>();
            row.add(Html.text(learner.name()));
            row.add(Html.text(learner.last().isEmpty() ? "not begun" : learner.last()));
            row.add(Integer.toString(learner.tries()));
            row.add(Integer.toString(learner.wrong()));
            for (int i = 0; i < summary.lessons().size(); i++) {
                row.add(done(learner.done().get(i), summary.lessons().get(i).of()));
            }
            row.add(Html.text(String.join(", ", learner.faded())));
            rows.add(row);
        }
        String lessons = summary.lessons().stream()
                .map(lesson -> lesson.id().substring(0, 2) + " " + lesson.title())
                .collect(Collectors.joining("; "));
        return "<h2>Who is where</h2>\n<p>Each lesson’s column says how many of its questions and decisions are done. Guesses are"
                + " not counted.</p>\n" + Html.captioned("Learners and lessons", head, rows) + "\n<p class=\"quiet\">"
                + Html.text(lessons) + ".</p>\n";
    }

    private static String done(int done, int of) {
        String words = done + " of " + of;
        String cell = of > 0 && done == of ? "<strong>" + words + "</strong>" : done == 0 ? "–" : words;
        return "<span class=\"whole\">" + cell + "</span>";
    }

    private static String trips(ClassSummary summary) {
        List<ClassSummary.QuestionRow> tripping = summary.tripping();
        if (tripping.isEmpty()) {
            return "<h2>What trips whom</h2>\n<p>No question has tripped anybody so far.</p>\n";
        }
        List<List<String>> rows = tripping.stream()
                .map(question -> List.of(
                        named(question),
                        question.tripped() + " of " + question.tried(),
                        question.wrong().isEmpty() ? "nobody" : Html.text(String.join(", ", question.wrong())),
                        ideas(question)))
                .toList();
        return "<h2>What trips whom</h2>\n"
                + Html.captioned(
                        "Questions that tripped somebody, the hardest first",
                        List.of("Question", "Not right first time", "Not right yet", "Wrong ideas"),
                        rows)
                + "\n";
    }

    private static String ideas(ClassSummary.QuestionRow question) {
        List<String> items = new ArrayList<>();
        question.ideas().forEach(idea -> items.add(idea.getKey() + ": " + learners(idea.getValue())));
        if (question.otherWrong() > 0) {
            items.add(
                    "no known idea: " + (question.otherWrong() == 1 ? "1 answer" : question.otherWrong() + " answers"));
        }
        return Html.list(items.stream().map(Html::text).toList());
    }

    private static String learners(int count) {
        return count == 1 ? "1 learner" : count + " learners";
    }

    private static String all(ClassSummary summary) {
        List<ClassSummary.QuestionRow> tried = summary.questions().stream()
                .filter(question -> question.tried() > 0)
                .toList();
        List<List<String>> rows = tried.stream()
                .map(question -> List.of(
                        named(question),
                        Integer.toString(question.tried()),
                        Integer.toString(question.rightFirst()),
                        Integer.toString(question.rightLater()),
                        Integer.toString(question.wrong().size())))
                .toList();
        int left = summary.questions().size() - tried.size();
        String rest = left == 0 ? "" : "<p>" + left + " of the course’s questions nobody has tried yet.</p>\n";
        return "<h2>Every question tried</h2>\n"
                + Html.captioned(
                        "Learners by question",
                        List.of("Question", "Tried", "Right first time", "Right later", "Not right yet"),
                        rows)
                + "\n" + rest;
    }

    private static String named(ClassSummary.QuestionRow question) {
        return Html.text(question.label()) + " <span class=\"quiet\">" + Html.text(question.lesson()) + "</span>";
    }

    private static String skipped(ClassSummary summary) {
        if (summary.skipped().isEmpty()) {
            return "";
        }
        return "<h2>Not read</h2>\n"
                + Html.list(summary.skipped().stream()
                        .map(each -> Html.text(each.name() + ": " + each.why()))
                        .toList())
                + "\n";
    }

    private static String style() {
        try (InputStream in = SummaryHtml.class.getResourceAsStream(STYLE)) {
            if (in == null) {
                throw new IllegalStateException(STYLE + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}

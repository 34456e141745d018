package loftcoil.runner.handout;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Example;
import loftcoil.runner.course.Course;
import loftcoil.runner.lesson.Drag;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.session.Prelude;
import loftcoil.runner.session.SnippetClassPath;

/** The Java of the lessons as files for the JDK's own shell, so that nobody needs Loftcoil to go on with it. */
public final class SnippetExport {

    private static final String ENDING = ".jsh";

    private SnippetExport() {}

    /**
     * One file a lesson.
     *
     * @return text by file name, in the order of the lessons
     */
    public static Map<String, String> of(Course course) {
        String imports = Prelude.forLessons(SnippetClassPath.named());
        Map<String, String> files = new LinkedHashMap<>();
        course.lessons().forEach(lesson -> files.put(lesson.id() + ENDING, file(lesson, imports)));
        return files;
    }

    private static String file(Lesson lesson, String imports) {
        StringBuilder text = new StringBuilder(
                """
                // %s
                // The Java of this lesson for the shell of the JDK, which may also be typed into:
                //     jshell --class-path loftcoil.jar %s
                // Signs beyond plain letters are written as codes such as \\u00b0, so that every machine reads them. A plot is written
                // as a picture into the folder loftcoil-plots here; the shell says where. /exit ends it.

                %s
                // The design that the course begins with. For your own, put its file design.json here and write
                //     Design design = DesignJson.read(java.nio.file.Files.readString(java.nio.file.Path.of("design.json")));
                Design design = Example.orchardBothy();
                """
                        .formatted(lesson.title(), lesson.id() + ENDING, imports));
        for (Step step : lesson.steps()) {
            if (step instanceof Step.Snippet snippet) {
                text.append("\n// ---- ").append(snippet.id()).append('\n');
                snippet.drag().ifPresent(drag -> text.append(value(drag)));
                text.append(ShellSource.of(snippet.source()));
            }
        }
        return text.toString();
    }

    private static String value(Drag written) {
        Drag drag = written.own(path -> Changes.current(Example.orchardBothy(), path));
        return String.format(
                Locale.ROOT,
                "// %s, %s: try values from %s to %s%ndouble %s = %s;%n",
                drag.label(),
                drag.unit(),
                drag.from(),
                drag.to(),
                drag.variable(),
                drag.start());
    }
}

package loftcoil.runner.lesson;

import java.util.List;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import org.commonmark.ext.front.matter.YamlFrontMatterBlock;
import org.commonmark.ext.front.matter.YamlFrontMatterExtension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/** Reads the text of a lesson file: CommonMark with tables, and front matter at its head. */
public final class LessonParser {

    /** Longest lesson, in UTF-16 units. A long chapter of a book is a tenth of this. */
    public static final int LONGEST = 1_000_000;

    private static final Parser PARSER = Parser.builder()
            .extensions(List.of(YamlFrontMatterExtension.create(), TablesExtension.create()))
            .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
            .build();

    private LessonParser() {}

    /**
     * The lesson in that text.
     *
     * @param lessonId name of the lesson, such as {@code 01-warm-water}
     * @param fileName the file as its writer knows it, for messages
     * @param text what stands in the file
     * @throws RefusedException where anything is wrong in it, with every fault found
     */
    public static Lesson parse(String lessonId, String fileName, String text) {
        ParsedLesson parsed = read(lessonId, fileName, text);
        if (!parsed.faults().isEmpty()) {
            throw new RefusedException(parsed.faults());
        }
        return parsed.lesson();
    }

    /**
     * As much of the lesson as can be read, with every fault found; for reading a whole course at once.
     *
     * @param lessonId name of the lesson
     * @param fileName the file as its writer knows it, for messages
     * @param text what stands in the file
     */
    public static ParsedLesson read(String lessonId, String fileName, String text) {
        if (text.length() > LONGEST) {
            String given = "a lesson of " + text.length() + " characters";
            Fault fault = new Fault(fileName + ":1:1", given, "at most " + LONGEST, "");
            return new ParsedLesson(new Lesson(lessonId, "", 1, 1, List.of(), List.of()), List.of(), List.of(fault));
        }
        SourceText source = new SourceText(fileName, text);
        Node document = PARSER.parse(source.text());
        FrontMatter front = FrontMatter.read(source, document);
        if (!front.unclosed()) {
            heading(source, document);
        }
        List<Step> steps = new StepsReader(source).read(document);
        List<ParsedLesson.Link> links = new Forbidden(source).in(document);
        Lesson lesson = new Lesson(lessonId, front.title(), front.step(), front.minutes(), front.needs(), steps);
        return new ParsedLesson(lesson, links, source.faults());
    }

    private static void heading(SourceText source, Node document) {
        Node first = document.getFirstChild();
        if (first instanceof YamlFrontMatterBlock) {
            first = first.getNext();
        }
        String allowed = "a heading of the first level (# Title) before anything else, and no second one";
        if (!(first instanceof Heading heading && heading.getLevel() == 1)) {
            source.fault(first == null ? 1 : SourceText.firstLine(first), 1, "no heading", allowed);
        }
        for (Node node = first == null ? null : first.getNext(); node != null; node = node.getNext()) {
            if (node instanceof Heading heading && heading.getLevel() == 1) {
                source.fault(node, "a second heading of the first level", allowed);
            }
        }
    }
}

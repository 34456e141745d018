package loftcoil.runner.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import loftcoil.engine.fault.Fault;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;

/** The text of one lesson file, with the faults found in it so far. */
final class SourceText {

    private final String file;
    private final String text;
    private final List<String> lines;
    private final List<Found> faults = new ArrayList<>();

    private record Found(int line, int column, Fault fault) {}

    SourceText(String file, String raw) {
        this.file = file;
        String unmarked = raw.startsWith("\uFEFF") ? raw.substring(1) : raw;
        this.text = unmarked.replace("\r\n", "\n").replace('\r', '\n');
        this.lines = List.of(text.split("\n", -1));
    }

    String text() {
        return text;
    }

    List<String> lines() {
        return lines;
    }

    /** Lines from the one to the other, both included, counted from 1. */
    String between(int first, int last) {
        return String.join("\n", lines.subList(first - 1, Math.min(last, lines.size())));
    }

    void fault(int line, int column, String what, String allowed) {
        faults.add(new Found(line, column, new Fault(file + ":" + line + ":" + column, what, allowed, "")));
    }

    void fault(Node at, String what, String allowed) {
        fault(firstLine(at), column(at), what, allowed);
    }

    /** All faults found so far, in the order of the lines. */
    List<Fault> faults() {
        return faults.stream()
                .sorted(Comparator.comparingInt(Found::line).thenComparingInt(Found::column))
                .map(Found::fault)
                .toList();
    }

    static int firstLine(Node node) {
        return spans(node).stream().mapToInt(SourceSpan::getLineIndex).min().orElse(0) + 1;
    }

    static int lastLine(Node node) {
        return spans(node).stream().mapToInt(SourceSpan::getLineIndex).max().orElse(0) + 1;
    }

    static int column(Node node) {
        List<SourceSpan> spans = spans(node);
        return spans.isEmpty() ? 1 : spans.get(0).getColumnIndex() + 1;
    }

    /** Spans of the node, or of the nearest node around it that has some. */
    private static List<SourceSpan> spans(Node node) {
        Node at = node;
        while (at.getSourceSpans().isEmpty() && at.getParent() != null) {
            at = at.getParent();
        }
        return at.getSourceSpans();
    }
}

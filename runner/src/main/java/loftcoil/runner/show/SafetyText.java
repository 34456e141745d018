package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;

/** The verdict on danger as lines of plain text. */
public final class SafetyText {

    private SafetyText() {}

    /** The verdict and all that was found. Lines may be long. */
    public static List<String> lines(View.Safety safety) {
        List<String> lines = new ArrayList<>(top(safety));
        List<View.Finding> findings = safety.findings();
        findings.subList(0, safety.leading()).forEach(finding -> lines.add("- " + line(finding)));
        if (!safety.more().isEmpty()) {
            lines.add(safety.more());
        }
        findings.subList(safety.leading(), findings.size()).forEach(finding -> lines.add("- " + line(finding)));
        return List.copyOf(lines);
    }

    /** What it comes to, and what is not judged yet. */
    static List<String> top(View.Safety safety) {
        List<String> lines = new ArrayList<>();
        lines.add((safety.label() + ". " + safety.words()).strip());
        if (!safety.open().isEmpty()) {
            lines.add(safety.open());
        }
        return lines;
    }

    /** One finding, its code and severity first. */
    static String line(View.Finding finding) {
        return finding.label() + " (" + finding.code() + "): " + finding.text();
    }
}

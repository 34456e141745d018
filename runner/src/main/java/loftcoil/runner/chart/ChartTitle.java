package loftcoil.runner.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Element;

/** The title, broken into lines between words where it is long. */
final class ChartTitle {

    private static final int LETTERS = 44;
    private static final int LINE = 22;

    private final List<String> lines = new ArrayList<>();

    ChartTitle(String title) {
        StringBuilder line = new StringBuilder();
        for (String word :
                java.util.regex.Pattern.compile(" +").splitAsStream(title).toList()) {
            if (line.length() > 0 && line.length() + 1 + word.length() > LETTERS) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
    }

    int height() {
        return 4 + lines.size() * LINE;
    }

    void draw(Element svg) {
        for (int i = 0; i < lines.size(); i++) {
            svg.appendChild(SvgElement.text(
                    svg.getOwnerDocument(),
                    lines.get(i),
                    Map.of(
                            "x", "8",
                            "y", "" + (20 + i * LINE),
                            "font-size", "18",
                            "font-weight", "bold",
                            "class", "lc-ink-fill")));
        }
    }
}

package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;

/** Lists in lines of words. */
final class Lists {

    private Lists() {}

    /** Words in as many lines as they need, the first begun by a head. */
    static List<String> lines(String head, List<String> words, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(head);
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i) + (i + 1 < words.size() ? ", " : "");
            if (line.length() + word.strip().length() > width && !line.isEmpty()) {
                lines.add(line.toString().strip());
                line.setLength(0);
            }
            line.append(word);
        }
        lines.add(line.toString().strip());
        return lines;
    }
}

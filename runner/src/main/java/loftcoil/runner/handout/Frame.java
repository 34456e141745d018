package loftcoil.runner.handout;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import loftcoil.runner.look.Colours;
import loftcoil.runner.show.Html;

/**
 * What stands around everything we print: one well-formed file that needs no other.
 *
 * @param title what the file is called
 * @param about one sentence on what it is
 * @param head what stands at the top of each printed page, left and right
 * @param paper what it is printed on
 */
record Frame(String title, String about, Head head, Paper paper) {

    /** Top of each printed page. */
    record Head(String left, String right) {}

    /** The same on another paper. */
    Frame on(Paper other) {
        return new Frame(title, about, head, other);
    }

    /** For a browser: for the screen, light and dark, and for its printer. */
    String forBrowser(String body) {
        return page(body, Colours.sheet() + Colours.drawing() + style("paper.css") + style("screen.css"));
    }

    /** For the PDF: the paper alone. */
    String forPdf(String body) {
        return page(body, Colours.light().fill(style("paper.css")));
    }

    private String page(String body, String styles) {
        return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\" xml:lang=\"en\">\n<head>\n"
                + "<meta charset=\"utf-8\" />\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\" />\n"
                + "<meta name=\"color-scheme\" content=\"light dark\" />\n"
                + "<meta name=\"description\" content=\"" + Html.text(about) + "\" />\n"
                + "<meta name=\"subject\" content=\"" + Html.text(about) + "\" />\n"
                + Html.element("title", Html.text(title))
                + "<style>\n" + styles + pageRules() + "</style>\n</head>\n<body>\n"
                + "<main>\n" + body + "</main>\n</body>\n</html>\n";
    }

    private String pageRules() {
        return "@page { size: " + paper.css() + " portrait; margin: 13mm 10mm 11mm 10mm;\n"
                + box("top-left", "bottom", cssText(head.left()))
                + box("top-right", "bottom", cssText(head.right()))
                + box("bottom-left", "top", "\"Loftcoil\"")
                + box("bottom-right", "top", "\"page \" counter(page) \" of \" counter(pages)")
                + "}\n";
    }

    /** A box in the margin of each printed page. */
    private static String box(String place, String towardsText, String content) {
        return "  @" + place + " { content: " + content + "; font-family: \"Sheet Sans\", system-ui, sans-serif;"
                + " font-size: 8pt; color: " + Colours.light().of("soft") + "; vertical-align: " + towardsText
                + "; padding: 2mm 0; text-align: "
                + place.replaceFirst(".*-", "") + "; }\n";
    }

    /** A string of a style sheet, within an element whose content is not escaped: no quote, tag or line can get out. */
    private static String cssText(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            boolean plain = Character.isLetterOrDigit(c) || " .,:;-−–()°/+×’'".indexOf(c) >= 0;
            out.append(plain ? Character.toString(c) : String.format("\\%x ", c));
        });
        return out.append('"').toString();
    }

    private static String style(String file) {
        try (InputStream in = Frame.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException(file + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(file, failure);
        }
    }
}

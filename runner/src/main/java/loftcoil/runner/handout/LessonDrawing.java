package loftcoil.runner.handout;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import loftcoil.runner.show.Html;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.node.Text;

/** A drawing that stands in a lesson's text, drawn into the page. */
final class LessonDrawing {

    private static final String FOLDER = "/loftcoil/lessons/";

    private LessonDrawing() {}

    /** The SVG of an image of ours; its words alone where it is none. */
    static String svg(Image image) {
        String path = image.getDestination().replaceFirst("^\\./", "");
        if (!path.matches("drawings/[A-Za-z0-9_-]+\\.svg")) {
            return Html.element("em", Html.text(words(image)));
        }
        try (InputStream in = LessonDrawing.class.getResourceAsStream(FOLDER + path)) {
            return in == null
                    ? Html.element("em", Html.text(words(image)))
                    : new String(in.readAllBytes(), StandardCharsets.UTF_8).replaceFirst("^<\\?xml[^>]*>\\s*", "");
        } catch (IOException failure) {
            throw new UncheckedIOException(path, failure);
        }
    }

    private static String words(Image image) {
        StringBuilder words = new StringBuilder();
        for (Node child = image.getFirstChild(); child != null; child = child.getNext()) {
            words.append(child instanceof Text text ? text.getLiteral() : "");
        }
        return words.toString();
    }
}

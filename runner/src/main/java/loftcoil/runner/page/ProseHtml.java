package loftcoil.runner.page;

import java.util.List;
import java.util.Map;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.AttributeProvider;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * Markdown to HTML for the page. HTML in the text is shown, not obeyed; addresses with odd schemes are dropped; links between
 * lesson files and to exercises lead to their place in the page.
 */
final class ProseHtml {

    private static final List<Extension> EXTENSIONS = List.of(TablesExtension.create());

    private final Parser parser = Parser.builder().extensions(EXTENSIONS).build();
    private final HtmlRenderer renderer = HtmlRenderer.builder()
            .extensions(EXTENSIONS)
            .escapeHtml(true)
            .sanitizeUrls(true)
            .attributeProviderFactory(context -> new InPage())
            .build();

    String html(String markdown) {
        return renderer.render(parser.parse(markdown));
    }

    /** Turns addresses of the source tree into addresses of the page. */
    private static final class InPage implements AttributeProvider {

        @Override
        public void setAttributes(Node node, String tagName, Map<String, String> attributes) {
            if (node instanceof Link) {
                link(attributes);
            } else if (node instanceof Image) {
                attributes.computeIfPresent("src", (key, to) -> to.replaceFirst("^(\\./)?drawings/", "/drawings/"));
            }
        }

        private static void link(Map<String, String> attributes) {
            String to = attributes.getOrDefault("href", "");
            if (to.matches("(?i)https?://.*")) {
                attributes.put("rel", "noopener noreferrer");
                attributes.put("target", "_blank");
            } else {
                attributes.remove("rel");
                attributes.put("href", inPage(to));
            }
        }

        private static String inPage(String to) {
            return to.replaceFirst("^(?:\\./|\\.\\./lessons/)?words\\.md#([A-Za-z0-9_-]+)$", "#/words/$1")
                    .replaceFirst("^(?:\\./|\\.\\./lessons/)?([A-Za-z0-9_-]+)\\.md(?:#.*)?$", "#/$1")
                    .replaceFirst("^\\.\\./exercises/([A-Za-z0-9_-]+)/([A-Za-z0-9_-]+)\\.json$", "#/$1/$2");
        }
    }
}

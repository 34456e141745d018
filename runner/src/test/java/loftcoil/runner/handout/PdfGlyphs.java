package loftcoil.runner.handout;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Where each sign of a PDF stands, words of its pictures among them. */
final class PdfGlyphs {

    /** Signs of one line touch; this share of the smaller one's area no two of them have in common. */
    private static final double TOUCH = 0.25;

    /** Less than the margin of 14 mm by what a slanted sign leans. */
    private static final double MARGIN_PT = 39;

    private static final double HALF_GAP_PT = 5;

    /** Below the name, the title and what else stands across the first page. */
    private static final double HEAD_PT = 150;

    private PdfGlyphs() {}

    /** Signs that stand on one another, page by page, in words; empty where none does. */
    static List<String> collisions(byte[] pdf) throws IOException {
        List<String> found = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                collide(page, glyphs(document, page), found);
            }
        }
        return found;
    }

    /** Signs that reach out of their column: into the margin, or into the gap below the head of the first page. */
    static List<String> outsideColumns(byte[] pdf) throws IOException {
        List<String> found = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                double width = document.getPage(page - 1).getMediaBox().getWidth();
                double height = document.getPage(page - 1).getMediaBox().getHeight();
                for (TextPosition glyph : glyphs(document, page)) {
                    boolean body = glyph.getYDirAdj() > (page == 1 ? HEAD_PT : MARGIN_PT)
                            && glyph.getYDirAdj() < height - MARGIN_PT;
                    boolean margin = glyph.getXDirAdj() < MARGIN_PT || right(glyph) > width - MARGIN_PT;
                    boolean gap = body
                            && glyph.getXDirAdj() < width / 2 + HALF_GAP_PT
                            && right(glyph) > width / 2 - HALF_GAP_PT;
                    if (margin || gap) {
                        found.add(String.format(
                                "page %d at %.0f, %.0f: %s",
                                page, glyph.getXDirAdj(), glyph.getYDirAdj(), glyph.getUnicode()));
                    }
                }
            }
        }
        return found;
    }

    private static void collide(int page, List<TextPosition> glyphs, List<String> found) {
        glyphs.sort(Comparator.comparingDouble(TextPosition::getYDirAdj));
        for (int i = 0; i < glyphs.size(); i++) {
            TextPosition one = glyphs.get(i);
            for (int j = i + 1; j < glyphs.size(); j++) {
                TextPosition other = glyphs.get(j);
                if (other.getYDirAdj() - height(other) > one.getYDirAdj()) {
                    break;
                }
                if (common(one, other) > TOUCH) {
                    found.add(String.format(
                            "page %d at %.0f, %.0f: %s on %s",
                            page, one.getXDirAdj(), one.getYDirAdj(), one.getUnicode(), other.getUnicode()));
                }
            }
        }
    }

    private static double common(TextPosition one, TextPosition other) {
        double across = Math.min(right(one), right(other)) - Math.max(one.getXDirAdj(), other.getXDirAdj());
        double up = Math.min(one.getYDirAdj(), other.getYDirAdj())
                - Math.max(one.getYDirAdj() - height(one), other.getYDirAdj() - height(other));
        double smaller = Math.min(one.getWidthDirAdj() * height(one), other.getWidthDirAdj() * height(other));
        return across <= 0 || up <= 0 || smaller <= 0 ? 0 : across * up / smaller;
    }

    private static double right(TextPosition glyph) {
        return glyph.getXDirAdj() + glyph.getWidthDirAdj();
    }

    private static double height(TextPosition glyph) {
        return glyph.getHeightDir();
    }

    private static List<TextPosition> glyphs(PDDocument document, int page) throws IOException {
        List<TextPosition> glyphs = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition text) {
                if (!text.getUnicode().isBlank() && text.getDir() == 0) {
                    glyphs.add(text);
                }
            }
        };
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        stripper.getText(document);
        return glyphs;
    }
}

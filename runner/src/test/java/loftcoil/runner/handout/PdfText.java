package loftcoil.runner.handout;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;

/** Looks into a PDF with a library that did not make its pages. */
final class PdfText {

    private PdfText() {}

    /** Its text, spaces and line ends taken as one blank. */
    static String of(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return plain(new PDFTextStripper().getText(document));
        }
    }

    /** The text of one page, from 1. */
    static String page(PDDocument document, int number) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(number);
        stripper.setEndPage(number);
        return plain(stripper.getText(document));
    }

    /** Each font of the pages, and whether it is in the file. */
    static Map<String, Boolean> fonts(PDDocument document) throws IOException {
        Map<String, Boolean> fonts = new LinkedHashMap<>();
        for (PDPage page : document.getPages()) {
            for (COSName name : page.getResources().getFontNames()) {
                PDFont font = page.getResources().getFont(name);
                fonts.merge(font.getName(), font.isEmbedded(), Boolean::logicalAnd);
            }
        }
        return fonts;
    }

    static String plain(String text) {
        return text.replaceAll("[\\s\\u00a0]+", " ");
    }
}

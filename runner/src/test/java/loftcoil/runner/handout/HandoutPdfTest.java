package loftcoil.runner.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** The PDF of a page: what it says, its fonts, its tags. */
class HandoutPdfTest {

    private static final String SIGNS = "− ° ² ³ ≥ ≤ → Ω ½ ⅜ ″ ′ ₂ ≈ × · µ ☐ ✓ ’ “ ” – …";

    private static String page(String body) {
        return new Frame(
                        "A <sheet> & its \"title\"",
                        "A test",
                        new Frame.Head("Bob's \"hut\" </style>", "today"),
                        Paper.A4)
                .forPdf(body);
    }

    @Test
    void signsOfTheTradeAreThereAndFontsAreInIt() throws IOException {
        byte[] pdf = HandoutPdf.of(
                page("<h1>Signs</h1><p>" + SIGNS + " <b>≥ bold</b> <em>≥ oblique</em> <code>≥ 1;</code></p>"));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = PdfText.page(document, 1);
            assertTrue(text.contains(SIGNS + " ≥ bold ≥ oblique ≥ 1;"), text);
            Map<String, Boolean> fonts = PdfText.fonts(document);
            assertEquals(4, fonts.size(), fonts.toString());
            assertTrue(fonts.values().stream().allMatch(embedded -> embedded), fonts.toString());
        }
    }

    @Test
    void titleLanguageAndTagsAreSet() throws IOException {
        try (PDDocument document = Loader.loadPDF(HandoutPdf.of(page("<h1>A</h1><p>b</p>")))) {
            assertEquals(
                    "A <sheet> & its \"title\"",
                    document.getDocumentInformation().getTitle());
            assertEquals("en", document.getDocumentCatalog().getLanguage());
            assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
            assertTrue(document.getDocumentCatalog().getStructureTreeRoot() != null);
        }
    }

    @Test
    void aNameWithQuotesAndTagsStaysTextInTheHeadOfThePage() throws IOException {
        String text = PdfText.of(HandoutPdf.of(page("<p>body</p>")));
        assertTrue(text.contains("Bob's \"hut\" </style> today"), text);
        assertTrue(text.contains("page 1 of 1"), text);
    }

    @Test
    void nothingIsFetchedFromOutside() {
        String image = page("<p>x</p><img src=\"http://127.0.0.1:9/a.png\" alt=\"a\" />");
        assertThrows(IllegalStateException.class, () -> HandoutPdf.of(image));
        assertThrows(RuntimeException.class, () -> HandoutPdf.of("<p>no page"));
    }
}

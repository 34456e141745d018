package loftcoil.runner.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets over HTTP: who gets them, under which rules, and what is refused. */
class SheetsTest {

    private final HttpClient client = HttpClient.newHttpClient();
    private PageServer server;
    private String origin;
    private String cookie;

    private static BuildSheetPrinter.Printed print(BuildSheetPrinter.Asked asked) {
        if (!asked.paper().equals("a4")) {
            throw new RefusedException(List.of(new Fault("paper", asked.paper(), "a4", "")));
        }
        String text = (asked.form() == BuildSheetPrinter.Form.PDF ? "%PDF " : "<p>") + asked.paper();
        return new BuildSheetPrinter.Printed(
                "sheet." + asked.form().name().toLowerCase(Locale.ROOT), text.getBytes(StandardCharsets.UTF_8));
    }

    @BeforeEach
    void open() throws Exception {
        server = PageServer.open(new FakeApp(), new PageSetup(0, trouble -> {}, SheetsTest::print));
        origin = "http://127.0.0.1:" + server.address().getPort();
        HttpResponse<String> entered =
                client.send(HttpRequest.newBuilder(server.address()).GET().build(), BodyHandlers.ofString());
        cookie = PageServing.cookieOf(entered);
    }

    @AfterEach
    void close() {
        server.close();
    }

    private HttpResponse<String> get(String path, boolean known) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(origin + path));
        return client.send((known ? request.header("Cookie", cookie) : request).build(), BodyHandlers.ofString());
    }

    @ParameterizedTest
    @CsvSource({
        "/sheet/show/a4, text/html; charset=utf-8, , <p>a4",
        "/sheet/html/a4, text/html; charset=utf-8, attachment; filename=\"sheet.html\", <p>a4",
        "/sheet/pdf/a4, application/pdf, attachment; filename=\"sheet.pdf\", %PDF a4",
        "/sheet/form/a4, application/pdf, attachment; filename=\"sheet.form\", <p>a4",
    })
    void aSheetIsShownOrKept(String path, String type, String kept, String content) throws Exception {
        HttpResponse<String> answer = get(path, true);

        assertEquals(200, answer.statusCode());
        assertEquals(Optional.of(type), answer.headers().firstValue("Content-Type"));
        assertEquals(Optional.ofNullable(kept), answer.headers().firstValue("Content-Disposition"));
        assertEquals(content, answer.body());
    }

    @Test
    void aSheetMayRunNothingAndStandsInOurPageOnly() throws Exception {
        String policy = get("/sheet/show/a4", true)
                .headers()
                .firstValue("Content-Security-Policy")
                .orElseThrow();
        assertTrue(policy.startsWith("default-src 'none'") && policy.contains("frame-ancestors 'self'"), policy);
        assertFalse(policy.contains("script-src"), policy);
    }

    @Test
    void whoHasNotComeInGetsNone() throws Exception {
        assertEquals(401, get("/sheet/pdf/a4", false).statusCode());
    }

    @ParameterizedTest
    @ValueSource(strings = {"/sheet/pdf/", "/sheet/odt/a4", "/sheet/pdf/../../etc", "/sheet/pdf/A4", "/sheet/"})
    void otherAddressesLeadNowhere(String path) throws Exception {
        assertEquals(404, get(path, true).statusCode());
    }

    @Test
    void unknownPaperIsRefusedInWords() throws Exception {
        HttpResponse<String> answer = get("/sheet/pdf/b5", true);
        assertEquals(400, answer.statusCode());
        assertTrue(answer.body().contains("paper: b5; allowed: a4"), answer.body());
    }

    @Test
    void aServerWithoutAPressSaysSo() throws Exception {
        try (PageServer bare = PageServer.open(new FakeApp(), PageSetup.anyPort())) {
            String own = PageServing.cookieOf(
                    client.send(HttpRequest.newBuilder(bare.address()).GET().build(), BodyHandlers.ofString()));
            URI path = URI.create("http://127.0.0.1:" + bare.address().getPort() + "/sheet/show/a4");
            HttpResponse<String> answer = client.send(
                    HttpRequest.newBuilder(path).header("Cookie", own).build(), BodyHandlers.ofString());
            assertEquals(404, answer.statusCode());
        }
    }
}

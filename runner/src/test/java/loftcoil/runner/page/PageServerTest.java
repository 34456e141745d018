package loftcoil.runner.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who gets in, and who does not. */
class PageServerTest extends PageServing {

    @Test
    void theOpeningAddressGivesACookieAndLeadsToACleanOne() throws Exception {
        HttpResponse<String> answer =
                send(HttpRequest.newBuilder(server.address()).GET());
        assertEquals(303, answer.statusCode());
        assertEquals(Optional.of("/"), answer.headers().firstValue("Location"));
        String set = answer.headers().firstValue("Set-Cookie").orElseThrow();
        assertTrue(set.contains("; HttpOnly") && set.contains("; SameSite=Strict") && set.contains("; Path=/"), set);
        String token = server.address().getPath().substring(Secret.PATH.length());
        assertTrue(token.length() >= 22, "22 characters of base 64 are 128 bits");
        assertFalse(set.contains(token), "the cookie is another secret than the token");
    }

    @Test
    void eachServerHasASecretOfItsOwn() throws Exception {
        try (PageServer other = PageServer.open(bench, PageSetup.anyPort())) {
            assertNotEquals(server.address().getPath(), other.address().getPath());
            String foreign = "loftcoil-" + other.address().getPort() + cookie.substring(cookie.indexOf('='));
            assertEquals(
                    401,
                    send(request("/api/course").header("Cookie", foreign).GET()).statusCode());
        }
    }

    @Test
    void withTheCookieThePageOpensAndReloads() throws Exception {
        for (int reload = 0; reload < 2; reload++) {
            HttpResponse<String> answer = send(known("/").GET());
            assertEquals(200, answer.statusCode());
            assertTrue(answer.body().contains("<html lang=\"en\">"), answer.body());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/open/wrong", "/open/", "/open/x/../y"})
    void withoutTheCookieAPlainPageSaysWhatToDo(String path) throws Exception {
        HttpResponse<String> answer = send(request(path).GET());
        assertEquals(401, answer.statusCode());
        assertTrue(answer.body().contains("Open the printed address"), answer.body());
        assertTrue(answer.headers().firstValue("Set-Cookie").isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "loftcoil=", "loftcoil-1=x", "COOKIENAME=wrong", "COOKIENAME="})
    void aWrongCookieGetsNothing(String given) throws Exception {
        String name = cookie.substring(0, cookie.indexOf('='));
        HttpRequest.Builder request = request("/api/course").header("Cookie", given.replace("COOKIENAME", name) + ";");
        HttpResponse<String> answer = send(request.GET());
        assertEquals(401, answer.statusCode());
        assertFalse(answer.body().contains("Warm water"), answer.body());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"evil.example", "127.0.0.1", "127.0.0.1:1", "localhost", "[::1]:PORT", "evil.example:PORT", ""})
    void aWrongHostIsRefusedEverywhere(String host) throws Exception {
        String given = host.replace("PORT", String.valueOf(server.address().getPort()));
        for (String path :
                List.of("/", "/api/course", "/page/app.js", server.address().getPath())) {
            String answer = raw("GET " + path + " HTTP/1.1\r\nHost: " + given + "\r\nCookie: " + cookie
                    + "\r\nConnection: close\r\n\r\n");
            assertTrue(answer.startsWith("HTTP/1.1 421 "), given + path + ": " + answer);
            assertFalse(answer.contains("Set-Cookie"), answer);
        }
    }

    @Test
    void aMissingOrDoubledHostIsRefused() throws Exception {
        String good = "Host: 127.0.0.1:" + server.address().getPort() + "\r\n";
        String none = raw("GET /api/course HTTP/1.1\r\nCookie: " + cookie + "\r\nConnection: close\r\n\r\n");
        assertTrue(none.startsWith("HTTP/1.1 4"), none);
        String two = raw(
                "GET /api/course HTTP/1.1\r\n" + good + good + "Cookie: " + cookie + "\r\nConnection: close\r\n\r\n");
        assertTrue(two.startsWith("HTTP/1.1 4"), two);
    }

    @Test
    void localhostIsTheSamePlace() throws Exception {
        String host = "localhost:" + server.address().getPort();
        String answer = raw("GET /api/course HTTP/1.1\r\nHost: " + host + "\r\nCookie: " + cookie
                + "\r\nConnection: close\r\n\r\n");
        assertTrue(answer.startsWith("HTTP/1.1 200 "), answer);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://evil.example",
                "null",
                "https://127.0.0.1:PORT",
                "http://127.0.0.1:1",
                "http://127.0.0.1:PORT.evil.example"
            })
    void aWrongOriginChangesNothing(String from) throws Exception {
        String given = from.replace("PORT", String.valueOf(server.address().getPort()));
        HttpRequest.Builder request =
                known("/api/run").header("Content-Type", "application/json").header("Origin", given);
        assertEquals(
                403,
                send(request.POST(HttpRequest.BodyPublishers.ofString(RUN))).statusCode());
        assertEquals(List.of(), bench.calls);
    }

    @Test
    void aChangeWithoutOriginIsRefused() throws Exception {
        HttpRequest.Builder request = known("/api/run").header("Content-Type", "application/json");
        assertEquals(
                403,
                send(request.POST(HttpRequest.BodyPublishers.ofString(RUN))).statusCode());
        assertEquals(List.of(), bench.calls);
    }

    @ParameterizedTest
    @ValueSource(strings = {"cross-site", "same-site"})
    void whatAnotherSiteFetchesIsRefused(String site) throws Exception {
        assertEquals(
                403,
                send(known("/api/course").header("Sec-Fetch-Site", site).GET()).statusCode());
        assertEquals(
                403,
                send(known("/page/app.js").header("Sec-Fetch-Site", site).GET()).statusCode());
        assertEquals(
                403, send(post("/api/run").header("Sec-Fetch-Site", site), RUN).statusCode());
        assertEquals(List.of(), bench.calls);
    }

    @Test
    void itListensOnThisMachineOnly() throws Exception {
        List<InetAddress> outside = NetworkInterface.networkInterfaces()
                .flatMap(NetworkInterface::inetAddresses)
                .filter(address -> !address.isLoopbackAddress() && !address.isLinkLocalAddress())
                .toList();
        int port = server.address().getPort();
        assertEquals("127.0.0.1", server.address().getHost());
        for (InetAddress address : outside) {
            assertThrows(ConnectException.class, () -> new Socket(address, port).close(), address.toString());
        }
    }

    @Test
    void requestsWhoseRestDoesNotComeHoldUpNobody() throws Exception {
        String host = "Host: 127.0.0.1:" + server.address().getPort() + "\r\n";
        String rest = "Content-Type: application/json\r\nContent-Length: 500\r\n\r\n{\"lesson\":";
        List<String> halves = List.of(
                "POST /api/run HTTP/1.1\r\n" + host + "Cookie: " + cookie + "\r\nOrigin: " + origin + "\r\n" + rest,
                "POST /api/run HTTP/1.1\r\nHost: evil.example\r\n" + rest,
                "POST /api/run HTTP/1.1\r\n" + host + rest,
                "GET /api/course HTTP/1.1\r\n" + host);
        List<Socket> held = new ArrayList<>();
        try {
            for (int i = 0; i < 20; i++) {
                Socket socket = new Socket(
                        InetAddress.getLoopbackAddress(), server.address().getPort());
                held.add(socket);
                socket.getOutputStream().write(halves.get(i % halves.size()).getBytes(StandardCharsets.UTF_8));
            }
            HttpResponse<String> lesson = send(known("/api/course").GET());
            assertEquals(200, lesson.statusCode());
            assertTrue(lesson.body().contains("Warm water"), lesson.body());
            assertEquals(200, send(post("/api/run"), RUN).statusCode());
            assertEquals(0, held.get(0).getInputStream().available(), "the half that was sent is no answered run");
        } finally {
            for (Socket socket : held) {
                socket.close();
            }
        }
    }

    @Test
    void afterClosingNothingAnswers() {
        server.close();
        assertThrows(IOException.class, () -> send(known("/").GET()));
    }

    @Test
    void aPortThatCannotBeIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new PageSetup(65536, failure -> {}));
        assertThrows(IllegalArgumentException.class, () -> new PageSetup(-1, failure -> {}));
    }
}

package loftcoil.runner.page;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

/** A page server with a bench behind it that does nothing, and a client that has come in. */
abstract class PageServing {

    static final String RUN =
            """
            {"lesson":"01-warm-water","step":"density-curve","source":"1+1","dragged":{}}""";

    final FakeApp bench = new FakeApp();
    final List<Throwable> troubles = new ArrayList<>();
    final HttpClient client = HttpClient.newHttpClient();
    PageServer server;
    String origin;
    String cookie;

    @BeforeEach
    void open() throws Exception {
        server = PageServer.open(bench, new PageSetup(0, troubles::add));
        origin = "http://127.0.0.1:" + server.address().getPort();
        cookie = cookieOf(send(HttpRequest.newBuilder(server.address()).GET()));
    }

    @AfterEach
    void close() {
        server.close();
    }

    HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(origin + path)).timeout(Duration.ofMinutes(3));
    }

    HttpRequest.Builder known(String path) {
        return request(path).header("Cookie", cookie);
    }

    HttpRequest.Builder post(String path) {
        return known(path).header("Origin", origin).header("Content-Type", "application/json");
    }

    HttpResponse<String> send(HttpRequest.Builder request, String body) throws Exception {
        return send(request.POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return client.send(request.build(), BodyHandlers.ofString());
    }

    String raw(String request) throws IOException {
        try (Socket socket =
                new Socket(InetAddress.getLoopbackAddress(), server.address().getPort())) {
            socket.setSoTimeout(180_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    static String cookieOf(HttpResponse<String> answer) {
        String set = answer.headers().firstValue("Set-Cookie").orElseThrow();
        return set.substring(0, set.indexOf(';'));
    }
}

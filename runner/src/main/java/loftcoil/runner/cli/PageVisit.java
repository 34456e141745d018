package loftcoil.runner.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Asks the page what a browser would ask it, from the opening address on. */
final class PageVisit {

    private static final Pattern FILE = Pattern.compile("(?:href|src)=\"(/[^\"]+)\"|from '\\./([a-z.]+)'");
    private static final int OK = 200;

    private final HttpClient client;
    private final URI place;
    private final String cookie;

    private PageVisit(HttpClient client, URI place, String cookie) {
        this.client = client;
        this.place = place;
        this.cookie = cookie;
    }

    /**
     * Goes in by the opening address.
     *
     * @throws IOException where it does not let in
     */
    static PageVisit enter(URI address) throws IOException, InterruptedException {
        HttpClient client = HttpClient.newHttpClient();
        HttpResponse<String> reply =
                client.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
        String cookie = reply.headers()
                .firstValue("Set-Cookie")
                .orElseThrow(() -> new IOException("the opening address answers " + reply.statusCode()));
        return new PageVisit(client, address.resolve("/"), cookie.substring(0, cookie.indexOf(';')));
    }

    /** Reads the page and every file that it or one of its scripts names; how many. */
    int readAll() throws IOException, InterruptedException {
        Set<String> read = new TreeSet<>();
        read("/", read);
        return read.size();
    }

    private void read(String path, Set<String> read) throws IOException, InterruptedException {
        if (!read.add(path)) {
            return;
        }
        Matcher named = FILE.matcher(get(path));
        while (named.find()) {
            read(named.group(1) == null ? "/page/" + named.group(2) : named.group(1), read);
        }
    }

    /**
     * The answer at a path.
     *
     * @throws IOException where it is not given
     */
    String get(String path) throws IOException, InterruptedException {
        return answer(HttpRequest.newBuilder(place.resolve(path)));
    }

    /**
     * The answer to a change.
     *
     * @param body names with values; sent as JSON
     * @throws IOException where it is not given
     */
    String post(String path, Map<String, ?> body) throws IOException, InterruptedException {
        String json = new ObjectMapper().writeValueAsString(body);
        return answer(HttpRequest.newBuilder(place.resolve(path))
                .header("Origin", "http://" + place.getAuthority())
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(json, StandardCharsets.UTF_8)));
    }

    private String answer(HttpRequest.Builder asked) throws IOException, InterruptedException {
        HttpRequest request = asked.header("Cookie", cookie).build();
        HttpResponse<String> reply = client.send(request, HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
        if (reply.statusCode() != OK) {
            throw new IOException(request.uri().getPath() + " answers " + reply.statusCode() + ": " + reply.body());
        }
        return reply.body();
    }
}

package loftcoil.runner.page;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.function.Consumer;
import java.util.function.Supplier;
import loftcoil.engine.fault.Refusal;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.json.JsonFields;
import loftcoil.engine.json.JsonText;
import loftcoil.engine.survey.FaultWords;

/** Decides which part answers a request, after the gate has let it pass. */
final class Router implements HttpHandler {

    private static final String API = "/api/";

    /** The status of what could not be written to the learner's folder (RFC 4918, 11.5: insufficient storage). */
    private static final int NOT_SAVED = 507;

    /** Longest account of a fault in a reply, in characters. */
    private static final int LONGEST_TOLD = 200;
    /** A learner's snippet is a few kilobytes. */
    static final int MOST_BYTES = 1 << 20;

    private static final JsonText BODY = new JsonText(MOST_BYTES);

    private final Gate gate;
    private final Secret secret;
    private final PageApi api;
    private final Sheets sheets;
    private final Consumer<Throwable> trouble;
    private final Assets assets = Assets.load();

    /** Far fewer than there are threads, so that a stop is answered however many runs are waiting. */
    private final Semaphore slots;

    Router(Gate gate, Secret secret, PageApi api, Sheets sheets, Consumer<Throwable> trouble, int slots) {
        this.gate = gate;
        this.secret = secret;
        this.api = api;
        this.sheets = sheets;
        this.trouble = trouble;
        this.slots = new Semaphore(slots);
    }

    @Override
    public void handle(HttpExchange exchange) throws IOException {
        try (exchange) {
            reply(exchange).send(exchange);
        }
    }

    private Reply reply(HttpExchange exchange) throws IOException {
        try {
            gate.checkPlace(exchange);
            String path = exchange.getRequestURI().getRawPath();
            return path == null ? notFound() : route(exchange, path);
        } catch (RefusedRequest refused) {
            return Reply.refusal(refused);
        } catch (Refusal refused) {
            return refused(refused);
        } catch (RuntimeException | Error failure) {
            // Errors too: a stack that overflows here must not look to the learner as if Loftcoil had been closed.
            return ownFault(failure);
        }
    }

    /** The one place where a refusal becomes a status. */
    private Reply refused(Refusal refused) {
        String words = String.valueOf(refused.getMessage());
        return switch (refused.kind()) {
            case INPUT ->
                Reply.refusal(
                        refused instanceof RefusedException faulty
                                ? new RefusedRequest(words, FaultWords.lines(faulty))
                                : new RefusedRequest(400, words));
            case UNKNOWN_NAME -> Reply.refusal(new RefusedRequest(404, words));
            case FOLDER -> Reply.refusal(new RefusedRequest(NOT_SAVED, words));
            case NO_MACHINE -> ownFault(refused);
        };
    }

    private Reply ownFault(Throwable failure) {
        trouble.accept(failure);
        return Reply.refusal(new RefusedRequest(500, stumbled(failure)));
    }

    private static String stumbled(Throwable failure) {
        String what = failure.toString().replaceAll("\\s+", " ");
        StackTraceElement[] trace = failure.getStackTrace();
        String where = trace.length == 0 ? "" : " at " + trace[0];
        return "Loftcoil stumbled over this: a fault of its own, not yours. Your text is still here. "
                + "The terminal window says more; to report it, copy this line: "
                + what.substring(0, Math.min(LONGEST_TOLD, what.length())) + where;
    }

    private Reply route(HttpExchange exchange, String path) throws IOException {
        if (path.startsWith(Secret.PATH)) {
            return enter(exchange, path.substring(Secret.PATH.length()));
        }
        if (path.equals("/")) {
            need(exchange, "GET");
            return gate.knows(exchange) ? assets.page() : assets.closedDoor();
        }
        gate.checkSameSite(exchange);
        if (path.startsWith(API)) {
            return call(exchange, path.substring(API.length()));
        }
        Optional<Supplier<Reply>> sheet = sheets.find(path);
        if (sheet.isPresent()) {
            return printed(exchange, sheet.get());
        }
        Optional<Reply> file = assets.find(path, exchange.getRequestHeaders().getFirst("If-None-Match"));
        if (file.isEmpty()) {
            return notFound();
        }
        need(exchange, "GET");
        return file.get();
    }

    private Reply enter(HttpExchange exchange, String token) {
        need(exchange, "GET");
        if (!secret.opens(token)) {
            return assets.closedDoor();
        }
        return new Reply(
                303,
                "text/plain; charset=utf-8",
                new byte[0],
                Map.of("Location", "/", "Set-Cookie", secret.setCookie()));
    }

    private Reply call(HttpExchange exchange, String name) throws IOException {
        needKnown(exchange);
        Optional<PageApi.Ask> ask = api.find(name);
        if (ask.isEmpty()) {
            return notFound();
        }
        need(exchange, ask.get().method());
        JsonFields body = noBody();
        if (ask.get().changes()) {
            gate.checkOriginGiven(exchange);
            body = body(exchange);
        }
        JsonFields brought = body;
        return ask.get().atOnce() ? answer(ask.get(), body) : inSlot(() -> answer(ask.get(), brought));
    }

    private Reply printed(HttpExchange exchange, Supplier<Reply> sheet) {
        needKnown(exchange);
        need(exchange, "GET");
        return inSlot(sheet);
    }

    private void needKnown(HttpExchange exchange) {
        if (!gate.knows(exchange)) {
            throw new RefusedRequest(401, "Open the address printed in Loftcoil's terminal window.");
        }
    }

    private Reply inSlot(Supplier<Reply> answer) {
        if (!slots.tryAcquire()) {
            throw new RefusedRequest(
                    503, "Loftcoil is still busy with what you asked before. Stop it, or wait a moment.");
        }
        try {
            return answer.get();
        } finally {
            slots.release();
        }
    }

    private Reply answer(PageApi.Ask ask, JsonFields body) {
        byte[] bytes = api.answerTo(ask, body).toString().getBytes(StandardCharsets.UTF_8);
        return new Reply(200, Reply.JSON, bytes, Map.of());
    }

    private static void need(HttpExchange exchange, String method) {
        if (!exchange.getRequestMethod().equals(method)) {
            throw new RefusedRequest(405, "This address takes " + method + " only.", Map.of("Allow", method));
        }
    }

    private static Reply notFound() {
        return Reply.refusal(new RefusedRequest(404, "There is nothing at this address."));
    }

    private static JsonFields noBody() {
        return JsonFields.atOnce(JsonNodeFactory.instance.objectNode());
    }

    private static JsonFields body(HttpExchange exchange) throws IOException {
        String type = exchange.getRequestHeaders().getFirst("Content-Type");
        if (type == null || !type.toLowerCase(Locale.ROOT).matches("application/json(\\s*;\\s*charset=utf-8)?")) {
            throw new RefusedRequest(415, "Content-Type is " + type + ": only application/json is read here.");
        }
        byte[] bytes = exchange.getRequestBody().readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            throw new RefusedRequest(
                    413,
                    "This is more than " + MOST_BYTES + " bytes, too much to take in one piece.",
                    Map.of("Connection", "close"));
        }
        return JsonFields.atOnce(BODY.object("request", new String(bytes, StandardCharsets.UTF_8)));
    }
}

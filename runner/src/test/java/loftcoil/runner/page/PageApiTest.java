package loftcoil.runner.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.engine.caution.Conduct;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is answered to whom has come in, and what every answer carries. */
class PageApiTest extends PageServing {

    @Test
    void everyAnswerCarriesTheCarefulHeaders() throws Exception {
        List<HttpResponse<String>> answers = List.of(
                send(known("/").GET()),
                send(known("/api/course").GET()),
                send(known("/page/app.js").GET()),
                send(known("/nowhere").GET()),
                send(request("/").GET()),
                send(known("/api/run").GET()),
                send(HttpRequest.newBuilder(server.address()).GET()));
        for (HttpResponse<String> answer : answers) {
            String policy =
                    answer.headers().firstValue("Content-Security-Policy").orElseThrow();
            for (String part : List.of(
                    "default-src 'none'",
                    "script-src 'self'",
                    "style-src 'self'",
                    "img-src 'self' data:",
                    "connect-src 'self'",
                    "base-uri 'none'",
                    "form-action 'none'",
                    "frame-ancestors 'none'")) {
                assertTrue(policy.contains(part), policy);
            }
            assertFalse(policy.contains("unsafe"), policy);
            assertEquals(Optional.of("nosniff"), answer.headers().firstValue("X-Content-Type-Options"));
            assertEquals(Optional.of("no-referrer"), answer.headers().firstValue("Referrer-Policy"));
        }
        assertEquals(Optional.of("no-store"), answers.get(1).headers().firstValue("Cache-Control"));
    }

    /** A script that another one imports and nobody serves would leave the page empty. */
    @Test
    void everyScriptThatIsImportedIsServed() throws Exception {
        Pattern imported = Pattern.compile("from '\\./([a-z-]+\\.js)'");
        Deque<String> open = new ArrayDeque<>(List.of("app.js"));
        Set<String> served = new TreeSet<>();
        while (!open.isEmpty()) {
            String name = open.pop();
            if (served.add(name)) {
                HttpResponse<String> answer = send(known("/page/" + name).GET());
                assertEquals(200, answer.statusCode(), name);
                imported.matcher(answer.body()).results().forEach(found -> open.push(found.group(1)));
            }
        }
        assertTrue(served.size() > 20, served.toString());
    }

    @Test
    void theTableOfConductIsTheEngines() throws Exception {
        String answer = send(known("/api/conduct").GET()).body();
        for (Conduct rule : Conduct.values()) {
            assertTrue(
                    answer.contains("\"code\":\"" + rule.code() + "\",\"when\":\""
                            + rule.when().metric() + "\",\"act\":\""
                            + rule.act().metric() + "\""),
                    answer);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/page/../page.html",
                "/page/page.html",
                "/page/%2e%2e/Secret.class",
                "/page/files.txt",
                "/editor/../../pom.xml",
                "/drawings/../01-warm-water.md",
                "/drawings/%2e%2e%2f01.svg",
                "/page/",
                "/api/",
                "/api/lesson/",
                "/api/lesson/..%2f..",
                "//page/app.js",
                "/page/app.js/",
                "/etc/passwd"
            })
    void nothingElseIsServed(String path) throws Exception {
        String answer = raw("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:"
                + server.address().getPort() + "\r\nCookie: " + cookie + "\r\nConnection: close\r\n\r\n");
        assertTrue(answer.startsWith("HTTP/1.1 404 "), path + ": " + answer);
        assertTrue(answer.contains("{\"words\":"), answer);
    }

    @ParameterizedTest
    @ValueSource(strings = {"PUT", "DELETE", "POST", "OPTIONS", "HEAD", "TRACE"})
    void otherMethodsAreRefused(String method) throws Exception {
        for (String path :
                List.of("/", "/page/app.js", "/api/course", server.address().getPath())) {
            HttpRequest.Builder request = known(path).method(method, HttpRequest.BodyPublishers.noBody());
            HttpResponse<String> answer = send(request);
            assertEquals(405, answer.statusCode(), method + " " + path);
            assertEquals(Optional.of("GET"), answer.headers().firstValue("Allow"));
        }
        assertEquals(405, send(known("/api/run").GET()).statusCode());
    }

    @Test
    void onlyJsonIsRead() throws Exception {
        for (String type : List.of("text/plain", "application/x-www-form-urlencoded", "application/jsonp")) {
            HttpRequest.Builder request =
                    known("/api/run").header("Origin", origin).header("Content-Type", type);
            assertEquals(
                    415,
                    send(request.POST(HttpRequest.BodyPublishers.ofString(RUN))).statusCode(),
                    type);
        }
        assertEquals(List.of(), bench.calls);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "null",
                "{} {}",
                "{\"lesson\":1}",
                "{\"lesson\":\"a\"}",
                "{\"lesson\":\"a\",\"step\":\"b\",\"source\":\"c\",\"dragged\":[]}",
                "{\"lesson\":\"a\",\"step\":\"b\",\"source\":\"c\",\"dragged\":{\"x\":\"1\"}}",
                "{\"lesson\":\"a\",\"step\":\"b\",\"source\":\"c\",\"dragged\":{\"x\":1e999}}"
            })
    void anUnfitBodyIsRefusedInPlainWords(String body) throws Exception {
        HttpResponse<String> answer = send(post("/api/run"), body);
        assertEquals(400, answer.statusCode(), answer.body());
        assertTrue(answer.body().startsWith("{\"words\":"), answer.body());
        assertEquals(List.of(), bench.calls);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"old\":1,\"changes\":{},\"year\":false}",
                "{\"old\":\"{}\",\"changes\":[],\"year\":false}",
                "{\"old\":\"{}\",\"changes\":{\"tank.baseM\":2.6},\"year\":false}",
                "{\"old\":\"{}\",\"changes\":{\"tank.baseM\":null},\"year\":false}",
                "{\"old\":\"{}\",\"changes\":{},\"year\":\"no\"}"
            })
    void anUnfitRebuildIsRefusedInPlainWords(String body) throws Exception {
        HttpResponse<String> answer = send(post("/api/rebuild-compare"), body);
        assertEquals(400, answer.statusCode(), answer.body());
        assertTrue(answer.body().startsWith("{\"words\":"), answer.body());
    }

    @Test
    void whatTheBenchDoesNotHaveIsSaidSo() throws Exception {
        assertEquals(404, send(known("/api/refresher").GET()).statusCode());
        assertEquals(404, send(known("/api/rebuild").GET()).statusCode());
        assertEquals(405, send(known("/api/rebuild-take").GET()).statusCode());
        String whole = "{\"old\":\"{}\",\"changes\":{},\"year\":false}";
        assertEquals(404, send(post("/api/rebuild-compare"), whole).statusCode());
        assertEquals(
                400, send(post("/api/refresher-answer"), "{\"text\":\"1\"}").statusCode());
    }

    @Test
    void aCursorOutsideTheTextIsRefused() throws Exception {
        for (String cursor : List.of("-1", "4", "1.5", "\"1\"", "99999999999")) {
            String body = "{\"lesson\":\"a\",\"step\":\"b\",\"source\":\"abc\",\"cursor\":" + cursor + "}";
            assertEquals(400, send(post("/api/complete"), body).statusCode(), cursor);
        }
    }

    @Test
    void aHugeBodyIsRefused() throws Exception {
        HttpResponse<String> answer = send(post("/api/run"), "{\"source\":\"" + "x".repeat(Router.MOST_BYTES) + "\"}");
        assertEquals(413, answer.statusCode());
        assertEquals(List.of(), bench.calls);
    }

    @Test
    void anUnknownLessonIsSaidInPlainWords() throws Exception {
        HttpResponse<String> answer = send(known("/api/lesson/99-none").GET());
        assertEquals(404, answer.statusCode());
        assertEquals("{\"words\":\"There is no lesson named 99-none.\"}", answer.body());
    }

    @Test
    void aFailureInsideIsToldToUsAndToThePageAsOneLineToCopy() throws Exception {
        HttpResponse<String> answer = send(post("/api/put-back"), "{\"lesson\":\"01-warm-water\",\"step\":\"push\"}");
        assertEquals(500, answer.statusCode());
        assertTrue(answer.body().contains("copy this line: java.lang.ClassCastException"), answer.body());
        assertEquals(1, troubles.size());
    }

    /** Java's own exceptions are never the learner's mistake, and an error is answered, not a closed connection. */
    @Test
    void everyFaultOfTheProgramIsAnsweredAsSuchAndLogged() throws Exception {
        for (Throwable fault : List.of(
                new IllegalArgumentException("one end only"),
                new NoSuchElementException("No value present"),
                new StackOverflowError(),
                new IllegalStateException("a\nb"))) {
            bench.fault = fault;
            HttpResponse<String> answer = send(post("/api/run"), RUN);
            assertEquals(500, answer.statusCode(), fault.toString());
            assertTrue(answer.body().contains("Loftcoil stumbled over this"), answer.body());
            assertTrue(answer.body().contains(fault.getClass().getName()), answer.body());
            assertEquals(fault, troubles.get(troubles.size() - 1));
        }
        assertEquals(4, troubles.size());
    }

    @Test
    void whileTheFolderIsFullJavaRunsAndEveryAnswerSaysSo() throws Exception {
        bench.full = "/home/orchard/loftcoil: its disk is full";
        HttpResponse<String> run = send(post("/api/run"), RUN);
        assertEquals(200, run.statusCode(), run.body());
        assertTrue(run.body().contains("\"unsaved\":\"/home/orchard/loftcoil: its disk is full\""), run.body());
        String kept = RUN.replace(",\"dragged\":{}", "");
        HttpResponse<String> keep = send(post("/api/keep"), kept);
        assertEquals(507, keep.statusCode());
        assertTrue(keep.body().contains("/home/orchard/loftcoil: its disk is full"), keep.body());
        assertEquals(507, send(post("/api/save"), "{}").statusCode());
        assertEquals(List.of(), troubles, "no fault of the program");
        bench.full = null;
        assertEquals(200, send(post("/api/save"), "{}").statusCode());
        assertFalse(send(post("/api/run"), RUN).body().contains("unsaved"));
    }

    @Test
    void aRunIsCarriedOutAndShownAgainAfterAReload() throws Exception {
        assertEquals(200, send(post("/api/run"), RUN).statusCode());
        assertEquals(List.of("run density-curve {}"), bench.calls);
        String lesson = send(known("/api/lesson/01-warm-water").GET()).body();
        assertTrue(lesson.contains("\"last\":{\"state\":\"done\""), lesson);
        String kept = RUN.replace(",\"dragged\":{}", "").replace("1+1", "1+2");
        assertEquals(200, send(post("/api/keep"), kept).statusCode());
        assertFalse(
                send(known("/api/lesson/01-warm-water").GET()).body().contains("\"last\""),
                "the text has changed since");
    }

    @Test
    void stopIsAnsweredHoweverManyRunsWait() throws Exception {
        String endless = RUN.replace("1+1", "while (true) {}");
        List<CompletableFuture<HttpResponse<String>>> runs = new ArrayList<>();
        for (int n = 0; n < 12; n++) {
            runs.add(client.sendAsync(
                    post("/api/run")
                            .POST(HttpRequest.BodyPublishers.ofString(endless))
                            .build(),
                    BodyHandlers.ofString()));
        }
        assertEquals(
                503,
                CompletableFuture.anyOf(runs.toArray(CompletableFuture[]::new))
                        .thenApply(first -> ((HttpResponse<?>) first).statusCode())
                        .get(3, TimeUnit.MINUTES));
        assertEquals(200, send(post("/api/stop"), "{}").statusCode());
        assertTrue(bench.calls.contains("stop"));
    }

    @Test
    void answersAreNotPackedForTheyStayOnThisMachine() throws Exception {
        HttpResponse<String> answer =
                send(known("/page/steps.css").header("Accept-Encoding", "gzip").GET());
        assertTrue(answer.headers().firstValue("Content-Encoding").isEmpty());
        assertTrue(answer.body().contains(".step"), answer.body());
    }

    @Test
    void everyFileThatAPageNamesIsThere() throws Exception {
        String closed = send(request("/").GET()).body();
        String page = send(known("/").GET()).body();
        Matcher named =
                Pattern.compile("(?:href|src)=\"(/(?:page|editor)/[^\"]+)\"").matcher(closed + page);
        int files = 0;
        while (named.find()) {
            files++;
            assertEquals(200, send(known(named.group(1)).GET()).statusCode(), named.group(1));
        }
        assertTrue(files > 40, page);
    }

    @Test
    void thePageTakesFewRequestsToStart() throws Exception {
        String page = send(known("/").GET()).body();
        String style = send(known("/page/all.css").GET()).body();
        for (String name : List.of("base.css", "layout.css", "steps.css", "designs.css")) {
            String one = send(known("/page/" + name).GET()).body();
            assertTrue(style.contains(one), name + " is in the joined one");
        }
        String script = send(known("/page/app.js").GET()).body();
        Matcher named = Pattern.compile("from '\\./([a-z]+\\.js)'").matcher(script);
        int modules = 0;
        while (named.find()) {
            modules++;
            assertTrue(
                    page.contains("<link rel=\"modulepreload\" href=\"/page/" + named.group(1) + "\">"),
                    named.group(1) + " is asked for only when its user has been read");
        }
        assertTrue(modules > 10, script);
    }

    @Test
    void aFileTheBrowserHasIsNotSentAgain() throws Exception {
        String tag =
                send(known("/page/app.js").GET()).headers().firstValue("ETag").orElseThrow();
        HttpResponse<String> again =
                send(known("/page/app.js").header("If-None-Match", tag).GET());
        assertEquals(304, again.statusCode());
        assertEquals("", again.body());
    }
}

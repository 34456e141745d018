package loftcoil.runner.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The whole course as a learner's browser asks for it, in one Loftcoil that was started by the starter of the folder to carry where there
 * is one: starts by phase, every piece of Java as it stands and with one number changed, every slider, the sheets, and the most memory
 * that all Java machines together took.
 */
public final class CourseBench {

    private static final Pattern DECIMAL = Pattern.compile("(?<![\\w.\"])(\\d+\\.\\d+)(?![\\w.\"])");
    private static final int STARTS = 5;
    private static final int STOPS = 10;
    private static final int SHOWN = 10;
    private static final long WATCH_MS = 100;
    private static final double MILLION = 1e6;
    /** How a refusal by the engine begins, as the learner reads it. */
    private static final String REFUSES = "the engine refuses this";

    private final ObjectMapper mapper = new ObjectMapper();
    private final Map<String, List<Double>> times = new HashMap<>();

    private final List<String> refused = new ArrayList<>();
    private final List<String> failed = new ArrayList<>();

    private final ProcessHandle loftcoil;

    /** What each of its machines has worked so far by its number, in ms: one that has ended counts on. */
    private final Map<Long, Long> computedOfEach = new HashMap<>();

    private CourseBench(ProcessHandle loftcoil) {
        this.loftcoil = loftcoil;
    }

    /** Measures and prints. */
    public static void run() throws IOException, InterruptedException {
        starts();
        Path folder = Files.createTempDirectory("loftcoil-bench");
        Process loftcoil = Starter.start(folder);
        try {
            PageVisit visit = PageVisit.enter(Starter.address(loftcoil));
            try (MemoryWatch memory = new MemoryWatch(loftcoil.toHandle(), WATCH_MS)) {
                new CourseBench(loftcoil.toHandle()).walk(visit, memory);
            }
        } finally {
            Starter.end(loftcoil);
        }
    }

    private static void starts() throws IOException, InterruptedException {
        List<Double> address = new ArrayList<>();
        List<Double> lesson = new ArrayList<>();
        List<Double> java = new ArrayList<>();
        List<Double> worked = new ArrayList<>();
        for (int i = 0; i < STARTS; i++) {
            long began = System.nanoTime();
            Process loftcoil = Starter.start(Files.createTempDirectory("loftcoil-bench"));
            try {
                URI opening = Starter.address(loftcoil);
                address.add(since(began));
                PageVisit visit = PageVisit.enter(opening);
                visit.readAll();
                JsonNode course = new ObjectMapper().readTree(visit.get("/api/course"));
                String first = course.path("open").textValue();
                JsonNode steps = new ObjectMapper()
                        .readTree(visit.get("/api/lesson/" + first))
                        .path("steps");
                lesson.add(since(began));
                worked.add(computedMs(loftcoil.toHandle(), new HashMap<>()));
                for (JsonNode step : steps) {
                    if (step.has("original")) {
                        ran(visit, first, step, step.path("original").textValue(), Map.of());
                        break;
                    }
                }
                java.add(since(began));
            } finally {
                Starter.end(loftcoil);
            }
        }
        System.out.println(Starter.carried().map(Path::toString).orElse("no folder to carry; started from the classes"));
        print("start to address", address);
        print("start to page and first lesson", lesson);
        print("  processor time of that", worked);
        print("start to first Java run", java);
    }

    private void walk(PageVisit visit, MemoryWatch memory) throws IOException, InterruptedException {
        JsonNode course = mapper.readTree(visit.get("/api/course"));
        List<String> lessons = new ArrayList<>();
        course.path("lessons").forEach(line -> lessons.add(line.path("id").textValue()));
        for (String lesson : lessons) {
            JsonNode steps = mapper.readTree(visit.get("/api/lesson/" + lesson)).path("steps");
            answer(visit, lesson, steps);
            for (JsonNode step : steps) {
                if (!step.has("original")) {
                    continue;
                }
                String id = lesson + ", " + step.path("id").textValue();
                String source = step.path("original").textValue();
                time("a piece of Java", id, () -> ran(visit, lesson, step, source, Map.of()));
                if (!step.path("drag").isNull() && step.has("drag")) {
                    slide(visit, lesson, step, source, id);
                }
                change(visit, lesson, step, source, id);
                ran(visit, lesson, step, source, Map.of());
            }
        }
        memory.mark("after every lesson");
        time("the dangers, a year judged", "safety", () -> !visit.get("/api/safety").isEmpty());
        time("build sheet", "sheet", () -> !visit.get("/sheet/show/a4").isEmpty());
        time("build sheet, again", "sheet", () -> !visit.get("/sheet/show/a4").isEmpty());
        time("PDF of it", "pdf", () -> !visit.get("/sheet/pdf/letter").isEmpty());
        memory.mark("after sheet and PDF");
        time("rebuild", "rebuild", () -> !visit.get("/api/rebuild").isEmpty());
        memory.mark("after rebuild");
        times.keySet().stream().sorted().forEach(kind -> print(kind, times.get(kind)));
        slowest("a piece of Java");
        slowest("with one number changed");
        slowest("with one number changed, processor");
        slowest("a slider moved");
        System.out.println("a changed number that was refused, by what it was told; another one was changed then:");
        refused.forEach(one -> System.out.println("    " + one));
        System.out.println("changed pieces that did not run to their end: " + failed);
        System.out.println(memory);
    }

    /** Answers the first question, so that the machine of the references is there as it is with a learner. */
    private void answer(PageVisit visit, String lesson, JsonNode steps) throws IOException, InterruptedException {
        for (JsonNode step : steps) {
            if (step.path("kind").asText().equals("question")) {
                String id = step.path("id").textValue();
                time("an answer", lesson + ", " + id, () -> !visit.post(
                                "/api/answer", Map.of("lesson", lesson, "step", id, "text", "1"))
                        .isEmpty());
                return;
            }
        }
    }

    private void slide(PageVisit visit, String lesson, JsonNode step, String source, String id)
            throws IOException, InterruptedException {
        JsonNode drag = step.path("drag");
        double from = drag.path("from").doubleValue();
        double to = drag.path("to").doubleValue();
        double by = drag.path("by").doubleValue();
        for (int i = 1; i <= STOPS; i++) {
            double value = from + by * Math.rint((to - from) / by * i / (STOPS + 1));
            Map<String, Double> dragged = Map.of(drag.path("variable").textValue(), value);
            time("a slider moved", id, () -> ran(visit, lesson, step, source, dragged));
        }
    }

    /**
     * One number after the other is made a little larger until one may be: a length that no longer closes with the rest is refused, which
     * the learner is told as fast.
     */
    private void change(PageVisit visit, String lesson, JsonNode step, String source, String id)
            throws IOException, InterruptedException {
        for (String changed : changed(source)) {
            if (time("with one number changed", id, () -> ran(visit, lesson, step, changed, Map.of()))) {
                return;
            }
            JsonNode told = mapper.readTree(reply(visit, lesson, step, changed, Map.of()));
            String words = told.path("words").asText().replace("\n", " ");
            if (!words.contains(REFUSES)) {
                failed.add(id + ": " + told);
                return;
            }
            refused.add(id + ": " + words);
        }
        failed.add(id + ": no number of it may be changed");
    }

    /** The same with each decimal number in turn a little larger; where there is none, with a comment, so that it is compiled anew. */
    private static List<String> changed(String source) {
        List<String> all = new ArrayList<>();
        Matcher number = DECIMAL.matcher(source);
        while (number.find()) {
            double more = Double.parseDouble(number.group(1)) * 1.01;
            all.add(source.substring(0, number.start()) + String.format(Locale.ROOT, "%.4f", more)
                    + source.substring(number.end()));
        }
        all.add(source + "\n// changed\n");
        return all;
    }

    private static boolean ran(PageVisit visit, String lesson, JsonNode step, String source, Map<String, Double> dragged)
            throws IOException, InterruptedException {
        return reply(visit, lesson, step, source, dragged).contains("\"state\":\"done\"");
    }

    private static String reply(
            PageVisit visit, String lesson, JsonNode step, String source, Map<String, Double> dragged)
            throws IOException, InterruptedException {
        return visit.post(
                "/api/run",
                Map.of(
                        "lesson",
                        lesson,
                        "step",
                        step.path("id").textValue(),
                        "source",
                        source,
                        "dragged",
                        dragged));
    }

    /** Processor time of all Java machines so far, to some ten milliseconds: it does not depend on what else the computer does. */
    private static double computedMs(ProcessHandle loftcoil, Map<Long, Long> ofEach) {
        Stream.concat(Stream.of(loftcoil), loftcoil.descendants())
                .forEach(one -> ofEach.merge(
                        one.pid(),
                        one.info().totalCpuDuration().orElse(Duration.ZERO).toMillis(),
                        Math::max));
        return ofEach.values().stream().mapToDouble(Long::doubleValue).sum();
    }

    /** Something that is asked and either works or not. */
    @FunctionalInterface
    private interface Asked {
        boolean ask() throws IOException, InterruptedException;
    }

    private boolean time(String kind, String id, Asked asked) throws IOException, InterruptedException {
        double computed = computedMs(loftcoil, computedOfEach);
        long began = System.nanoTime();
        boolean done = asked.ask();
        double took = since(began);
        times.computeIfAbsent(kind, any -> new ArrayList<>()).add(took);
        double worked = computedMs(loftcoil, computedOfEach) - computed;
        times.computeIfAbsent(kind + ", processor", any -> new ArrayList<>()).add(worked);
        times.computeIfAbsent(kind + "\n" + id, any -> new ArrayList<>()).add(took);
        times.computeIfAbsent(kind + ", processor\n" + id, any -> new ArrayList<>())
                .add(worked);
        return done;
    }

    private void slowest(String kind) {
        System.out.println("slowest of: " + kind);
        times.entrySet().stream()
                .filter(entry -> entry.getKey().startsWith(kind + "\n"))
                .sorted(Comparator.comparingDouble(entry -> -at(entry.getValue(), 95)))
                .limit(SHOWN)
                .forEach(entry -> System.out.printf(
                        Locale.ROOT,
                        "    %7.0f ms  %s%n",
                        at(entry.getValue(), 95),
                        entry.getKey().substring(kind.length() + 1)));
    }

    private static void print(String kind, List<Double> all) {
        if (!kind.contains("\n")) {
            System.out.printf(
                    Locale.ROOT,
                    "%-32s median %7.0f ms   95th percentile %7.0f   most %7.0f   (%d)%n",
                    kind,
                    at(all, 50),
                    at(all, 95),
                    at(all, 100),
                    all.size());
        }
    }

    private static double at(List<Double> all, int percent) {
        List<Double> sorted = all.stream().sorted().toList();
        return sorted.get(Math.min(sorted.size() - 1, sorted.size() * percent / 100));
    }

    private static double since(long began) {
        return (System.nanoTime() - began) / MILLION;
    }
}

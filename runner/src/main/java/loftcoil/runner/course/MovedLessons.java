package loftcoil.runner.course;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Where the lessons of an earlier edition are now, so that nobody's work and no old address is lost when lessons are put in
 * another order or cut in two. A name of an earlier edition is never given to another lesson.
 */
public final class MovedLessons {

    /** Earlier name and today's; of a lesson that was cut in two, the part that most of its steps went to. */
    private static final Map<String, String> LESSONS = pairs(
            """
            05-the-tank-and-its-ports   06-the-tank-and-its-ports
            06-slope-air-and-filling    07-slope-air-and-filling
            07-the-fire-and-the-coil    08-the-fire-and-the-coil
            08-beside-the-flue          09-beside-the-flue
            09-lagging-and-the-night    10-lagging-and-the-night
            10-sun-and-glass            11-sun-and-glass
            11-a-day-in-the-tank        12-a-day-in-the-tank
            12-a-year-of-wood-and-sun   13-a-year-of-wood-and-sun
            13-gravity-to-the-taps      14-gravity-to-the-taps
            14-what-can-hurt            15-what-can-hurt
            15-build-fill-and-keep      17-first-fire-and-after
            16-finding-faults           18-finding-faults
            17-your-build-sheet         20-your-build-sheet
            """);

    /** The lesson that took some steps of one that was cut in two, and those steps. */
    private static final Map<String, Part> PARTS = Map.of(
            "14-what-can-hurt",
            new Part(
                    "05-steam-and-the-vent",
                    Set.of(
                            "guess-the-steam",
                            "steam-of-an-hour",
                            "a-closed-tank",
                            "push-on-a-lid",
                            "vent-height",
                            "a-vent-of-your-own",
                            "which-vent",
                            "write-the-vent",
                            "your-vent-tube",
                            "your-vent-height")),
            "15-build-fill-and-keep",
            new Part(
                    "16-build-and-fill",
                    Set.of(
                            "guess-the-growth",
                            "growth-of-your-legs",
                            "joint-in-the-heater",
                            "tank-metal",
                            "litres-of-the-loop",
                            "air-gap",
                            "drip-against-the-mark",
                            "drops-in-the-night",
                            "your-cold-feed",
                            "your-supply",
                            "your-air-gap",
                            "your-overflow")),
            "16-finding-faults",
            new Part(
                    "19-where-the-heat-went",
                    Set.of(
                            "where-the-night-went",
                            "what-the-night-takes",
                            "cold-by-morning",
                            "through-the-woodshed",
                            "wood-that-sings",
                            "bare-by-evening",
                            "shut-vent",
                            "one-cup-at-a-time",
                            "what-right-looks-like")));

    private record Part(String lesson, Set<String> steps) {}

    private MovedLessons() {}

    /** The lesson that has that step now, of a lesson of any edition; the same name where nothing moved. */
    public static String now(String lesson, String step) {
        Part part = PARTS.get(lesson);
        return part != null && part.steps().contains(step) ? part.lesson() : now(lesson);
    }

    /** Today's name of a lesson of any edition; the same where nothing moved. */
    public static String now(String lesson) {
        return LESSONS.getOrDefault(lesson, lesson);
    }

    /** Every earlier name. */
    static Set<String> earlier() {
        return LESSONS.keySet();
    }

    /** The steps that left the larger part of their lesson, by that lesson's earlier name. */
    static Map<String, Set<String>> steps() {
        Map<String, Set<String>> steps = new TreeMap<>();
        PARTS.forEach((lesson, part) -> steps.put(lesson, part.steps()));
        return steps;
    }

    private static Map<String, String> pairs(String lines) {
        Map<String, String> pairs = new TreeMap<>();
        lines.lines().map(line -> line.split(" +")).forEach(pair -> pairs.put(pair[0], pair[1]));
        return Map.copyOf(pairs);
    }
}

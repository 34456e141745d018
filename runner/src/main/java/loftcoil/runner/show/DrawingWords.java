package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import loftcoil.engine.design.Roof;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/** What every picture of a loop says of its drawing, on the page as on paper. */
public final class DrawingWords {

    private DrawingWords() {}

    /** The pipes in the order in which the water goes round. */
    public static String roundFromTank(Drawing drawing) {
        return drawing.pipes().stream()
                .map(line -> switch (line.role()) {
                    case COLD -> "cold: " + line.name();
                    case COIL -> "the coil in the fire";
                    case HOT -> "hot: " + line.name();
                    case TAP -> "tap: " + line.name();
                })
                .collect(Collectors.joining("; "));
    }

    /** A sentence on what walls and roof of a drawing follow, after a space. */
    public static String frame(Optional<Roof> roof) {
        return " Walls and roof are a frame; how far they keep from heater and flue is told, and"
                + roof.map(said -> " that the roof is this: " + said.label() + ".")
                        .orElse(" as nobody said what shape the roof has, a gable is drawn.");
    }

    /** A sentence on the strip of the roof beside the flue, after a space; blank where nobody said how wide it is. */
    public static String freeOfWhatBurns(Drawing drawing) {
        return drawing.house().flue().opening().isEmpty()
                ? ""
                : " Where the roof is broken open beside the flue, nothing that burns may come.";
    }

    /** A detour shorter than this is not worth a word, m. */
    private static final double OUT_M = 0.03;

    private static final List<String> WINDS = List.of(
            "north",
            "north-north-east",
            "north-east",
            "east-north-east",
            "east",
            "east-south-east",
            "south-east",
            "south-south-east",
            "south",
            "south-south-west",
            "south-west",
            "west-south-west",
            "west",
            "west-north-west",
            "north-west",
            "north-north-west");

    /** A direction in words, to the nearest of sixteen, and in degrees clockwise from north. */
    public static String direction(double headingDeg) {
        int wind = (int) Math.round(headingDeg / (360.0 / WINDS.size())) % WINDS.size();
        return WINDS.get(wind) + " (" + Math.round(headingDeg) % 360 + "°)";
    }

    /** Which way a pipe leads seen from above; blank where nobody said. */
    public static String leads(Drawing.PlanRun run) {
        if (run.upright()) {
            return run.pipe().run().riseM() > 0 ? "straight up" : "straight down";
        }
        return run.headingDeg().isPresent()
                ? "towards " + direction(run.headingDeg().getAsDouble())
                : "";
    }

    /** What a plan says of the ways of its pipes, a short sentence each. */
    public static List<String> plan(Drawing.Plan plan, Function<Measure, String> speak) {
        List<String> said = new ArrayList<>();
        for (Drawing.PlanRun run : plan.runs()) {
            String leads = leads(run);
            if (!leads.isEmpty() && plan.surveyed()) {
                String along =
                        run.upright() ? "" : ", " + length(run.pipe().run().levelRunM(), speak);
                said.add(run.pipe().mark() + " " + leads + along);
            }
        }
        if (!plan.surveyed()) {
            String uprights = plan.runs().stream()
                    .filter(Drawing.PlanRun::upright)
                    .map(run -> run.pipe().mark())
                    .collect(Collectors.joining(", "));
            said.add("no compass was taken: the pipes are led straight to the tank");
            if (plan.runs().stream().anyMatch(run -> run.pipe().points().stream()
                    .anyMatch(point -> Math.abs(point.yM() - run.pipe().start().yM()) > OUT_M
                            && run.pipe().role() != Drawing.Role.COIL))) {
                said.add("what a run has over goes out and back square");
            }
            if (!uprights.isEmpty()) {
                said.add("upright: " + uprights);
            }
        }
        if (plan.missM() > 0) {
            said.add("dotted: the cold pipe ends " + length(plan.missM(), speak) + " beside the tank");
        }
        if (plan.northDeg().isEmpty()) {
            said.add("nobody said where north is");
        }
        return said;
    }

    private static String length(double metres, Function<Measure, String> speak) {
        return speak.apply(Measure.rounded(metres, MeasureKind.LENGTH_M, 2));
    }

    /** The levels from the highest to the lowest. */
    public static List<Drawing.Level> levelsDown(Drawing drawing) {
        return drawing.levels().stream()
                .sorted(Comparator.comparingDouble(Drawing.Level::heightM).reversed())
                .toList();
    }
}

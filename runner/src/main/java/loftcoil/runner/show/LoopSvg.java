package loftcoil.runner.show;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import loftcoil.engine.sheet.Currents;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.DrawingChange;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/** The house for the page, with the heights of its levels and its slopes also as a table. */
final class LoopSvg {

    /** Units that a house takes at most, so that its letters keep their size beside the text. */
    private static final double WIDE = 440;

    private static final double HIGH = 560;
    private static final double MOST_PER_M = 125;
    private static final double LETTERS = 26;
    /** Two houses in one frame have twice as much to be named; their picture has no levels at its side. */
    private static final double CHANGE_TIMES = 1.8;

    private static final double THREE_FEET_M = 0.9144;

    private LoopSvg() {}

    /** A house and the water in it, and perhaps another that is tried. */
    record Scene(Drawing drawing, Optional<Currents> currents, Optional<HouseSvg.Ghost> ghost) {}

    /** The picture of a house. */
    static View.Picture picture(String title, Scene scene, Function<Measure, String> speak) {
        Drawing drawing = scene.drawing();
        List<List<String>> rows = DrawingWords.levelsDown(drawing).stream()
                .map(level -> List.of(level.label(), height(level, speak)))
                .collect(Collectors.toList());
        drawing.pipes().stream()
                .filter(pipe -> pipe.role() != Drawing.Role.COIL)
                .forEach(pipe -> rows.add(List.of(pipe.mark() + " " + pipe.name(), HouseSvg.slope(pipe.run(), speak))));
        String says = says(scene, speak);
        HouseSvg.Drawn drawn = HouseSvg.draw(drawing, scene.currents(), scene.ghost(), pen(scene, speak));
        String attributes = "class=\"lc-drawing lc-house\" font-family=\"system-ui, sans-serif\"";
        return new View.Picture(
                title,
                HouseSvg.picture(drawn, attributes, title, says),
                says,
                List.of("level or pipe", "above the floor, or slope"),
                rows);
    }

    /** The picture of a house from above. */
    static View.Picture plan(String title, Scene scene, Function<Measure, String> speak) {
        Drawing.Plan plan = scene.drawing().plan();
        Drawing.Bounds walls = plan.walls();
        HousePen pen = pen(PlanSvg.asWideAs(plan, walls), speak);
        HouseSvg.Drawn drawn = HouseSvg.plan(scene.drawing(), scene.currents(), pen);
        List<List<String>> rows = plan.runs().stream()
                .filter(run -> run.pipe().role() != Drawing.Role.COIL)
                .map(run -> List.of(
                        run.pipe().mark() + " " + run.pipe().name(),
                        DrawingWords.leads(run).isEmpty() ? "yours to choose" : DrawingWords.leads(run)))
                .toList();
        String says = "The house seen from above, to scale. " + String.join("; ", DrawingWords.plan(plan, speak)) + ".";
        String attributes = "class=\"lc-drawing lc-plan\" font-family=\"system-ui, sans-serif\"";
        return new View.Picture(
                title,
                HouseSvg.picture(drawn, attributes, title, says),
                says,
                List.of("pipe", "leads, from above"),
                rows);
    }

    /** A rebuild in one frame. */
    static View.Picture change(String title, DrawingChange change, Function<Measure, String> speak) {
        return ChangeSvg.picture(title, change, pen(ChangeSvg.frame(change), CHANGE_TIMES, speak));
    }

    private static HousePen pen(Scene scene, Function<Measure, String> speak) {
        Drawing.Bounds frame = scene.ghost()
                .map(ghost -> ghost.drawing().bounds())
                .map(scene.drawing().bounds()::with)
                .orElse(scene.drawing().bounds());
        return pen(frame, speak);
    }

    private static HousePen pen(Drawing.Bounds frame, Function<Measure, String> speak) {
        return pen(frame, 1, speak);
    }

    private static HousePen pen(Drawing.Bounds frame, double times, Function<Measure, String> speak) {
        double perM = times
                * Math.min(
                        MOST_PER_M,
                        Math.min(WIDE / (frame.rightM() - frame.leftM()), HIGH / (frame.topM() - frame.bottomM())));
        String metre = speak.apply(Measure.rounded(1, MeasureKind.LENGTH_M, 0));
        HousePen.Bar bar = metre.endsWith(" m")
                ? new HousePen.Bar(1, metre)
                : new HousePen.Bar(THREE_FEET_M, speak.apply(Measure.metres(THREE_FEET_M)));
        return new HousePen(new HousePen.Size(perM, 20, 6, LETTERS), speak, false, Map.of(), bar, HousePen.Views.SIDE);
    }

    private static String says(Scene scene, Function<Measure, String> speak) {
        String levels = scene.drawing().levels().stream()
                .sorted(Comparator.comparingDouble(Drawing.Level::heightM))
                .map(level -> level.label() + " " + height(level, speak))
                .collect(Collectors.joining(", "));
        return "The house seen from the side, to scale. Round from the tank: "
                + DrawingWords.roundFromTank(scene.drawing()) + "." + DrawingWords.freeOfWhatBurns(scene.drawing())
                + " Heights above the floor: " + levels + "."
                + scene.currents().map(currents -> " " + water(currents, speak)).orElse("");
    }

    private static String water(Currents currents, Function<Measure, String> speak) {
        if (currents.flowLPerMin() == 0) {
            return "The water stands.";
        }
        String way = currents.flowLPerMin() > 0 ? "forward" : "backward, down the hot pipe";
        double hottest = currents.pipes().stream()
                .mapToDouble(pipe -> Math.max(pipe.startC(), pipe.endC()))
                .max()
                .orElse(currents.tankC());
        return "The water runs " + way + ", " + speak.apply(Measure.litresPerMin(Math.abs(currents.flowLPerMin())))
                + ", at most " + speak.apply(Measure.celsius(hottest)) + ".";
    }

    private static String height(Drawing.Level level, Function<Measure, String> speak) {
        return speak.apply(Measure.rounded(level.heightM(), MeasureKind.LENGTH_M, 2));
    }
}

package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.Drawing.Bounds;
import loftcoil.engine.sheet.Drawing.Point;
import loftcoil.engine.sheet.DrawingChange;
import loftcoil.engine.sheet.DrawingChange.Fate;
import loftcoil.engine.sheet.DrawingChange.Item;
import loftcoil.runner.show.Placed.At;
import loftcoil.runner.show.Placed.Box;
import loftcoil.runner.show.Svg.Look;

/**
 * A rebuild in one frame: what is kept in a thin line, what is cut out in dashes with crosses on them, what is added in a thick line, each
 * with its mark and told in words, so that nobody needs the colours.
 */
public final class ChangeSvg {

    private static final double[] ALONG = {0.5, 0.35, 0.65, 0.2, 0.8};
    private static final int LINE = 58;
    /** Room for names at the side of the houses, letters. */
    private static final double NAMES_WIDE = 9;

    private final DrawingChange change;
    private final HousePen pen;
    private final Bounds frame;
    private final double stroke;
    private final double letters;
    private final Placed placed;
    private final Svg svg = new Svg();
    private double right;

    private ChangeSvg(DrawingChange change, HousePen pen) {
        this.change = change;
        this.pen = pen;
        this.frame = frame(change);
        this.stroke = pen.size().stroke();
        this.letters = pen.size().letters();
        this.placed = new Placed(new Box(
                0, -letters, x(frame.rightM()) + pen.size().margin() + NAMES_WIDE * letters, y(frame.bottomM())));
    }

    /** The least box round both houses. */
    public static Bounds frame(DrawingChange change) {
        return change.before().bounds().with(change.after().bounds());
    }

    /** Draws it. */
    public static HouseSvg.Drawn draw(DrawingChange change, HousePen pen) {
        return new ChangeSvg(change, pen).all();
    }

    /** What is kept, cut out and added, a sentence each. */
    public static List<String> says(DrawingChange change) {
        List<String> said = new ArrayList<>();
        for (Fate fate : Fate.values()) {
            List<Item> items = change.of(fate);
            said.add(fate.words() + ": "
                    + (items.isEmpty()
                            ? "nothing"
                            : items.stream().map(ChangeSvg::called).collect(Collectors.joining(", "))));
        }
        return said;
    }

    private static String called(Item item) {
        return item.mark().equals(item.name()) ? item.name() : item.mark() + " " + item.name();
    }

    /** The picture for a page. */
    static View.Picture picture(String title, DrawingChange change, HousePen pen) {
        String says = String.join(". ", says(change)) + ".";
        HouseSvg.Drawn drawn = draw(change, pen);
        String attributes = "class=\"lc-drawing lc-change\" font-family=\"system-ui, sans-serif\"";
        List<List<String>> rows = change.items().stream()
                .map(item -> List.of(called(item), item.fate().words()))
                .toList();
        return new View.Picture(
                title,
                HouseSvg.picture(drawn, attributes, title, says),
                says,
                List.of("what", "what becomes of it"),
                rows);
    }

    private HouseSvg.Drawn all() {
        Drawing after = change.after();
        line(after.house().frame(), new Look("lc-wall-stroke", "wall", 1.6 * stroke), "");
        svg.box(box(after.house().heater()), stroke, new Look("lc-iron-stroke", "iron", 0.5 * stroke));
        Bounds flue = after.house().flue().pipe();
        svg.box(box(flue), 0, new Look("lc-iron-stroke", "iron", 0.4 * stroke));
        svg.line(
                List.of(
                        new double[] {0, y(0)},
                        new double[] {x(frame.rightM()) + pen.size().margin(), y(0)}),
                new Look("lc-ink-stroke", "ink", 0.4 * stroke),
                "");
        // What goes lies over what comes: where both run alike, dashes and crosses are seen on the thick line.
        for (Fate fate : List.of(Fate.KEPT, Fate.ADDED, Fate.CUT_OUT)) {
            change.of(fate).forEach(this::item);
        }
        things();
        for (Fate fate : List.of(Fate.ADDED, Fate.CUT_OUT, Fate.KEPT)) {
            change.of(fate).forEach(this::mark);
        }
        double foot = y(frame.bottomM());
        for (Fate fate : Fate.values()) {
            foot = legend(fate, foot + 1.2 * pen.size().lineApart());
        }
        List<List<Double>> boxes = placed.words().stream()
                .map(box -> List.of(box.left(), box.top(), box.right(), box.bottom()))
                .toList();
        right = Math.max(right, x(frame.rightM()) + pen.size().margin());
        right = Math.max(
                right, placed.words().stream().mapToDouble(Box::right).max().orElse(0));
        double top =
                Math.min(0, placed.words().stream().mapToDouble(Box::top).min().orElse(0));
        return new HouseSvg.Drawn(svg.toString(), 0, top, right + stroke, foot + 0.6 * letters - top, boxes);
    }

    private double x(double metres) {
        return (metres - frame.leftM()) * pen.size().perM() + pen.size().margin();
    }

    private double y(double metres) {
        return (frame.topM() - metres) * pen.size().perM() + pen.size().margin();
    }

    private List<double[]> at(List<Point> points) {
        return points.stream().map(p -> new double[] {x(p.xM()), y(p.yM())}).toList();
    }

    private Box box(Bounds of) {
        return new Box(x(of.leftM()), y(of.topM()), x(of.rightM()), y(of.bottomM()));
    }

    private void line(List<Point> points, Look look, String more) {
        svg.line(at(points), look, more + " stroke-linejoin=\"round\"");
    }

    private Look look(Fate fate) {
        return switch (fate) {
            case KEPT -> new Look("lc-tap-stroke", "soft", 0.45 * stroke);
            case CUT_OUT -> new Look("lc-ghost-stroke", "ghost", 0.7 * stroke);
            case ADDED -> new Look("lc-ink-stroke", "ink", 1.5 * stroke);
        };
    }

    private String dashes(Fate fate) {
        return fate == Fate.CUT_OUT
                ? "stroke-dasharray=\"" + Svg.number(1.6 * stroke) + " " + Svg.number(1.1 * stroke) + "\""
                : "";
    }

    private void item(Item item) {
        List<double[]> line = at(item.points());
        svg.line(
                line,
                look(item.fate()),
                (item.shut() ? "data-shut " : "") + dashes(item.fate()) + " stroke-linejoin=\"round\"");
        if (item.fate() == Fate.CUT_OUT) {
            crosses(line);
        }
    }

    /** A cross at the middle of what goes, and at both sides of that where it is long. */
    private void crosses(List<double[]> line) {
        double arm = 1.1 * stroke;
        for (double share : new double[] {0.25, 0.5, 0.75}) {
            double[] at = WaterSvg.along(line, share);
            for (int way : new int[] {-1, 1}) {
                svg.line(
                        List.of(
                                new double[] {at[0] - arm, at[1] - way * arm},
                                new double[] {at[0] + arm, at[1] + way * arm}),
                        new Look("lc-ghost-stroke", "ghost", 0.45 * stroke),
                        "");
            }
        }
    }

    private void things() {
        for (Item item : change.items()) {
            List<double[]> line = at(item.points());
            placed.thing(item.shut() ? closed(line) : line, stroke, stroke);
        }
        placed.thing(at(change.after().house().frame()), stroke, stroke);
        placed.thing(box(change.after().house().heater()));
        placed.thing(box(change.after().house().flue().pipe()));
        placed.thing(
                new Box(0, y(0) - stroke / 2, x(frame.rightM()) + pen.size().margin(), y(0) + stroke / 2));
    }

    private static List<double[]> closed(List<double[]> line) {
        List<double[]> closed = new ArrayList<>(line);
        closed.add(line.get(0));
        return closed;
    }

    private void mark(Item item) {
        String words = sign(item.fate()) + item.mark();
        double size = 0.72 * letters;
        List<double[]> line = at(item.points());
        List<At> places = new ArrayList<>();
        List<double[]> froms = new ArrayList<>();
        for (double off : new double[] {0.6, 1, 1.5, 2.1, 3, 4, 5.5, 7}) {
            double far = off * letters;
            for (double share : ALONG) {
                double[] at = WaterSvg.along(line, share);
                froms.addAll(Collections.nCopies(4, at));
                places.add(new At(at[0] + far, at[1] + size / 3, "start"));
                places.add(new At(at[0] - far, at[1] + size / 3, "end"));
                places.add(new At(at[0], at[1] - far, "middle"));
                places.add(new At(at[0], at[1] + far + 0.6 * size, "middle"));
            }
        }
        // What has no free place near it stands in the legend alone.
        placed.place(words, size, places).ifPresent(at -> {
            svg.words(at, words, size);
            double[] from = froms.get(places.indexOf(at));
            Box.of(words, size, at.x(), at.y(), at.anchor())
                    .nearestIfFar(from, letters)
                    .ifPresent(near ->
                            svg.line(List.of(from, near), new Look("lc-level-stroke", "edge", 0.25 * stroke), ""));
        });
    }

    private static String sign(Fate fate) {
        return switch (fate) {
            case KEPT -> "";
            case CUT_OUT -> "− ";
            case ADDED -> "+ ";
        };
    }

    /** A piece of its line, and in words what it is and which things are such. @return where it ends, downward */
    private double legend(Fate fate, double top) {
        double left = pen.size().margin();
        List<double[]> sample =
                List.of(new double[] {left, top - letters / 3}, new double[] {left + 3.4 * letters, top - letters / 3});
        svg.line(sample, look(fate), dashes(fate));
        if (fate == Fate.CUT_OUT) {
            crosses(sample);
        }
        List<String> marks = change.of(fate).stream().map(Item::mark).toList();
        double y = top;
        for (String words :
                Lists.lines(sign(fate) + fate.words() + ": ", marks.isEmpty() ? List.of("nothing") : marks, LINE)) {
            At at = new At(left + 4 * letters, y, "start");
            svg.words(at, words, letters);
            Box box = Box.of(words, letters, at.x(), at.y(), at.anchor());
            placed.stands(box);
            right = Math.max(right, box.right());
            y += pen.size().lineApart();
        }
        return y - pen.size().lineApart();
    }
}

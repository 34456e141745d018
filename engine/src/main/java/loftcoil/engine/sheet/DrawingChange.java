package loftcoil.engine.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.sheet.Drawing.Line;
import loftcoil.engine.sheet.Drawing.Point;

/**
 * What a rebuild keeps, cuts out and adds, drawn in one frame. A thing is kept where it has the same measures at the same level; how far
 * across it is drawn follows the tank and counts for nothing.
 *
 * @param before the house as it stands
 * @param after the house as it is to be
 * @param items everything that can be kept, cut out or added: first what is kept, then what goes, then what comes
 */
public record DrawingChange(Drawing before, Drawing after, List<Item> items) {

    private static final double SAME_M = 0.005;
    private static final int ROUND = 24;

    /** Keeps a copy of the items. */
    public DrawingChange {
        items = List.copyOf(items);
    }

    /** What becomes of a thing. */
    public enum Fate {
        /** It stays as it is. */
        KEPT("kept"),
        /** It is taken away. */
        CUT_OUT("cut out"),
        /** It is new. */
        ADDED("added");

        private final String words;

        Fate(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /**
     * A thing.
     *
     * @param fate what becomes of it
     * @param mark its mark on its own drawing, such as {@code H1}; its name where it has none
     * @param name what the builder calls it
     * @param points its line as it is drawn
     * @param shut whether that line is an outline
     */
    public record Item(Fate fate, String mark, String name, List<Point> points, boolean shut) {
        /** Keeps a copy of the points. */
        public Item {
            points = List.copyOf(points);
        }
    }

    /** One thing of one drawing, and what has to be the same for it to be kept. */
    private record Thing(String mark, String name, List<Point> points, boolean shut, List<Object> same) {}

    /** Sets two drawings side by side. */
    public static DrawingChange between(Drawing before, Drawing after) {
        Map<String, Thing> old = byMark(before);
        Map<String, Thing> made = byMark(after);
        List<Item> kept = new ArrayList<>();
        List<Item> gone = new ArrayList<>();
        List<Item> come = new ArrayList<>();
        made.forEach((mark, thing) -> {
            boolean stays = Optional.ofNullable(old.get(mark))
                    .filter(was -> was.same().equals(thing.same()))
                    .isPresent();
            (stays ? kept : come).add(item(stays ? Fate.KEPT : Fate.ADDED, thing));
        });
        old.forEach((mark, thing) -> {
            if (kept.stream().noneMatch(item -> item.mark().equals(mark))) {
                gone.add(item(Fate.CUT_OUT, thing));
            }
        });
        return new DrawingChange(
                before,
                after,
                Stream.of(kept, gone, come).flatMap(List::stream).toList());
    }

    /** Those of one fate. */
    public List<Item> of(Fate fate) {
        return items.stream().filter(item -> item.fate() == fate).toList();
    }

    private static Item item(Fate fate, Thing thing) {
        return new Item(fate, thing.mark(), thing.name(), thing.points(), thing.shut());
    }

    private static Map<String, Thing> byMark(Drawing drawing) {
        List<Thing> things = new ArrayList<>();
        drawing.pipes().forEach(pipe -> things.add(pipe(pipe)));
        drawing.taps().forEach(pipe -> things.add(pipe(pipe)));
        Drawing.TankBox tank = drawing.tank();
        things.add(new Thing(
                "tank",
                "tank",
                outline(tank),
                true,
                List.of(
                        rounded(tank.baseM()),
                        rounded(tank.heightM()),
                        rounded(tank.widthM()),
                        tank.round(),
                        drawing.ports().stream()
                                .map(port -> rounded(port.at().yM()))
                                .toList())));
        drawing.house()
                .panes()
                .ifPresent(panes -> things.add(new Thing(
                        "panes",
                        "panes",
                        List.of(panes.upper(), panes.lower()),
                        false,
                        List.of(panes.count(), rounded(panes.areaM2()), rounded(panes.tiltDeg())))));
        for (Drawing.Fixture fixture : drawing.house().fixtures()) {
            Point end = fixture.points().get(fixture.points().size() - 1);
            things.add(new Thing(
                    fixture.kind().words(),
                    fixture.kind().words(),
                    fixture.points(),
                    false,
                    List.of(fixture.kind(), rounded(end.yM()))));
        }
        return things.stream()
                .collect(Collectors.toMap(
                        Thing::mark, Function.identity(), (one, other) -> one, LinkedHashMap::new));
    }

    private static Thing pipe(Line pipe) {
        return new Thing(
                pipe.mark(),
                pipe.name(),
                pipe.points(),
                false,
                List.of(
                        pipe.run().tube(),
                        rounded(pipe.run().lengthM()),
                        rounded(pipe.run().riseM()),
                        pipe.run().lagging(),
                        rounded(pipe.start().yM())));
    }

    private static long rounded(double value) {
        return Math.round(value / SAME_M);
    }

    private static List<Point> outline(Drawing.TankBox tank) {
        int steps = tank.round() ? ROUND : 1;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double level = tank.baseM() + tank.heightM() * i / steps;
            points.add(new Point(tank.leftM() + tank.insetM(level), level));
        }
        for (int i = steps; i >= 0; i--) {
            double level = tank.baseM() + tank.heightM() * i / steps;
            points.add(new Point(tank.rightM() - tank.insetM(level), level));
        }
        return points;
    }
}

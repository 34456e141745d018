package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.sheet.Currents;
import loftcoil.engine.sheet.Drawing;
import loftcoil.runner.show.Placed.At;
import loftcoil.runner.show.Placed.Box;
import loftcoil.runner.show.Svg.Look;

/**
 * Pipes with the water in them: coloured by its temperature, an arrow the way it goes, and marks that a page lets run at the pace of the
 * water itself, to the scale of the drawing. Where nothing moves they stand, and no arrow is drawn.
 */
final class WaterSvg {

    /** Below this water counts as cold, above the other as hot, °C; four steps lie between. */
    static final double COOLEST_C = 25;

    static final double HOTTEST_C = 85;
    private static final int WARMTHS = 6;
    private static final int PARTS = 4;

    /** Units from mark to mark; the page's style sheet moves them by as much. */
    private static final double PERIOD = 24;

    /** The quickest pace takes 0.4 s from mark to mark, each other one a quarter longer than the one before; the style sheet has them. */
    private static final double QUICKEST_S = 0.4;

    private static final double SLOWER = 1.25;
    static final int SLOWEST = 24;
    private static final double STANDS_M_PER_S = 5e-4;

    private final Svg svg;
    private final double stroke;
    private final double perM;

    WaterSvg(Svg svg, double stroke, double perM) {
        this.svg = svg;
        this.stroke = stroke;
        this.perM = perM;
    }

    void tap(List<double[]> line) {
        svg.line(line, new Look("lc-tap-stroke", "soft", 0.55 * stroke), "stroke-linejoin=\"round\"");
    }

    void pipe(Drawing.Line pipe, List<double[]> line, Optional<Currents.Current> current) {
        if (pipe.run().lagging().isPresent()) {
            svg.line(
                    line,
                    new Look("lc-lagged-stroke", "lagged", 2.4 * stroke),
                    "stroke-opacity=\"0.45\" stroke-linejoin=\"round\"");
        }
        double width = pipe.role() == Drawing.Role.COIL ? 1.2 * stroke : stroke;
        if (current.isEmpty()) {
            svg.line(line, byRole(pipe.role(), width), "stroke-linejoin=\"round\" stroke-linecap=\"round\"");
            return;
        }
        Currents.Current water = current.get();
        for (int part = 0; part < PARTS; part++) {
            double from = (double) part / PARTS;
            double to = (part + 1.0) / PARTS;
            double tempC = water.startC() + (from + to) / 2 * (water.endC() - water.startC());
            int warmth = warmth(tempC);
            svg.line(
                    between(line, from, to),
                    new Look("lc-warm-" + warmth + "-stroke", "warm-" + warmth, width),
                    "stroke-linejoin=\"round\" stroke-linecap=\"round\"");
        }
        svg.line(
                line,
                new Look("lc-flow " + pace(water.speedMPerS()), "paper", 0.42 * stroke),
                "stroke-dasharray=\"" + Svg.number(PERIOD / 6) + " " + Svg.number(5 * PERIOD / 6)
                        + "\" stroke-linecap=\"round\"");
        if (pipe.role() != Drawing.Role.COIL && Math.abs(water.speedMPerS()) > STANDS_M_PER_S) {
            arrow(line, water.speedMPerS() > 0);
        }
    }

    private static Look byRole(Drawing.Role role, double width) {
        return switch (role) {
            case COLD -> new Look("lc-cold-stroke", "warm-0", width);
            case COIL -> new Look("lc-coil-stroke", "bare", width);
            case HOT -> new Look("lc-hot-stroke", "warm-5", width);
            case TAP -> new Look("lc-tap-stroke", "soft", width);
        };
    }

    /** Which of the colours of water a temperature has, from 0. */
    static int warmth(double tempC) {
        double step = (HOTTEST_C - COOLEST_C) / (WARMTHS - 2);
        return (int) Math.max(0, Math.min(WARMTHS - 1, Math.floor((tempC - COOLEST_C) / step) + 1));
    }

    /** The class of marks that move at a speed. */
    private String pace(double speedMPerS) {
        double speed = Math.abs(speedMPerS);
        if (speed <= STANDS_M_PER_S) {
            return "lc-stands";
        }
        double periodS = PERIOD / perM / speed;
        long pace = Math.round(Math.log(periodS / QUICKEST_S) / Math.log(SLOWER));
        return "lc-pace-" + Math.max(0, Math.min(SLOWEST, pace)) + (speedMPerS < 0 ? " lc-backward" : "");
    }

    private void arrow(List<double[]> line, boolean forward) {
        double[] at = along(line, 0.6);
        double way = forward ? 1 : -1;
        double size = 1.5 * stroke;
        double dx = at[2] * way * size;
        double dy = at[3] * way * size;
        svg.line(
                List.of(
                        new double[] {at[0] - dx - dy, at[1] - dy + dx},
                        new double[] {at[0] + dx, at[1] + dy},
                        new double[] {at[0] - dx + dy, at[1] - dy - dx}),
                new Look("lc-ink-stroke", "ink", 0.5 * stroke),
                "stroke-linejoin=\"round\"");
    }

    /** A row of the colours with words at both ends. @return boxes of the words */
    List<Box> key(At at, List<String> ends, double letters) {
        double x = at.x();
        Box first = Box.of(ends.get(0), letters, x, at.y(), "start");
        svg.words(new At(x, at.y(), "start"), ends.get(0), letters);
        x = first.right() + letters / 2;
        for (int i = 0; i < WARMTHS; i++) {
            svg.line(
                    List.of(new double[] {x, at.y() - letters / 3}, new double[] {x + letters, at.y() - letters / 3}),
                    new Look("lc-warm-" + i + "-stroke", "warm-" + i, stroke),
                    "");
            x += letters;
        }
        x += letters / 2;
        svg.words(new At(x, at.y(), "start"), ends.get(1), letters);
        return List.of(first, Box.of(ends.get(1), letters, x, at.y(), "start"));
    }

    /** The place at a share of the way along a line, and which way the line leads there: x, y, and a step of length 1. */
    static double[] along(List<double[]> line, double share) {
        double left = share * length(line);
        for (int i = 1; i < line.size(); i++) {
            double[] from = line.get(i - 1);
            double[] to = line.get(i);
            double length = Math.hypot(to[0] - from[0], to[1] - from[1]);
            if (length > 0 && (left <= length || i == line.size() - 1)) {
                double part = Math.min(1, left / length);
                double dx = (to[0] - from[0]) / length;
                double dy = (to[1] - from[1]) / length;
                return new double[] {from[0] + part * (to[0] - from[0]), from[1] + part * (to[1] - from[1]), dx, dy};
            }
            left -= length;
        }
        double[] end = line.get(line.size() - 1);
        return new double[] {end[0], end[1], 1, 0};
    }

    private static double length(List<double[]> line) {
        double length = 0;
        for (int i = 1; i < line.size(); i++) {
            length += Math.hypot(line.get(i)[0] - line.get(i - 1)[0], line.get(i)[1] - line.get(i - 1)[1]);
        }
        return length;
    }

    private static List<double[]> between(List<double[]> line, double from, double to) {
        double whole = length(line);
        List<double[]> part = new ArrayList<>();
        part.add(along(line, from));
        double done = 0;
        for (int i = 1; i < line.size(); i++) {
            done += Math.hypot(line.get(i)[0] - line.get(i - 1)[0], line.get(i)[1] - line.get(i - 1)[1]);
            if (done > from * whole && done < to * whole) {
                part.add(line.get(i));
            }
        }
        part.add(along(line, to));
        return part;
    }
}

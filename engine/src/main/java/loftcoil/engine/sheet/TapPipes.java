package loftcoil.engine.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Tap;
import loftcoil.engine.design.Trunk;
import loftcoil.engine.sheet.Drawing.Line;
import loftcoil.engine.sheet.Drawing.Point;
import loftcoil.engine.sheet.Drawing.Role;
import loftcoil.engine.sheet.Drawing.Run;

/**
 * The pipes to the taps: down beside the tank and across at the level of each tap. The pipe of the highest tap stands outermost, so that
 * none crosses another.
 */
final class TapPipes {

    private static final double BESIDE_TANK_M = 0.09;
    private static final double APART_M = 0.06;
    private static final double TO_TAP_M = 0.3;
    private static final double TAPS_APART_M = 0.2;
    /** Taps stand in so many rows, so that many of them do not widen the house. */
    private static final int ROWS = 3;

    private static final double SPOUT_M = 0.07;
    private static final double ABOVE_TAPS_M = 0.3;

    /** Mark of the pipe that taps share. */
    static final String TRUNK = "T0";

    private final Design design;
    private final Point port;
    private final double besideX;

    TapPipes(Design design, Point port, double tankRightM) {
        this.design = design;
        this.port = port;
        this.besideX = tankRightM + BESIDE_TANK_M;
    }

    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        Optional<Point> parts = design.trunk().map(trunk -> trunk(trunk, lines));
        Map<Integer, Double> downX = new HashMap<>();
        List<Integer> lowFirst = IntStream.range(0, design.taps().size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> design.taps().get(i).levelM()))
                .toList();
        int own = parts.isPresent() ? 1 : 0;
        for (int i : lowFirst) {
            boolean onTrunk = parts.isPresent() && design.onTrunk(design.taps().get(i));
            downX.put(i, besideX + (onTrunk ? 0 : APART_M * own++));
        }
        double tapsX = besideX + APART_M * Math.max(0, own - 1) + TO_TAP_M;
        for (int i = 0; i < design.taps().size(); i++) {
            Tap tap = design.taps().get(i);
            boolean onTrunk = parts.isPresent() && design.onTrunk(tap);
            double tapX = tapsX + TAPS_APART_M * (lowFirst.indexOf(i) % ROWS);
            lines.add(tap(i, onTrunk ? parts.get() : port, downX.getOrDefault(i, besideX), tapX));
        }
        return lines;
    }

    private Point trunk(Trunk trunk, List<Line> lines) {
        double highest = design.taps().stream()
                .filter(design::onTrunk)
                .mapToDouble(Tap::levelM)
                .max()
                .orElse(port.yM());
        Point parts = new Point(besideX, Math.min(port.yM(), highest + ABOVE_TAPS_M));
        lines.add(new Line(
                Role.TAP,
                TRUNK,
                "trunk",
                List.of(port, new Point(besideX, port.yM()), parts),
                new Run(trunk.tube(), trunk.lengthM(), parts.yM() - port.yM(), Optional.empty())));
        return parts;
    }

    private Line tap(int index, Point from, double downX, double tapX) {
        Tap tap = design.taps().get(index);
        double pipeM = tap.levelM() + SPOUT_M;
        List<Point> points = List.of(
                from,
                new Point(downX, from.yM()),
                new Point(downX, pipeM),
                new Point(tapX, pipeM),
                new Point(tapX, tap.levelM()));
        return new Line(
                Role.TAP,
                "T" + (index + 1),
                tap.name(),
                points,
                new Run(tap.tube(), tap.lengthM(), tap.levelM() - port.yM(), Optional.empty()));
    }
}

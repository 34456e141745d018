package loftcoil.engine.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loftcoil.engine.build.CutList.Piece;
import loftcoil.engine.build.PipeChain.Joint;
import loftcoil.engine.build.PipeChain.Stretch;
import loftcoil.engine.design.Design;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;

/** Makes the cutting list: take-off of fittings, couplings where a piece is longer than what is sold, packing. */
final class CutMaker {

    private static final double MM_PER_M = 1000;

    private final List<Piece> pieces = new ArrayList<>();
    private final Map<String, StockCutter> cutters = new LinkedHashMap<>();
    private final List<String> tooShort = new ArrayList<>();

    private CutMaker() {}

    static CutList of(Design design) {
        CutMaker maker = new CutMaker();
        PipeChain.loop(design).forEach(maker::add);
        int number = 1;
        for (var tap : design.taps()) {
            PipeChain.tap(tap, number).forEach(maker::add);
            number++;
        }
        List<CutList.Bar> bars = new ArrayList<>();
        maker.cutters.values().forEach(cutter -> bars.addAll(cutter.bars()));
        return new CutList(maker.pieces, bars, maker.rules(design));
    }

    private void add(Stretch stretch) {
        double stockMm = StockCutter.stockMm(stretch.tube());
        int parts = 1;
        while (cutMm(stretch, parts, 0) > stockMm || cutMm(stretch, parts, parts - 1) > stockMm) {
            parts++;
        }
        for (int part = 0; part < parts; part++) {
            add(stretch, part, parts);
        }
    }

    private void add(Stretch stretch, int part, int parts) {
        String mark = parts == 1 ? stretch.mark() : stretch.mark() + (char) ('a' + part);
        double centreMm = stretch.centreM() * MM_PER_M / parts;
        Joint from = from(stretch, part);
        Joint to = to(stretch, part, parts);
        double takeOffMm = TakeOffs.mm(from.key(), stretch.tube()) + TakeOffs.mm(to.key(), stretch.tube());
        double cutMm = cutMm(stretch, parts, part);
        if (cutMm < 2 * TakeOffs.socketMm(stretch.tube())) {
            tooShort.add(mark);
        }
        pieces.add(new Piece(
                mark,
                stretch.leg(),
                stretch.tube().name(),
                Measure.millimetres(centreMm),
                Measure.millimetres(takeOffMm),
                Measure.millimetres(cutMm),
                from.words() + " to " + to.words()));
        cutters.computeIfAbsent(stretch.tube().name(), name -> new StockCutter(stretch.tube()))
                .add(mark, cutMm);
    }

    private static double cutMm(Stretch stretch, int parts, int part) {
        Tube tube = stretch.tube();
        double takeOff = TakeOffs.mm(from(stretch, part).key(), tube)
                + TakeOffs.mm(to(stretch, part, parts).key(), tube);
        return Math.max(0, stretch.centreM() * MM_PER_M / parts - takeOff);
    }

    private static Joint from(Stretch stretch, int part) {
        return part == 0 ? stretch.from() : StockCutter.COUPLING;
    }

    private static Joint to(Stretch stretch, int part, int parts) {
        return part == parts - 1 ? stretch.to() : StockCutter.COUPLING;
    }

    private List<MeasuredText> rules(Design design) {
        List<MeasuredText> rules = new ArrayList<>(List.of(
                MeasuredText.of(
                        "A design says how many fittings a leg has, not where they sit. Here they are spread evenly. What you take"
                                + " from one piece of a leg, give to its neighbour: the sum of a leg's pieces is what must stay."),
                MeasuredText.of(
                        "Cut length = from middle to middle of the two fittings, less what each fitting takes off. The take-off is"
                                + " an estimate: makers differ. Hold one fitting of each kind against the tube, measure from its middle"
                                + " to the stop inside, and put your own number in place of ours before you cut."),
                MeasuredText.of(
                        "Cut on the short side of the mark rather than the long; a tube goes ",
                        sockets(),
                        " into its socket."),
                MeasuredText.of(
                        "Packing: the longest piece first, into the first length that still has room for it, else from a new"
                                + " length. Each cut takes ",
                        Measure.millimetres(StockCutter.SAW_MM),
                        " (a hacksaw; a wheel cutter takes none). It is not always the least tube possible, but seldom a length"
                                + " more."),
                MeasuredText.of(
                        "Lengths as sold differ between countries and merchants (common practice, no source): ask before you"
                                + " cut.")));
        rules.add(MeasuredText.of(
                "The coil's joints stand in the fire: braze them, or bend the coil from one soft length; soft solder"
                        + " melts as soon as the water is gone."));
        if (design.taps().size() > 1) {
            rules.add(MeasuredText.of(
                    "Each tap's pipe is counted from the draw port on its own. Where taps share a pipe, buy less."));
        }
        if (!tooShort.isEmpty()) {
            rules.add(MeasuredText.of("**Too short to join its two fittings: " + String.join(", ", tooShort)
                    + ".** Fewer fittings, a longer leg, or a bend in their place."));
        }
        return rules;
    }

    private MeasuredText sockets() {
        List<Object> parts = new ArrayList<>();
        for (StockCutter cutter : cutters.values()) {
            if (!parts.isEmpty()) {
                parts.add(", ");
            }
            parts.add(Measure.millimetres(TakeOffs.socketMm(cutter.tube())));
            parts.add(" (" + cutter.tube().name() + ")");
        }
        return MeasuredText.of(parts.toArray());
    }
}

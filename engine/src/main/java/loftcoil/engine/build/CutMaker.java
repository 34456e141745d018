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
import loftcoil.engine.words.Sentences;

/** Makes the cutting list: take-off of fittings, couplings where a piece is longer than what is sold, packing. */
final class CutMaker {

    /** What stands at the ends of a piece, and the rules of the list. */
    static final Sentences SENTENCES = Sentences.read(CutMaker.class, "cuts.properties");

    private static final double MM_PER_M = 1000;

    private final List<Piece> pieces = new ArrayList<>();
    private final Map<String, StockCutter> cutters = new LinkedHashMap<>();
    private final List<String> tooShort = new ArrayList<>();

    private CutMaker() {}

    static CutList of(Design design) {
        CutMaker maker = new CutMaker();
        PipeChain.loop(design).forEach(maker::add);
        PipeChain.taps(design).forEach(chain -> chain.forEach(maker::add));
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
                SENTENCES.say("cuts.between", "from", from.words(), "to", to.words())));
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
                SENTENCES.say("cuts.spread"),
                SENTENCES.say("cuts.take-off"),
                SENTENCES.say("cuts.short-side", "sockets", sockets()),
                SENTENCES.say("cuts.packing", "saw", Measure.millimetres(StockCutter.SAW_MM)),
                SENTENCES.say("cuts.as-sold"),
                SENTENCES.say("cuts.in-the-fire")));
        if (design.trunk().isPresent()) {
            rules.add(SENTENCES.say("cuts.trunk-shared"));
        } else if (design.taps().size() > 1) {
            rules.add(SENTENCES.say("cuts.taps-alone"));
        }
        if (!tooShort.isEmpty()) {
            rules.add(SENTENCES.say("cuts.too-short", "marks", String.join(", ", tooShort)));
        }
        return rules;
    }

    private MeasuredText sockets() {
        List<Object> parts = new ArrayList<>();
        for (StockCutter cutter : cutters.values()) {
            if (!parts.isEmpty()) {
                parts.add(", ");
            }
            parts.add(SENTENCES.say(
                    "cuts.socket",
                    "depth",
                    Measure.millimetres(TakeOffs.socketMm(cutter.tube())),
                    "tube",
                    cutter.tube().name()));
        }
        return MeasuredText.of(parts.toArray());
    }
}

package loftcoil.engine.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.build.PartsList.Group;
import loftcoil.engine.build.PartsList.Part;
import loftcoil.engine.build.PipeChain.Joint;
import loftcoil.engine.build.PipeChain.Stretch;
import loftcoil.engine.design.Design;
import loftcoil.engine.pipe.FittingTable;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;

/** Tube and fittings of loop and taps, counted from the same chain that is cut. */
final class PipeParts {

    private PipeParts() {}

    static List<Part> of(Design design, CutList cuts) {
        List<Part> parts = new ArrayList<>();
        Map<String, List<CutList.Bar>> byTube = cuts.bars().stream()
                .collect(Collectors.groupingBy(CutList.Bar::tube, TreeMap::new, Collectors.toList()));
        byTube.forEach((tube, bars) -> parts.add(tube(tube, bars)));
        fittings(design, cuts)
                .forEach(
                        (what, count) -> parts.add(
                                new Part(
                                        Group.PIPE,
                                        MeasuredText.of(what),
                                        Measure.count(count),
                                        MeasuredText.of(
                                                "Counted along the loop and the pipes to the taps. Buy one more of each kind for the one you spoil."))));
        return parts;
    }

    private static Part tube(String tube, List<CutList.Bar> bars) {
        double used = bars.stream().mapToDouble(bar -> bar.usedM().value()).sum();
        return new Part(
                Group.PIPE,
                MeasuredText.of(
                        "copper tube " + tube + ", lengths of ", bars.get(0).stockM()),
                Measure.count(bars.size()),
                MeasuredText.of(
                        "The cutting list uses ", Measure.metres(used), " of it. One length more is a cheap comfort."));
    }

    /** Fittings by words and size; a joint between two stretches is counted once. */
    private static Map<String, Integer> fittings(Design design, CutList cuts) {
        List<Joint> joints = new ArrayList<>();
        List<String> tubes = new ArrayList<>();
        List<List<Stretch>> chains = new ArrayList<>(List.of(PipeChain.loop(design)));
        for (int i = 0; i < design.taps().size(); i++) {
            chains.add(PipeChain.tap(design.taps().get(i), i + 1));
        }
        for (List<Stretch> chain : chains) {
            for (Stretch stretch : chain.subList(0, chain.size() - 1)) {
                joints.add(stretch.to());
                tubes.add(stretch.tube().name());
            }
        }
        Map<String, Integer> counts = new TreeMap<>();
        for (int i = 0; i < joints.size(); i++) {
            counts.merge(words(joints.get(i).key()) + ", for " + tubes.get(i), 1, Integer::sum);
        }
        couplings(chains, cuts).forEach((tube, count) -> {
            if (count > 0) {
                counts.merge("coupling, for " + tube, count, Integer::sum);
            }
        });
        return counts;
    }

    /** Couplings inside stretches that are longer than a length as sold. */
    private static Map<String, Integer> couplings(List<List<Stretch>> chains, CutList cuts) {
        Map<String, Integer> extra = new TreeMap<>();
        cuts.pieces().forEach(piece -> extra.merge(piece.tube(), 1, Integer::sum));
        Stream<Stretch> all = chains.stream().flatMap(List::stream);
        all.forEach(stretch -> extra.merge(stretch.tube().name(), -1, Integer::sum));
        return extra;
    }

    private static String words(String key) {
        return FittingTable.find(key).map(fitting -> fitting.words()).orElse(key);
    }
}

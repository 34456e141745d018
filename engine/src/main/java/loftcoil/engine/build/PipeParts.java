package loftcoil.engine.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.build.PartsList.Group;
import loftcoil.engine.build.PartsList.Part;
import loftcoil.engine.build.PipeChain.Stretch;
import loftcoil.engine.design.Design;
import loftcoil.engine.pipe.FittingTable;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.words.Measure;

/** Tube and fittings of loop and taps, counted from the same chain that is cut. */
final class PipeParts {

    private record Sort(String fitting, String tube) {}

    private record Ends(String wide, String narrow) {}

    private PipeParts() {}

    static List<Part> of(Design design, CutList cuts) {
        List<Part> parts = new ArrayList<>();
        Map<String, List<CutList.Bar>> byTube = cuts.bars().stream()
                .collect(Collectors.groupingBy(CutList.Bar::tube, TreeMap::new, Collectors.toList()));
        byTube.forEach((tube, bars) -> parts.add(tube(tube, bars)));
        fittings(design, cuts)
                .forEach((sort, count) -> parts.add(PartsMaker.part(
                        Group.PIPE,
                        Measure.count(count),
                        "parts.fitting",
                        "fitting",
                        sort.fitting(),
                        "tube",
                        sort.tube())));
        reducers(design)
                .forEach((ends, count) -> parts.add(PartsMaker.part(
                        Group.PIPE,
                        Measure.count(count),
                        "parts.reducer",
                        "wide",
                        ends.wide(),
                        "narrow",
                        ends.narrow())));
        return parts;
    }

    private static Part tube(String tube, List<CutList.Bar> bars) {
        double used = bars.stream().mapToDouble(bar -> bar.usedM().value()).sum();
        return PartsMaker.part(
                Group.PIPE,
                Measure.count(bars.size()),
                TubeTable.assumesCopper(tube) ? "parts.tube-assumed" : "parts.tube",
                "metal",
                TubeTable.require("tube", tube).metal().words(),
                "tube",
                tube,
                "stock",
                bars.get(0).stockM(),
                "used",
                Measure.metres(used));
    }

    /** Fittings by words and size; a joint between two stretches is counted once. */
    private static Map<Sort, Integer> fittings(Design design, CutList cuts) {
        List<List<Stretch>> chains = new ArrayList<>(List.of(PipeChain.loop(design)));
        chains.addAll(PipeChain.taps(design));
        Map<Sort, Integer> counts =
                new TreeMap<>(Comparator.comparing(Sort::fitting).thenComparing(Sort::tube));
        for (List<Stretch> chain : chains) {
            for (Stretch stretch : chain.subList(0, chain.size() - 1)) {
                String owner = stretch.to().tube();
                Sort sort = new Sort(
                        words(stretch.to().key()),
                        owner.isEmpty() ? stretch.tube().name() : owner);
                if (!stretch.to().key().equals(PipeChain.REDUCER)) {
                    counts.merge(sort, 1, Integer::sum);
                }
            }
        }
        design.trunk().filter(trunk -> PipeChain.tees(design) > 0).ifPresent(trunk -> {
            Sort tee = new Sort(words(PipeChain.BRANCH), trunk.tube());
            counts.merge(tee, PipeChain.tees(design), Integer::sum);
        });
        String coupling = words(StockCutter.COUPLING.key());
        couplings(chains, cuts).forEach((tube, count) -> {
            if (count > 0) {
                counts.merge(new Sort(coupling, tube), count, Integer::sum);
            }
        });
        return counts;
    }

    /** Where the tube changes along the loop, and from the trunk to a tap: a reducer each, also where a bend stands there. */
    private static Map<Ends, Integer> reducers(Design design) {
        Map<Ends, Integer> counts =
                new TreeMap<>(Comparator.comparing(Ends::wide).thenComparing(Ends::narrow));
        List<Stretch> loop = PipeChain.loop(design);
        for (int i = 1; i < loop.size(); i++) {
            count(loop.get(i - 1).tube(), loop.get(i).tube(), counts);
        }
        design.trunk().ifPresent(trunk -> design.taps().stream()
                .filter(design::onTrunk)
                .forEach(tap -> count(
                        TubeTable.require("trunk.tube", trunk.tube()),
                        TubeTable.require("taps.tube", tap.tube()),
                        counts)));
        return counts;
    }

    private static void count(Tube one, Tube other, Map<Ends, Integer> counts) {
        if (one.outerM() != other.outerM()) {
            boolean narrows = one.outerM() > other.outerM();
            counts.merge(new Ends((narrows ? one : other).name(), (narrows ? other : one).name()), 1, Integer::sum);
        }
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

package loftcoil.engine.build;

import static loftcoil.engine.build.PartsList.Group.PIPE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import loftcoil.engine.build.CutList.Piece;
import loftcoil.engine.build.PartsList.Part;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Tap;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeMetal;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.words.Measure;

/** What joins and holds the pipes: clips, unions, sleeves, solder or what seals threads, and the valve that shuts off the taps. */
final class FixingParts {

    /** The two pipes that pass the wall of the heater, and the two unions that let the coil out. */
    private static final int COIL_ENDS = 2;

    private FixingParts() {}

    static List<Part> of(Design design, CutList cuts, Fixings fixings) {
        List<Part> parts = new ArrayList<>();
        Map<String, Integer> clips = new TreeMap<>();
        fixings.holds().forEach(hold -> clips.merge(hold.tube(), hold.clips(), Integer::sum));
        clips.forEach((tube, count) -> parts.add(part(Measure.count(count), "parts.clips", "tube", tube)));
        boolean copper = TubeTable.require("coil.tube", design.coil().tube()).metal() == TubeMetal.COPPER;
        if (copper && unions(design) < COIL_ENDS) {
            parts.add(part(
                    Measure.count(COIL_ENDS - unions(design)),
                    "parts.unions",
                    "cold",
                    design.coldLegs().get(design.coldLegs().size() - 1).tube(),
                    "hot",
                    design.hotLegs().get(0).tube()));
        }
        parts.add(part(Measure.count(COIL_ENDS), "parts.sleeves"));
        joints(cuts, parts);
        drawPipes(design, parts);
        return parts;
    }

    /** Unions that the legs have already, as fittings of theirs. */
    private static int unions(Design design) {
        return Stream.concat(design.coldLegs().stream(), design.hotLegs().stream())
                .mapToInt(leg -> leg.fittings().getOrDefault("union", 0))
                .sum();
    }

    /** What parts the pipes that leave by the one draw port, and a valve for each of them. */
    private static void drawPipes(Design design, List<Part> parts) {
        List<String> leaving = new ArrayList<>();
        design.trunk().ifPresent(trunk -> leaving.add(trunk.tube()));
        design.taps().stream()
                .filter(tap -> !design.onTrunk(tap))
                .map(Tap::tube)
                .forEach(leaving::add);
        if (leaving.size() > 1) {
            String widest = leaving.stream()
                    .max(Comparator.comparingDouble(
                            tube -> TubeTable.require("tube", tube).boreM()))
                    .orElseThrow();
            parts.add(part(
                    Measure.count(leaving.size() - 1),
                    "parts.draw-branch",
                    "tube",
                    widest,
                    "pipes",
                    Measure.count(leaving.size())));
        }
        Map<String, Integer> valves = new TreeMap<>();
        leaving.forEach(tube -> valves.merge(tube, 1, Integer::sum));
        valves.forEach((tube, count) -> parts.add(part(Measure.count(count), "parts.shut-off", "tube", tube)));
    }

    /**
     * Ends of tube outside the fire, two a piece. Solder: a wire of 3 mm, as long for each end as the tube is wide; common practice,
     * no source.
     */
    private static void joints(CutList cuts, List<Part> parts) {
        double solderM = 0;
        int soldered = 0;
        int screwed = 0;
        for (Piece piece : cuts.pieces()) {
            Tube tube = TubeTable.require("tube", piece.tube());
            if (piece.mark().startsWith("F")) {
                continue;
            }
            if (tube.metal() == TubeMetal.COPPER) {
                soldered += 2;
                solderM += 2 * tube.outerM();
            } else {
                screwed += 2;
            }
        }
        if (soldered > 0) {
            parts.add(part(Measure.metres(solderM), "parts.solder", "ends", Measure.count(soldered)));
        }
        if (screwed > 0) {
            parts.add(part(Measure.count(1), "parts.thread-seal", "ends", Measure.count(screwed)));
        }
    }

    private static Part part(Measure amount, String code, Object... filling) {
        return PartsMaker.part(PIPE, amount, code, filling);
    }
}

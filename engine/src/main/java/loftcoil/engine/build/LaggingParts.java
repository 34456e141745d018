package loftcoil.engine.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loftcoil.engine.build.PartsList.Group;
import loftcoil.engine.build.PartsList.Part;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.LaggingChoice;
import loftcoil.engine.design.Leg;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.words.Measure;

/** Lagging of the legs by material, thickness and the tube it goes on. */
final class LaggingParts {

    /** Allowance for mitres and spoilt ends; common practice, no source. */
    private static final double ALLOWANCE = 1.1;

    private static final double MM_PER_M = 1000;

    private record Sort(String material, double thicknessMm, double tubeMm) {}

    private LaggingParts() {}

    static List<Part> of(Design design) {
        Map<Sort, List<Leg>> sorts = new LinkedHashMap<>();
        List<Leg> legs = new ArrayList<>(design.coldLegs());
        legs.addAll(design.hotLegs());
        for (Leg leg : legs) {
            leg.lagging().filter(choice -> choice.thicknessMm() > 0).ifPresent(choice -> sorts.computeIfAbsent(
                            sort(leg, choice), sort -> new ArrayList<>())
                    .add(leg));
        }
        List<Part> parts = new ArrayList<>();
        sorts.forEach((sort, on) -> parts.add(part(sort, on)));
        return parts;
    }

    private static Sort sort(Leg leg, LaggingChoice choice) {
        Tube tube = TubeTable.require("tube", leg.tube());
        return new Sort(choice.material(), choice.thicknessMm(), tube.outerM() * MM_PER_M);
    }

    private static Part part(Sort sort, List<Leg> legs) {
        double metres = legs.stream().mapToDouble(Leg::lengthM).sum();
        String names = String.join("', '", legs.stream().map(Leg::name).toList());
        return PartsMaker.part(
                Group.LAGGING,
                Measure.metres(ALLOWANCE * metres),
                "parts.pipe-lagging",
                "material",
                sort.material(),
                "thick",
                Measure.millimetres(sort.thicknessMm()),
                "tube",
                Measure.millimetres(sort.tubeMm()),
                "legs",
                names,
                "length",
                Measure.metres(metres));
    }
}

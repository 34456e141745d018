package loftcoil.engine.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;

/** The sizes a builder can buy instead of a tube: the same standard and type, one a diameter, the widest bore of each. */
final class TubeSizes {

    private TubeSizes() {}

    /** Sizes from small to large. */
    static List<Tube> like(String name) {
        Map<Double, Tube> byOuter = new LinkedHashMap<>();
        for (String other : TubeTable.names()) {
            if (kind(other).equals(kind(name))) {
                Tube tube = TubeTable.find(other).orElseThrow();
                byOuter.merge(tube.outerM(), tube, (one, two) -> one.boreM() >= two.boreM() ? one : two);
            }
        }
        List<Tube> sizes = new ArrayList<>(byOuter.values());
        sizes.sort(Comparator.comparingDouble(Tube::outerM));
        return sizes;
    }

    /** The next larger diameter; empty where there is none. */
    static Optional<Tube> nextLarger(String name) {
        double outerM = TubeTable.require("tube", name).outerM();
        return like(name).stream().filter(tube -> tube.outerM() > outerM).findFirst();
    }

    private static String kind(String name) {
        return name.substring(0, Math.max(0, name.lastIndexOf(' ')));
    }
}

package loftcoil.engine.design;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.supply.Branch;
import loftcoil.engine.supply.GravitySupply;
import loftcoil.engine.supply.Outlet;
import loftcoil.engine.supply.SupplyPipe;
import loftcoil.engine.supply.TapFlow;
import loftcoil.engine.supply.Tee;

/** Makes the supply of the taps of a design from a full tank. */
final class SupplyMaker {

    private static final String BRANCH = "tee-branch";

    private SupplyMaker() {}

    /** The way to one tap, no other tap on it. */
    static GravitySupply of(Design design, Tap tap, double waterC) {
        return design.onTrunk(tap)
                ? onTrunk(design, List.of(tap), waterC)
                : GravitySupply.single(design.tank().waterlineLevelM(), waterC, pipe(tap, tap.fittings()), outlet(tap));
    }

    /** One flow for each tap, all open. */
    static List<TapFlow> allOpen(Design design, double waterC) {
        Map<String, TapFlow> flows = new HashMap<>();
        List<Tap> sharing = design.taps().stream().filter(design::onTrunk).toList();
        if (!sharing.isEmpty()) {
            onTrunk(design, sharing, waterC)
                    .open(sharing.stream().map(Tap::name).collect(Collectors.toSet()))
                    .forEach(flow -> flows.put(flow.name(), flow));
        }
        return design.taps().stream()
                .map(tap -> flows.computeIfAbsent(
                        tap.name(), name -> of(design, tap, waterC).alone(name)))
                .toList();
    }

    private static GravitySupply onTrunk(Design design, List<Tap> taps, double waterC) {
        Trunk trunk = design.trunk().orElseThrow();
        SupplyPipe shared =
                SupplyPipe.of(TubeTable.require("trunk.tube", trunk.tube()), trunk.lengthM(), trunk.fittings());
        Tee end = new Tee(taps.stream()
                .map(tap -> new Branch(pipe(tap, offTheTrunk(tap.fittings())), outlet(tap)))
                .toList());
        return new GravitySupply(design.tank().waterlineLevelM(), waterC, new Branch(shared.fromTank(), end));
    }

    /** A pipe leaves the trunk through the branch of a tee, unless the design says that it goes straight on. */
    private static Map<String, Integer> offTheTrunk(Map<String, Integer> fittings) {
        if (fittings.containsKey(BRANCH) || fittings.containsKey("tee-run")) {
            return fittings;
        }
        Map<String, Integer> more = new TreeMap<>(fittings);
        more.put(BRANCH, 1);
        return more;
    }

    private static SupplyPipe pipe(Tap tap, Map<String, Integer> fittings) {
        return SupplyPipe.of(tube(tap), tap.lengthM(), fittings);
    }

    private static Outlet outlet(Tap tap) {
        return new Outlet(tap.name(), tap.levelM(), tap.lossK(tube(tap)));
    }

    private static Tube tube(Tap tap) {
        return TubeTable.require("taps.tube", tap.tube());
    }
}

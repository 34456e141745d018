package loftcoil.engine.loop;

import java.util.List;
import java.util.Optional;

/**
 * Everything a search of one circuit found.
 *
 * @param flows every flow, in both directions, at which drive and resistance balance and no water boils or freezes;
 *     from the fastest backward to the fastest forward
 * @param circulation the finding for the forward direction
 * @param staticDrivePa net forward push on water at rest when every leg has the temperature of its surroundings and
 *     the coil, if lit, that of its inlet, Pa
 */
public record FlowSearch(List<SteadyFlow> flows, Circulation circulation, double staticDrivePa) {

    /** Least flow that is told from rest, kg/s: a third of a litre an hour would be a thousand times this. */
    public static final double LEAST_KG_PER_S = 1e-7;

    /** Keeps a copy of the flows. */
    public FlowSearch {
        flows = List.copyOf(flows);
    }

    /** Whether a stable forward flow exists in which nothing boils. */
    public boolean circulates() {
        return circulation.circulates();
    }

    /** The stable forward flow; empty where there is none. */
    public Optional<SteadyFlow> forward() {
        return circulation.match(c -> Optional.of(c.flow()), b -> Optional.empty(), s -> Optional.empty());
    }

    /** The slowest stable backward flow; empty where there is none. */
    public Optional<SteadyFlow> backward() {
        return flows.stream()
                .filter(flow -> flow.flowKgPerS() < 0 && flow.stable())
                .reduce((faster, slower) -> slower);
    }

    /**
     * The flow an unlit loop settles into when it starts from rest with its legs at the temperature of their
     * surroundings: the first balance in the direction of the static drive. Empty where it stays at rest.
     */
    public Optional<SteadyFlow> fromRest() {
        if (staticDrivePa > 0) {
            return flows.stream()
                    .filter(flow -> flow.flowKgPerS() > 0 && flow.stable())
                    .findFirst();
        }
        return staticDrivePa < 0 ? backward() : Optional.empty();
    }

    /** Why there is no forward flow, in a word or two: {@code "boils"} or {@code "stands still"}; empty where there is one. */
    public String why() {
        return circulation.match(flows -> "", boils -> "boils", stands -> "stands still");
    }

    /** The finding in plain words. */
    public String words() {
        return circulation.words();
    }
}

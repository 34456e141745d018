package loftcoil.engine.design;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.supply.RatedFlow;

/**
 * A tap and the pipe to it.
 *
 * @param name what the builder calls it; no two taps alike
 * @param levelM level of its outlet above the floor, m; −10 to 15
 * @param tube name of its tube in the tube table
 * @param lengthM length of pipe from the tank, or from the end of the trunk, m; 0.01 to 200
 * @param fittings number of fittings by key
 * @param outletK loss coefficient of the open tap on the speed in the pipe; 0 to 1000
 * @param ratedLPerMin flow of the open tap at the rated pressure, L/min; 1 to 200; empty where outletK holds
 * @param ratedKPa pressure before the open tap at that flow, kPa; 1 to 1000; empty for {@link RatedFlow#CLASS_KPA}
 * @param mixerC hottest water the thermostatic mixing valve before it lets through, °C; 20 to 70; empty where there is none
 * @param mixerLPerMin flow through that valve at its rated loss, L/min; 1 to 200; empty for {@link RatedFlow#USUAL_MIXER}
 * @param mixerKPa pressure lost in that valve at that flow, kPa; 1 to 1000; empty for {@link RatedFlow#LOW_KPA}
 * @param onTrunk whether its pipe leaves the trunk and not the tank; empty for yes where the design has a trunk
 * @param appliance appliance that hangs on it, by its name in the table of inlets; empty where there is none
 */
public record Tap(
        String name,
        double levelM,
        String tube,
        double lengthM,
        Map<String, Integer> fittings,
        double outletK,
        OptionalDouble ratedLPerMin,
        OptionalDouble ratedKPa,
        OptionalDouble mixerC,
        OptionalDouble mixerLPerMin,
        OptionalDouble mixerKPa,
        Optional<Boolean> onTrunk,
        Optional<String> appliance) {

    /** Keeps a copy of the fittings in the order of their keys. */
    public Tap {
        fittings = Collections.unmodifiableMap(new TreeMap<>(fittings));
    }

    /** A tap of which nothing is said on its rated flow, its mixing valve and a trunk. */
    public Tap(String name, double levelM, String tube, double lengthM, Map<String, Integer> fittings, double outletK) {
        this(
                name,
                levelM,
                tube,
                lengthM,
                fittings,
                outletK,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** The rated flow of the open tap; empty where {@link #outletK} holds. */
    public Optional<RatedFlow> rated() {
        return ratedLPerMin.isPresent()
                ? Optional.of(new RatedFlow(ratedLPerMin.getAsDouble(), ratedKPa.orElse(RatedFlow.CLASS_KPA)))
                : Optional.empty();
    }

    /** The rated flow of the mixing valve, the usual one where nothing is said of it; empty where there is no valve. */
    public Optional<RatedFlow> mixer() {
        return mixerC.isPresent()
                ? Optional.of(new RatedFlow(
                        mixerLPerMin.orElse(RatedFlow.USUAL_MIXER.lPerMin()), mixerKPa.orElse(RatedFlow.LOW_KPA)))
                : Optional.empty();
    }

    /** Loss of the mixing valve and the open tap on the speed in the pipe, without the jet. */
    double lossK(Tube pipe) {
        double valve = mixer().map(rated -> rated.lossK(pipe)).orElse(0.0);
        return valve + rated().map(rated -> rated.lossK(pipe)).orElse(outletK);
    }

    /**
     * The same tap on a pipe of another tube. The tap keeps its own narrow ways, so what it takes at a given flow stays as it
     * was: as its loss counts on the speed in the pipe, outletK + 1 (the one is the jet) goes with the fourth power of the bore.
     */
    Tap onTube(String newTube) {
        double widened = boreM(newTube) / boreM(tube);
        double k = Double.isFinite(widened) ? (outletK + 1) * Math.pow(widened, 4) - 1 : outletK;
        double kept = Math.min(Math.max(k, 0), TapFields.MOST_OUTLET_K);
        return TapFields.TABLE.with(TapFields.TABLE.with(this, TapFields.TUBE, newTube), TapFields.OUTLET_K, kept);
    }

    private static double boreM(String tube) {
        return TubeTable.find(tube).map(Tube::boreM).orElse(Double.NaN);
    }
}

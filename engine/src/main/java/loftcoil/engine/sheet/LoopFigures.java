package loftcoil.engine.sheet;

import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.Circulation;
import loftcoil.engine.loop.FlowSearch;
import loftcoil.engine.loop.SteadyFlow;
import loftcoil.engine.words.Units;

/**
 * The loop's figures with the whole tank at one temperature, as the sheet shows them. Where no stable forward flow exists,
 * flow, drive and Reynolds number are 0 and there are no temperatures: {@link #flow} is empty.
 *
 * @param tankC temperature of the whole tank, °C
 * @param heatKW heat the water in the coil takes up, kW
 * @param circulation the finding
 * @param flow the stable forward flow; empty where there is none
 * @param coldFire the night flow
 */
public record LoopFigures(
        double tankC, double heatKW, Circulation circulation, Optional<SteadyFlow> flow, ColdFire coldFire)
        implements LitLoop {

    private static final double W_PER_KW = 1000;

    static LoopFigures of(Design design, Circuit circuit, FlowSearch lit) {
        double tankC = circuit.setting().tankC();
        ColdFire night = design.circuitFireOut(tankC)
                .search()
                .fromRest()
                .map(flow -> new ColdFire(flow.flowKgPerS(), -flow.heat().tankW()))
                .orElse(new ColdFire(0, 0));
        return new LoopFigures(
                tankC, circuit.setting().firing().heatW() / W_PER_KW, lit.circulation(), lit.forward(), night);
    }

    /** The finding in plain words, in metric units. */
    public String words() {
        return circulation.words();
    }

    /** The finding in plain words. */
    public String words(Units units) {
        return circulation.words(units);
    }
}

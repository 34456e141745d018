package loftcoil.engine.sheet;

import java.util.Optional;
import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.design.Design;
import loftcoil.engine.fire.LowMidHigh;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.FlowSearch;
import loftcoil.engine.loop.SteadyFlow;

/**
 * The loop with the least and with the most heat that the fire may give, where the heat is worked out from the fire.
 *
 * @param low with the least heat
 * @param high with the most heat
 */
public record HeatSpread(End low, End high) {

    /**
     * The loop at one end.
     *
     * @param heatKW heat the water takes up, kW
     * @param search what the search found
     */
    public record End(double heatKW, FlowSearch search) implements LitLoop {

        @Override
        public Optional<SteadyFlow> flow() {
            return search.forward();
        }
    }

    static Optional<HeatSpread> of(Design design, Circuit lit, FlowSearch search) {
        if (design.coil().heatKW().isPresent() || design.fire().isEmpty()) {
            return Optional.empty();
        }
        double tankC = lit.setting().tankC();
        LowMidHigh heat = search.forward()
                .map(flow -> design.coilHeatW(flow.flowKgPerS(), flow.coil().startC()))
                .orElseGet(() -> design.coilHeatW(CoilHeating.USUAL_FLOW_KG_PER_S, tankC));
        CoilHeating heating = design.coilHeating();
        return heat.mid() > 0
                ? Optional.of(new HeatSpread(
                        end(heating.times(heat.low() / heat.mid()).agreed(lit)),
                        end(heating.times(heat.high() / heat.mid()).agreed(lit))))
                : Optional.empty();
    }

    private static End end(CoilHeating.Agreed agreed) {
        return new End(agreed.heatW() / 1000, agreed.search());
    }
}

package loftcoil.engine.design;

import java.util.Optional;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.FlowSearch;
import loftcoil.engine.loop.SteadyFlow;

/** The heat that the water in the coil takes up while the fire burns, as far as it depends on the water. */
@FunctionalInterface
public interface CoilHeating {

    /** A usual flow, for what has to know the heat before the flow is found, kg/s; from the loops of the course, no source. */
    double USUAL_FLOW_KG_PER_S = 0.02;

    /**
     * Heat taken up.
     *
     * @param flowKgPerS mass flow through the coil, kg/s, more than 0
     * @param inletC temperature of the water at the coil's inlet, °C, 0 to 110
     * @return W, 0 or more
     */
    double heatW(double flowKgPerS, double inletC);

    /** The same heat whatever the water does: a coil whose heat was stated or measured. */
    static CoilHeating stated(double heatW) {
        return new Stated(heatW);
    }

    /** A heat whatever the water does, W. */
    record Stated(double heatW) implements CoilHeating {
        @Override
        public double heatW(double flowKgPerS, double inletC) {
            return heatW;
        }
    }

    /** A heat in a proportion of another. */
    record InProportion(CoilHeating of, double times) implements CoilHeating {
        @Override
        public double heatW(double flowKgPerS, double inletC) {
            return times * of.heatW(flowKgPerS, inletC);
        }
    }

    /** All heat in a proportion, such as the low estimate over the best. */
    default CoilHeating times(double times) {
        return new InProportion(this, times);
    }

    /**
     * Makes heat and flow agree: the heat sets the flow, and the flow has its part in the heat.
     *
     * @param lit the loop with the fire lit; its own heat does not matter
     */
    default Agreed agreed(Circuit lit) {
        double heatW = heatW(USUAL_FLOW_KG_PER_S, lit.setting().tankC());
        Circuit circuit = lit.withHeatW(heatW);
        FlowSearch search = circuit.search();
        for (int pass = 0; pass < Agreed.MOST_PASSES; pass++) {
            Optional<SteadyFlow> flow = search.forward();
            if (flow.isEmpty()) {
                break;
            }
            double next = heatW(flow.get().flowKgPerS(), flow.get().coil().startC());
            if (Math.abs(next - heatW) <= Agreed.SAME * heatW) {
                break;
            }
            heatW = next;
            circuit = lit.withHeatW(heatW);
            search = circuit.search();
        }
        return new Agreed(circuit, search, heatW);
    }

    /**
     * The forward flow of {@link #agreed}, with no other flow looked for; empty where nothing flows forward.
     *
     * @param lit the loop with the fire lit; its own heat does not matter
     */
    default Optional<AgreedFlow> agreedForward(Circuit lit) {
        double heatW = heatW(USUAL_FLOW_KG_PER_S, lit.setting().tankC());
        Optional<SteadyFlow> flow = lit.withHeatW(heatW).forward();
        for (int pass = 0; pass < Agreed.MOST_PASSES && flow.isPresent(); pass++) {
            double next = heatW(flow.get().flowKgPerS(), flow.get().coil().startC());
            if (Math.abs(next - heatW) <= Agreed.SAME * heatW) {
                break;
            }
            heatW = next;
            flow = lit.withHeatW(heatW).forward();
        }
        double agreedW = heatW;
        return flow.map(found -> new AgreedFlow(found, agreedW));
    }

    /**
     * A forward flow and the heat that fits it.
     *
     * @param flow the flow
     * @param heatW heat, W
     */
    record AgreedFlow(SteadyFlow flow, double heatW) {}

    /**
     * A loop whose heat fits its flow.
     *
     * @param circuit the loop with that heat
     * @param search what was found in it; where nothing flows, the heat is that of a usual flow
     * @param heatW heat, W
     */
    record Agreed(Circuit circuit, FlowSearch search, double heatW) {

        /** Heat depends so little on flow that each pass takes off nine tenths of what is left. */
        private static final int MOST_PASSES = 12;

        private static final double SAME = 1e-5;
    }
}

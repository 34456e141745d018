package loftcoil.engine.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.loop.FlowSearch;
import loftcoil.engine.loop.LegEnds;
import loftcoil.engine.loop.SteadyFlow;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.water.Water;

/**
 * How warm the water of each pipe is and how fast it goes, for a drawing.
 *
 * @param tankC temperature of the whole tank, °C
 * @param flowLPerMin flow, L/min; less than 0 where it goes backward, 0 where it stands
 * @param pipes cold legs, coil and hot legs in the forward order, as in {@link Drawing#pipes}
 */
public record Currents(double tankC, double flowLPerMin, List<Current> pipes) {

    /** Keeps a copy of the pipes. */
    public Currents {
        pipes = List.copyOf(pipes);
    }

    /**
     * The water in one pipe.
     *
     * @param startC at the end nearer the tank's cold port along the loop, °C, whichever way the water flows
     * @param endC at the end nearer the return port, °C
     * @param speedMPerS mean speed, m/s; less than 0 where it goes backward
     */
    public record Current(double startC, double endC, double speedMPerS) {

        /** Middle of the temperatures at its ends, °C. */
        public double meanC() {
            return (startC + endC) / 2;
        }
    }

    /**
     * With the fire lit: the forward flow, or where there is none, the flow that comes about from rest. Where nothing flows steadily the
     * water stands, as warm as the tank.
     *
     * @param design the design
     * @param tankC temperature of the whole tank, °C; 0 to its boiling point
     * @throws loftcoil.engine.fault.RefusedException where the design or the temperature cannot be computed
     */
    public static Currents of(Design design, double tankC) {
        FlowSearch lit = design.circuit(tankC).search();
        List<String> tubes = new ArrayList<>();
        design.coldLegs().stream().map(Leg::tube).forEach(tubes::add);
        tubes.add(design.coil().tube());
        design.hotLegs().stream().map(Leg::tube).forEach(tubes::add);
        Optional<SteadyFlow> flow = lit.forward().or(lit::fromRest);
        return flow.map(found -> flowing(found, tubes, tankC)).orElseGet(() -> still(tubes.size(), tankC));
    }

    private static Currents flowing(SteadyFlow flow, List<String> tubes, double tankC) {
        List<Current> pipes = new ArrayList<>();
        for (int i = 0; i < tubes.size(); i++) {
            LegEnds ends = flow.legs().get(i);
            double boreM = TubeTable.require("tube", tubes.get(i)).boreM();
            double densityKgPerM3 = Water.densityKgPerM3((ends.startC() + ends.endC()) / 2);
            double speed = flow.flowKgPerS() / densityKgPerM3 / (Math.PI * boreM * boreM / 4);
            pipes.add(new Current(ends.startC(), ends.endC(), speed));
        }
        return new Currents(tankC, flow.flowLPerMin(), pipes);
    }

    private static Currents still(int count, double tankC) {
        List<Current> pipes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            pipes.add(new Current(tankC, tankC, 0));
        }
        return new Currents(tankC, 0, pipes);
    }
}

package loftcoil.engine.run;

import java.util.Optional;
import loftcoil.engine.constant.Constants;
import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.LoopHeights;
import loftcoil.engine.loop.Pipe;
import loftcoil.engine.loop.SteadyFlow;
import loftcoil.engine.water.Water;

/**
 * What the loop does on a tank in layers, searched once at the nodes of a grid so that a march can ask every minute: lit, and
 * with the fire out in either direction. It is the search of the room {@code loop} itself at every node; between the nodes
 * cubics, whose distance from the search a test measures: flow within 1 %, legs' loss within 0.5 % of the fire's heat.
 *
 * <p>The flow is taken as steady at every minute: heat stored in copper and in the legs' own water is left out, and so are
 * the minutes in which a fire just lit or just out changes the flow. Immutable.
 */
final class LoopTable {

    private static final double FORMULA_C = Water.TEMPERATURE.high();
    private static final double ANY_C = 40;
    private static final double HEAVIEST_C = 4;
    /** More than two steps of the grid. */
    private static final double BEYOND_KG_PER_M3 = 8;

    private final LoopGrid lit;
    private final LoopGrid outForward;
    private final LoopGrid outBackward;
    private final double boilingHeatW;
    private final double legsPa;
    private final double risesM;
    private final double portsApartM;

    private LoopTable(LoopGrid lit, LoopGrid outForward, LoopGrid outBackward, double boilingHeatW, Circuit out) {
        this.boilingHeatW = boilingHeatW;
        this.lit = lit;
        this.outForward = outForward;
        this.outBackward = outBackward;
        LoopHeights heights = out.plan().heights();
        portsApartM = heights.returnPortM() - heights.coldPortM();
        risesM = out.plan().forward().stream().mapToDouble(Pipe::riseM).sum();
        // The push at rest on a uniform tank is that of its column over the rises less the weight of the legs.
        double density = Water.densityKgPerM3(ANY_C);
        legsPa = out.onLayers(ANY_C, density).staticDrivePa() - Constants.GRAVITY_M_PER_S2 * density * risesM;
    }

    /**
     * Searches the loop.
     *
     * @param lit the loop with the fire lit
     * @param out the loop with the fire out
     * @param heating heat of the lit coil
     * @param boilC temperature at which the tank's water boils, °C
     */
    static LoopTable of(Circuit lit, Circuit out, CoilHeating heating, double boilC) {
        return of(lit, out, heating, boilC, LoopAxes.Mesh.USUAL);
    }

    /** The same on another mesh. */
    static LoopTable of(Circuit lit, Circuit out, CoilHeating heating, double boilC, LoopAxes.Mesh mesh) {
        LoopAxes forward = LoopAxes.forward(boilC, mesh);
        LoopAxes backward = LoopAxes.backward(boilC, mesh);
        return new LoopTable(
                LoopGrid.of(forward, near(boilC, (tempC, excess) -> lit(layered(lit, tempC, excess), heating))),
                LoopGrid.of(forward, near(boilC, (tempC, excess) -> out(layered(out, tempC, excess), true))),
                LoopGrid.of(backward, near(boilC, (tempC, excess) -> out(layered(out, tempC, excess), false))),
                heating.heatW(CoilHeating.USUAL_FLOW_KG_PER_S, boilC),
                out);
    }

    /** Leaves out columns so far lighter than boiling or heavier than cold water that no look comes near them. */
    private static LoopGrid.Node near(double boilC, LoopGrid.Node node) {
        double lightest = Water.densityKgPerM3(boilC) - BEYOND_KG_PER_M3;
        double heaviest = Water.densityKgPerM3(HEAVIEST_C) + BEYOND_KG_PER_M3;
        return (tempC, excess) -> {
            double column = Water.densityKgPerM3(tempC) + excess;
            return column < lightest || column > heaviest ? Optional.empty() : node.at(tempC, excess);
        };
    }

    /** The lit loop: read with the cold port's temperature and the column's excess over it. */
    LoopGrid lit() {
        return lit;
    }

    /** Heat of a coil whose water boils, for a loop that flows nowhere on the grid, W. */
    double boilingHeatW() {
        return boilingHeatW;
    }

    /** The loop with the fire out, forward. */
    LoopGrid outForward() {
        return outForward;
    }

    /** The loop with the fire out, backward: read with the return port's temperature and the column's excess over it. */
    LoopGrid outBackward() {
        return outBackward;
    }

    /**
     * Push at rest with the fire out, Pa, forward positive.
     *
     * @param enteringKgPerM3 density of the water at the port it would leave by
     * @param columnKgPerM3 mean density of the tank's column between the ports
     */
    double staticDrivePa(double enteringKgPerM3, double columnKgPerM3) {
        // As in the search, rises that miss the ports by a few millimetres must not pass for a push.
        return legsPa
                + Constants.GRAVITY_M_PER_S2
                        * (enteringKgPerM3 * risesM + (columnKgPerM3 - enteringKgPerM3) * portsApartM);
    }

    /** The lit loop at one place, with heat and flow made to agree. */
    static Optional<LoopPoint> lit(Circuit circuit, CoilHeating heating) {
        return heating.agreedForward(circuit).map(agreed -> point(agreed.flow(), agreed.heatW()));
    }

    /** The loop with the fire out at one place. */
    static Optional<LoopPoint> out(Circuit circuit, boolean forward) {
        double push = circuit.staticDrivePa();
        return (forward ? push > 0 : push < 0) ? circuit.fromRest().map(flow -> point(flow, 0)) : Optional.empty();
    }

    private static LoopPoint point(SteadyFlow flow, double heatW) {
        double hottestC = Math.max(flow.coil().endC(), flow.returnC());
        double boilMarginK = Math.min(flow.boilMargin().marginK(), FORMULA_C - hottestC);
        return new LoopPoint(Math.abs(flow.flowKgPerS()), flow.heat().lostW(), boilMarginK, heatW);
    }

    private static Circuit layered(Circuit circuit, double enteringC, double excessKgPerM3) {
        return circuit.onLayers(enteringC, Water.densityKgPerM3(enteringC) + excessKgPerM3);
    }
}

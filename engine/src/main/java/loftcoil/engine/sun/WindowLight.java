package loftcoil.engine.sun;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * Panes with a dark surface behind them: the transmittance-absorptance product of Duffie and Beckman, equation 5.5.1. What
 * the surface throws back leaves it in all directions and meets the panes from inside as diffuse light. The surface is as
 * dark at a slant as square on; a real paint is a few per cent lighter beyond 60 degrees.
 */
public final class WindowLight {

    private static final Allowed ABSORPTANCE = new Allowed(0, 1, "");

    private final PaneStack panes;
    private final double absorptance;
    private final Passage fromInside;

    /**
     * Prepares the window.
     *
     * @param panes the panes
     * @param absorptance share of sunlight the surface behind takes up, 0 to 1
     * @throws RefusedException where the absorptance is outside its range or not a number
     */
    public WindowLight(PaneStack panes, double absorptance) {
        this.panes = panes;
        this.absorptance = ABSORPTANCE.require("absorptance", absorptance);
        this.fromInside = panes.diffuseFromInside();
    }

    /**
     * Where a beam goes.
     *
     * @param incidenceDeg angle from the normal in degrees, 0 to 90
     * @throws RefusedException where the angle is outside its range or not a number
     */
    public LightShares at(double incidenceDeg) {
        Passage beam = panes.at(incidenceDeg);
        double meetsTank = beam.transmitted() / (1 - (1 - absorptance) * fromInside.reflected());
        double sentUp = (1 - absorptance) * meetsTank;
        List<Double> kept = new ArrayList<>(panes.panes());
        for (int pane = 0; pane < panes.panes(); pane++) {
            int seenFromInside = panes.panes() - 1 - pane;
            kept.add(beam.absorbed().get(pane) + sentUp * fromInside.absorbed().get(seenFromInside));
        }
        return new LightShares(absorptance * meetsTank, kept, beam.reflected() + sentUp * fromInside.transmitted());
    }
}

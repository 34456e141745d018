package loftcoil.engine.sun;

import java.util.List;

/**
 * Where the light that meets a window before a tank goes; the shares add up to 1.
 *
 * @param tank share taken up by the tank, which is the transmittance-absorptance product
 * @param panes share kept by each pane, outermost first
 * @param thrownBack share that goes back out
 */
public record LightShares(double tank, List<Double> panes, double thrownBack) {

    /** Copies the list. */
    public LightShares {
        panes = List.copyOf(panes);
    }
}

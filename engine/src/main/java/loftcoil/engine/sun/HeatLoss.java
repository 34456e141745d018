package loftcoil.engine.sun;

import java.util.List;

/**
 * What a warm tank loses through the window once the panes have settled.
 *
 * @param wPerM2 heat that leaves the tank's face, W/m²; negative where the outside warms the tank
 * @param paneC temperature of each pane in °C, outermost first
 */
public record HeatLoss(double wPerM2, List<Double> paneC) {

    /** Copies the list. */
    public HeatLoss {
        paneC = List.copyOf(paneC);
    }
}

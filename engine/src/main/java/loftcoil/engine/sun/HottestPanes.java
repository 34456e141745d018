package loftcoil.engine.sun;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.RefusedException;

/**
 * How hot the middle of each pane gets before a hot tank in cold air, the sun on it or not, and which of them plain glass does not
 * stand. The edge sits in the frame and is taken as cold as the air: that is the bound, since no salvaged edge is known to be
 * good and part of a pane may lie in shadow. Plain, laminated and coated glass cracks from {@value #PLAIN_STANDS_K} K between middle
 * and edge, toughened from {@value #TOUGHENED_STANDS_K} (glass makers' guidance; EN 572-1 and EN 12150-1, from memory).
 *
 * @param airC air outside, °C
 * @param middleC middle of each pane at its hottest, °C; outermost first
 */
public record HottestPanes(double airC, List<Double> middleC) {

    /** What plain glass stands between middle and edge, K. */
    public static final double PLAIN_STANDS_K = 40;

    /** What toughened glass stands, K. */
    static final double TOUGHENED_STANDS_K = 200;

    /** Full sun square on, W/m²; common practice, no source. */
    private static final double FULL_SUN_W_PER_M2 = 1000;

    /** Copies the list. */
    public HottestPanes {
        middleC = List.copyOf(middleC);
    }

    /**
     * The panes of a window with the shutter open.
     *
     * @param window the window
     * @param pressurePa pressure of the air in Pa
     * @param tankC the tank's face in °C, 0 to 110
     * @param airC outside air in °C, -60 to 60
     * @throws RefusedException where a temperature is outside its range or not a number
     */
    public static HottestPanes of(Glazing window, double pressurePa, double tankC, double airC) {
        WindowLoss loss = new WindowLoss(window, pressurePa);
        List<Double> dark = loss.open(tankC, airC).paneC();
        List<Double> kept = new WindowLight(window.panes(), window.face().absorptance())
                .at(0).panes().stream().map(share -> share * FULL_SUN_W_PER_M2).toList();
        List<Double> sunny = loss.inSun(tankC, airC, kept).paneC();
        List<Double> hottest = new ArrayList<>();
        for (int pane = 0; pane < dark.size(); pane++) {
            hottest.add(Math.max(dark.get(pane), sunny.get(pane)));
        }
        return new HottestPanes(airC, hottest);
    }

    /** The pane next to the tank, °C. */
    public double innermostC() {
        return middleC.get(middleC.size() - 1);
    }

    /** How many panes, counted from the tank, have to be toughened: every one up to the last that plain glass does not stand. */
    public int toughened() {
        for (int pane = 0; pane < middleC.size(); pane++) {
            if (middleC.get(pane) - airC > PLAIN_STANDS_K) {
                return middleC.size() - pane;
            }
        }
        return 0;
    }
}

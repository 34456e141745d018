package loftcoil.engine.sun;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * Heat from the tank's face through air gap, panes and shutter to air, sky and ground: Duffie and Beckman, section 6.4. Each
 * gap carries heat by {@link AirGap} and by radiation between grey plates, the outermost face by wind and by radiation to
 * the sky it sees and, for the rest of its view, to ground at air temperature. Each pane has one temperature: the glass
 * itself, a sixtieth of a gap's resistance, is left out, and so are edges and frame. The wind film is the largest doubt.
 */
public final class WindowLoss {

    /** Temperatures of the tank's face accepted. */
    public static final Allowed SURFACE = new Allowed(0, 110, "°C");

    /** Outside air accepted. */
    public static final Allowed AIR = new Allowed(-60, 60, "°C");

    private static final double USUAL_SURFACE_C = 50;
    private static final double USUAL_AIR_C = 10;

    private final Glazing window;
    private final PaneNetwork open;
    private final PaneNetwork shut;

    /**
     * Prepares a window.
     *
     * @param window the window
     * @param pressurePa pressure of the air between the panes in Pa
     * @throws RefusedException where the pressure is outside its range or not a number
     */
    public WindowLoss(Glazing window, double pressurePa) {
        this.window = window;
        this.open = new PaneNetwork(window, pressurePa, 0);
        double board = window.shutter().resistanceM2KPerW();
        this.shut = board > 0 ? new PaneNetwork(window, pressurePa, board) : open;
    }

    /**
     * The loss in the dark, no shutter before the panes.
     *
     * @param surfaceC temperature of the tank's face in °C, 0 to 110
     * @param airC outside air in °C, -60 to 60
     * @throws RefusedException where either is outside its range or not a number
     */
    public HeatLoss open(double surfaceC, double airC) {
        return settled(open, surfaceC, airC);
    }

    /**
     * The loss with the shutter closed; the same as open where there is none.
     *
     * @param surfaceC temperature of the tank's face in °C, 0 to 110
     * @param airC outside air in °C, -60 to 60
     * @throws RefusedException where either is outside its range or not a number
     */
    public HeatLoss shut(double surfaceC, double airC) {
        return settled(shut, surfaceC, airC);
    }

    /**
     * The loss while the panes themselves take up sun.
     *
     * @param surfaceC temperature of the tank's face in °C
     * @param airC outside air in °C
     * @param sunInPanes what each pane takes up, outermost first, in W/m²
     */
    HeatLoss inSun(double surfaceC, double airC, List<Double> sunInPanes) {
        int panes = window.panes().panes();
        double[] sun = new double[panes + 1];
        for (int pane = 0; pane < panes; pane++) {
            sun[panes - pane] = sunInPanes.get(pane);
        }
        return result(open.settle(surfaceC, airC, sun));
    }

    /**
     * Share of the sun a pane takes up that spares the tank a loss, outermost pane first: the resistance from that pane to
     * the outside over that from the tank, at a usual temperature.
     */
    double[] inwardShares() {
        PaneNetwork.State state = open.settle(USUAL_SURFACE_C, USUAL_AIR_C, open.noSun());
        int panes = window.panes().panes();
        double[] shares = new double[panes];
        for (int pane = 0; pane < panes; pane++) {
            shares[pane] = state.outward(panes - pane) / state.outward(0);
        }
        return shares;
    }

    private HeatLoss settled(PaneNetwork network, double surfaceC, double airC) {
        SURFACE.require("surfaceC", surfaceC);
        AIR.require("airC", airC);
        return result(network.settle(surfaceC, airC, network.noSun()));
    }

    private HeatLoss result(PaneNetwork.State state) {
        List<Double> outermostFirst = new ArrayList<>();
        for (int node = window.panes().panes(); node >= 1; node--) {
            outermostFirst.add(state.tempC(node));
        }
        return new HeatLoss(state.lossWPerM2(), outermostFirst);
    }
}

package loftcoil.engine.sun;

import loftcoil.engine.heat.GreyRadiation;

/**
 * Tank, panes and shutter as a chain of nodes, settled by turns: conductances from the last temperatures, temperatures from
 * the conductances. Node 0 is the tank's face, then the panes from inside out, then the shutter's outer face.
 */
final class PaneNetwork {

    private static final int MOST_ROUNDS = 500;
    private static final double SETTLED_K = 1e-9;
    private static final double BOARD_EMISSIVITY = 0.9;

    private final Glazing window;
    private final AirGap tankGap;
    private final AirGap paneGap;
    private final double boardM2KPerW;
    private final double tankEmissivity;
    private final double paneEmissivity;
    private final double coatedEmissivity;
    private final double outerEmissivity;
    private final int last;

    PaneNetwork(Glazing window, double pressurePa, double boardM2KPerW) {
        double tilt = window.facing().tiltDeg();
        double glass = window.panes().glass().emissivity();
        this.window = window;
        this.tankGap = new AirGap(window.face().gapM(), tilt, pressurePa);
        this.paneGap = new AirGap(window.paneGapM(), tilt, pressurePa);
        this.boardM2KPerW = boardM2KPerW;
        this.tankEmissivity = betweenPlates(window.face().emissivity(), glass);
        this.paneEmissivity = betweenPlates(glass, glass);
        this.coatedEmissivity = betweenPlates(window.panes().effectiveCoat().emissivity(glass), glass);
        this.outerEmissivity = boardM2KPerW > 0 ? BOARD_EMISSIVITY : glass;
        this.last = window.panes().panes() + (boardM2KPerW > 0 ? 1 : 0);
    }

    /** A sun array of this chain's length without sun. */
    double[] noSun() {
        return new double[last + 1];
    }

    /**
     * Lets the chain settle.
     *
     * @param surfaceC the tank's face
     * @param airC outside air
     * @param sunWPerM2 what each node takes up from the sun; that of node 0 is left out
     * @throws IllegalStateException where the chain does not settle, which no accepted window has been found to do
     */
    State settle(double surfaceC, double airC, double[] sunWPerM2) {
        State state = new State(last, surfaceC, airC);
        double change = Double.POSITIVE_INFINITY;
        double pace = 1;
        for (int round = 0; round < MOST_ROUNDS && change > SETTLED_K; round++) {
            conductances(state, airC);
            double before = change;
            change = state.move(sunWPerM2, pace);
            // The onset of convection in a gap can make the turns swing; half steps end that.
            pace = change > 0.7 * before ? 0.5 : pace;
        }
        if (!(change <= SETTLED_K)) {
            throw new IllegalStateException("panes not settled at surface " + surfaceC + " °C, air " + airC + " °C");
        }
        return state;
    }

    private void conductances(State state, double airC) {
        int panes = window.panes().panes();
        for (int node = 0; node < last; node++) {
            double inner = state.tempC(node);
            double outer = state.tempC(node + 1);
            if (node == panes) {
                state.between[node] = 1 / boardM2KPerW;
            } else {
                AirGap gap = node == 0 ? tankGap : paneGap;
                state.between[node] =
                        gap.convectionWPerM2K(inner, outer) + GreyRadiation.filmWPerM2K(inner, outer, emissivity(node));
            }
        }
        Surroundings around = window.surroundings();
        double face = state.tempC(last);
        double skyC = airC - around.skyBelowAirK();
        double skyShare = window.facing().skyShare();
        double sky = skyShare * GreyRadiation.filmWPerM2K(face, skyC, outerEmissivity);
        double ground = (1 - skyShare) * GreyRadiation.filmWPerM2K(face, airC, outerEmissivity);
        state.between[last] = around.windFilmWPerM2K() + sky + ground;
        state.outsideC = airC - sky * around.skyBelowAirK() / state.between[last];
    }

    /** Of the gap before a node: the coat lies in the one before the innermost pane. */
    private double emissivity(int node) {
        return switch (node) {
            case 0 -> tankEmissivity;
            case 1 -> coatedEmissivity;
            default -> paneEmissivity;
        };
    }

    private static double betweenPlates(double one, double other) {
        return 1 / (1 / one + 1 / other - 1);
    }

    /** Temperatures of the nodes and conductances between each and the next; the last leads outside. */
    static final class State {

        private final double[] tempC;
        private final double[] between;
        private double outsideC;
        private double lossWPerM2;

        private State(int last, double surfaceC, double airC) {
            tempC = new double[last + 1];
            between = new double[last + 1];
            for (int node = 0; node <= last; node++) {
                tempC[node] = surfaceC + (airC - surfaceC) * node / (last + 1);
            }
        }

        double tempC(int node) {
            return tempC[node];
        }

        double lossWPerM2() {
            return lossWPerM2;
        }

        /** Resistance from a node to the outside, m² K/W. */
        double outward(int node) {
            double resistance = 0;
            for (int i = node; i < between.length; i++) {
                resistance += 1 / between[i];
            }
            return resistance;
        }

        /** Moves each temperature towards what the conductances ask for; returns the largest way still to go in K. */
        private double move(double[] sunWPerM2, double pace) {
            double drive = tempC[0] - outsideC;
            for (int node = 1; node < tempC.length; node++) {
                drive -= sunWPerM2[node] * outward(node);
            }
            lossWPerM2 = drive / outward(0);
            double flow = lossWPerM2;
            double wanted = tempC[0];
            double change = 0;
            for (int node = 1; node < tempC.length; node++) {
                wanted -= flow / between[node - 1];
                flow += sunWPerM2[node];
                change = Math.max(change, Math.abs(wanted - tempC[node]));
                tempC[node] += pace * (wanted - tempC[node]);
            }
            return change;
        }
    }
}

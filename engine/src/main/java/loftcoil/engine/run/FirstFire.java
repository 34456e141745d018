package loftcoil.engine.run;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.loop.WarmingLoop;
import loftcoil.engine.tank.LayerPlan;
import loftcoil.engine.tank.Layers;
import loftcoil.engine.tank.TankSurroundings;
import loftcoil.engine.tank.WaterHeat;

/**
 * The first hour of a cold system: tank, loop and copper all as cold as the supply, water at rest, and from minute 0 a fire that burns
 * as the design says. Nobody draws, no sun shines.
 *
 * <p>Loop: {@link WarmingLoop}. Tank: {@link Layers}, twice as fine as a year's. The heat of the coil follows flow and inlet as in the
 * year. Left out, so that a real hour comes later: the kindling itself (a fire needs ten to twenty minutes to come to its rate), the
 * heater's own mass, the heat that cold lagging takes up, and what the panes lose.
 *
 * @param moments what was seen, every ten seconds from minute 0
 * @param energy where the heat went
 */
public record FirstFire(List<Moment> moments, HourBook energy) {

    private static final int LAYERS = 24;
    private static final int EVERY_S = 10;
    private static final int MINUTE_S = 60;
    private static final double HOUR_S = 3600;
    private static final Allowed TIMES = new Allowed(0.05, 20, "");

    /** Keeps a copy of the moments. */
    public FirstFire {
        moments = List.copyOf(moments);
    }

    /**
     * The system at a moment.
     *
     * @param minute minutes since the fire burns
     * @param flowKgPerS flow of the loop, forward positive
     * @param coilOutC at the coil's outlet, °C
     * @param returnC at the tank's return port, end of the hot legs, °C
     * @param coilInC at the coil's inlet, end of the cold legs, °C
     * @param layersC temperatures of the tank's layers from the base up, °C
     */
    public record Moment(
            double minute, double flowKgPerS, double coilOutC, double returnC, double coilInC, List<Double> layersC) {

        /** Keeps a copy of the layers. */
        public Moment {
            layersC = List.copyOf(layersC);
        }

        /** Flow, taking a litre as a kilogram, L/min. */
        public double flowLPerMin() {
            return flowKgPerS * MINUTE_S;
        }

        /** Top of the tank, °C. */
        public double topC() {
            return layersC.get(layersC.size() - 1);
        }

        /** Middle of the water in the tank, °C. */
        public double middleC() {
            return layersC.get(layersC.size() / 2);
        }

        /** Bottom of the tank, °C. */
        public double bottomC() {
            return layersC.get(0);
        }
    }

    /**
     * Where the heat of the hour went, J: coil = loop + tank + lost by legs + lost by tank + steam.
     *
     * @param coilJ heat the coil took up
     * @param loopJ held more by water and copper of the loop
     * @param tankJ held more by the tank's water
     * @param legsLostJ lost by the legs; negative where the flue warmed them
     * @param tankLostJ lost by the tank
     * @param steamJ left as steam, in loop or tank
     */
    public record HourBook(
            double coilJ, double loopJ, double tankJ, double legsLostJ, double tankLostJ, double steamJ) {

        /** What the account misses to close, J: rounding. */
        public double gapJ() {
            return coilJ - loopJ - tankJ - legsLostJ - tankLostJ - steamJ;
        }
    }

    /**
     * The hour with the heat as best known.
     *
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed
     */
    public static FirstFire of(Design design) {
        return of(design, 1);
    }

    /**
     * The hour with all heat of the coil in a proportion, such as the low estimate over the best.
     *
     * @param design a design
     * @param heatTimes factor on the heat, 0.05 to 20
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed or the factor is out of range
     */
    public static FirstFire of(Design design, double heatTimes) {
        TIMES.require("heatTimes", heatTimes);
        return new Hour(design, Heatings.of(design).times(heatTimes)).run();
    }

    /** Minutes at which it was seen, for plotting. */
    public double[] minutes() {
        return moments.stream().mapToDouble(Moment::minute).toArray();
    }

    /** Flow at each of {@link #minutes}, L/min. */
    public double[] flowLPerMin() {
        return moments.stream().mapToDouble(Moment::flowLPerMin).toArray();
    }

    /** Coil outlet at each of {@link #minutes}, °C. */
    public double[] coilOutC() {
        return moments.stream().mapToDouble(Moment::coilOutC).toArray();
    }

    /** Return port at each of {@link #minutes}, °C. */
    public double[] returnC() {
        return moments.stream().mapToDouble(Moment::returnC).toArray();
    }

    /** Coil inlet at each of {@link #minutes}, °C. */
    public double[] coilInC() {
        return moments.stream().mapToDouble(Moment::coilInC).toArray();
    }

    /** Top of the tank at each of {@link #minutes}, °C. */
    public double[] topC() {
        return moments.stream().mapToDouble(Moment::topC).toArray();
    }

    /** Middle of the tank at each of {@link #minutes}, °C. */
    public double[] middleC() {
        return moments.stream().mapToDouble(Moment::middleC).toArray();
    }

    /** Bottom of the tank at each of {@link #minutes}, °C. */
    public double[] bottomC() {
        return moments.stream().mapToDouble(Moment::bottomC).toArray();
    }

    /** The moment nearest to a minute, 0 to 60. */
    public Moment at(double minute) {
        double within = new Allowed(0, HOUR_S / MINUTE_S, "min").require("minute", minute);
        return moments.get((int) Math.rint(within * MINUTE_S / EVERY_S));
    }

    /** One hour being marched. */
    private static final class Hour {
        private final Design design;
        private final StandingLosses losses;
        private final CoilHeating heating;
        private final WarmingLoop loop;
        private final Layers tank;
        private final TankColumn column;
        private final TankSurroundings around;
        private final double startLoopJ;
        private final double startTankJ;
        private final double boilJPerKg;
        private double flashedJ;

        Hour(Design design, CoilHeating heating) {
            this.heating = heating;
            this.design = design;
            LayerPlan layers = SystemPlan.layerPlan(design, Pace.USUAL.withLayers(LAYERS));
            this.losses = SystemPlan.standingLosses(design, layers);
            this.loop = design.circuit(layers.startC()).warming();
            this.tank = new Layers(layers);
            this.column = new TankColumn(layers);
            this.around = new TankSurroundings(layers.layers());
            this.startLoopJ = loop.heldJ();
            this.startTankJ = tank.energyJ();
            this.boilJPerKg = WaterHeat.jPerKg(layers.boilC());
        }

        FirstFire run() {
            List<Moment> moments = new ArrayList<>();
            moments.add(moment(0));
            for (int second = EVERY_S; second <= HOUR_S; second += EVERY_S) {
                stretch();
                if (second % MINUTE_S == 0) {
                    around.loss(losses.at(tank.meanC()), design.tank().aroundC());
                    tank.rest(MINUTE_S, around);
                }
                moments.add(moment((double) second / MINUTE_S));
            }
            return new FirstFire(
                    moments,
                    new HourBook(
                            loop.coilJ(),
                            loop.heldJ() - startLoopJ,
                            tank.energyJ() - startTankJ,
                            loop.lostJ(),
                            tank.ledger().lossJ() - tank.ledger().iceJ(),
                            loop.steamJ() + flashedJ + tank.ledger().steamJ()));
        }

        private void stretch() {
            double left = EVERY_S;
            while (left > 1e-9) {
                double step = Math.min(left, loop.longestStepS());
                step(step);
                left -= step;
            }
        }

        private void step(double seconds) {
            double flow = loop.push(seconds, column.densityKgPerM3(tank));
            if (!tank.loopCovered()) {
                loop.stop();
                flow = 0;
            }
            double entering = loop.leavingJPerKg();
            double mass = flow * seconds;
            if (mass != 0) {
                entering = exchanged(mass, entering);
            }
            double inletC = Math.min(110, Math.max(0, flow >= 0 ? loop.coilInC() : loop.coilOutC()));
            loop.carry(seconds, heating.heatW(Math.max(1e-4, Math.abs(flow)), inletC), entering);
        }

        /** Gives water to the tank and takes as much. @return heat of what was taken, J/kg */
        private double exchanged(double mass, double givenJPerKg) {
            double held = Math.max(0, Math.min(boilJPerKg, givenJPerKg));
            flashedJ += Math.abs(mass) * (givenJPerKg - held);
            double before = tank.ledger().loopJ();
            tank.circulate(mass, WaterHeat.tempC(held));
            return held - (tank.ledger().loopJ() - before) / Math.abs(mass);
        }

        private Moment moment(double minute) {
            List<Double> layers = new ArrayList<>();
            for (int i = 0; i < tank.wet(); i++) {
                layers.add(tank.tempC(i));
            }
            return new Moment(minute, loop.flowKgPerS(), loop.coilOutC(), loop.returnC(), loop.coilInC(), layers);
        }
    }
}

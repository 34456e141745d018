package loftcoil.engine.loop;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.tank.WaterHeat;

/**
 * The loop through time, from cold: water and metal of every tenth of a metre warmed, pushed round and cooled in small steps. Where
 * {@link Circuit#search} gives the flow that a loop settles to, this shows the way there.
 *
 * <p>Model: one-dimensional; in each cell water and metal have one temperature, the metal counted as the mass of water that holds as
 * much heat; water is carried from cell to cell in the direction of flow (first order upwind, which smears a front over a few cells, as
 * a real pipe does); friction and heat loss are those of the steady search at the temperatures of the moment; the water's own inertia
 * is counted. The lit coil takes up its heat evenly along its length; with the fire out it is a bare tube that loses heat as a leg
 * does. Water that would pass its boiling point stays at it and the rest
 * of the heat is booked as steam: the push of the bubbles is left out, so nothing after the first boiling is to be believed. Left out:
 * heat held by lagging and walls, heat led along the metal, and slow eddies in a pipe at rest.
 *
 * <p>A step is {@link #push}, then {@link #carry}. Neither allocates. Not safe for use by several threads; make one for each run.
 */
public final class WarmingLoop {

    private static final double WATER_J_PER_KG_K = 4182.0;

    private static final double LEAST_FLOW = 1e-5;
    /** Density for what is known to some ten per cent at best. */
    private static final double USUAL_KG_PER_M3 = 990;

    private static final double COURANT = 0.9;
    /** Share of the difference between two cells that one step of counterflow may carry: a quarter leaves no ripple. */
    private static final double MOST_MIXED = 0.25;

    private final MarchDetail detail;
    private Segment[] segments;
    private boolean lit;
    private final int[] first;
    private final int coil;
    private final double[] jPerKg;
    private final double[] tempC;
    private final double[] density;
    private final double[] kinematic;
    private final double[] kg;
    private final double[] cellM;
    private final double[] boilJPerKg;
    private final double inertiaPerM;
    private final double leastKg;

    private double flowKgPerS;
    private double coilJ;
    private double lostJ;
    private double steamJ;
    private double portsJ;
    private boolean boiling;

    WarmingLoop(Segment[] segments, boolean lit, Surface surface, double startC, MarchDetail detail) {
        this.detail = detail;
        this.segments = segments;
        this.lit = lit;
        first = new int[segments.length + 1];
        int coilAt = 0;
        double inertia = 0;
        for (int s = 0; s < segments.length; s++) {
            int cells = Math.max(detail.fewestCells(), (int) Math.ceil(segments[s].lengthM / detail.cellM()));
            first[s + 1] = first[s] + cells;
            coilAt = segments[s].coil ? s : coilAt;
            inertia += segments[s].lengthM / segments[s].areaM2;
        }
        coil = coilAt;
        inertiaPerM = inertia;
        int count = first[segments.length];
        jPerKg = new double[count];
        tempC = new double[count];
        density = new double[count];
        kinematic = new double[count];
        kg = new double[count];
        cellM = new double[count];
        boilJPerKg = new double[count];
        double least = Double.POSITIVE_INFINITY;
        for (int s = 0; s < segments.length; s++) {
            least = Math.min(least, fill(s, surface, startC));
        }
        leastKg = least;
    }

    private WarmingLoop(WarmingLoop as) {
        detail = as.detail;
        segments = as.segments;
        lit = as.lit;
        first = as.first;
        coil = as.coil;
        jPerKg = as.jPerKg.clone();
        tempC = as.tempC.clone();
        density = as.density.clone();
        kinematic = as.kinematic.clone();
        kg = as.kg;
        cellM = as.cellM;
        boilJPerKg = as.boilJPerKg;
        inertiaPerM = as.inertiaPerM;
        leastKg = as.leastKg;
        flowKgPerS = as.flowKgPerS;
        coilJ = as.coilJ;
        lostJ = as.lostJ;
        steamJ = as.steamJ;
        portsJ = as.portsJ;
        boiling = as.boiling;
    }

    /** The loop as it is now, to be marched on by itself. */
    public WarmingLoop copy() {
        return new WarmingLoop(this);
    }

    /**
     * Lights or puts out the fire: from now on heat and losses are those of another setting of the same loop.
     *
     * @param setting the loop in it, of the same runs of tube
     */
    public void goOn(Circuit setting) {
        segments = setting.segments();
        lit = setting.setting().firing().lit();
    }

    /** Fills the loop with water as warm as in a steady flow, moving as that does. */
    public void runAs(SteadyFlow flow) {
        for (int s = 0; s < segments.length; s++) {
            LegEnds ends = flow.legs().get(s);
            int cells = first[s + 1] - first[s];
            for (int i = first[s]; i < first[s + 1]; i++) {
                double part = (i - first[s] + 0.5) / cells;
                jPerKg[i] = WaterHeat.jPerKg(ends.startC() + part * (ends.endC() - ends.startC()));
                look(i);
            }
        }
        flowKgPerS = flow.flowKgPerS();
    }

    private double fill(int s, Surface surface, double startC) {
        Segment segment = segments[s];
        int cells = first[s + 1] - first[s];
        double lengthM = segment.lengthM / cells;
        double waterKg = LiquidTable.WATER.densityKgPerM3(startC) * segment.areaM2 * lengthM;
        Tube tube = segment.pipe.tube();
        double metalKg = tube.metalKgPerM() * lengthM * (tube.metal().jPerKgK() / WATER_J_PER_KG_K);
        for (int i = first[s]; i < first[s + 1]; i++) {
            double levelM = segment.startLevelM + segment.riseM * (i - first[s] + 0.5) / cells;
            double boilC = Math.min(Limits.FORMULA_C, surface.boilingC(levelM));
            boilJPerKg[i] = WaterHeat.jPerKg(boilC);
            jPerKg[i] = WaterHeat.jPerKg(startC);
            look(i);
            kg[i] = waterKg + metalKg;
            cellM[i] = lengthM;
        }
        return waterKg;
    }

    /**
     * Lets weight and friction act on the water for a while.
     *
     * @param seconds length of the step, s; no more than {@link #longestStepS}
     * @param columnKgPerM3 mean density of the tank's water between its two ports, kg/m³
     * @return flow, kg/s, forward positive
     */
    public double push(double seconds, double columnKgPerM3) {
        double drivePa = 0;
        double perFlow = 0;
        int direction = flowKgPerS >= 0 ? Direction.FORWARD : Direction.BACKWARD;
        double flow = Math.max(LEAST_FLOW, Math.abs(flowKgPerS));
        for (int s = 0; s < segments.length; s++) {
            Segment segment = segments[s];
            double mean = mean(density, s);
            drivePa -= Constants.GRAVITY_M_PER_S2 * (mean - columnKgPerM3) * segment.riseM;
            double reynolds = flow * segment.boreM / (segment.areaM2 * mean(kinematic, s) * mean);
            perFlow += segment.resistancePa(flow, reynolds, mean, direction) / flow;
        }
        // Friction in a straight line through the flow before: stable for any step, and exact once the flow is steady.
        double inertia = inertiaPerM / seconds;
        double next = (inertia * flowKgPerS + drivePa) / (inertia + perFlow);
        double most = detail.cellsAStep() * leastKg / seconds;
        flowKgPerS = Math.max(-most, Math.min(most, next));
        return flowKgPerS;
    }

    private double mean(double[] of, int s) {
        double sum = 0;
        for (int i = first[s]; i < first[s + 1]; i++) {
            sum += of[i];
        }
        return sum / (first[s + 1] - first[s]);
    }

    /** Stops the water: a port of the tank is dry. */
    public void stop() {
        flowKgPerS = 0;
    }

    /** The longest step that does not carry water past half the cells it may pass at the flow of now, s. */
    public double longestStepS() {
        double byFlowS = detail.cellsAStep() / 2 * leastKg / Math.max(LEAST_FLOW, Math.abs(flowKgPerS));
        return Math.min(detail.longestStepS(), byFlowS);
    }

    /** Heat above 0 °C of the water that leaves for the tank at the flow of now, J/kg. */
    public double leavingJPerKg() {
        return jPerKg[flowKgPerS >= 0 ? jPerKg.length - 1 : 0];
    }

    /**
     * Carries the water on, and warms and cools it.
     *
     * @param seconds length of the step, s; no more than {@link #longestStepS}
     * @param heatW heat that the lit coil takes up, W; 0 or more; of no account with the fire out
     * @param enteringJPerKg heat above 0 °C of the tank's water at either port, J/kg
     */
    public void carry(double seconds, double heatW, double enteringJPerKg) {
        carry(seconds, heatW, enteringJPerKg, enteringJPerKg);
    }

    /**
     * The same at a tank in layers.
     *
     * @param seconds length of the step, s; no more than {@link #longestStepS}
     * @param heatW heat that the lit coil takes up, W; 0 or more; of no account with the fire out
     * @param coldPortJPerKg heat above 0 °C of the tank's water at the port of the cold legs, J/kg
     * @param returnPortJPerKg heat above 0 °C of the tank's water at the port of the hot legs, J/kg
     */
    public void carry(double seconds, double heatW, double coldPortJPerKg, double returnPortJPerKg) {
        double enteringJPerKg = flowKgPerS >= 0 ? coldPortJPerKg : returnPortJPerKg;
        double mass = Math.abs(flowKgPerS) * seconds;
        int parts = Math.max(1, (int) Math.ceil(mass / (COURANT * leastKg)));
        for (int part = 0; part < parts; part++) {
            shift(mass / parts, enteringJPerKg);
        }
        if (detail.counterflow() > 0) {
            mix(seconds, coldPortJPerKg, returnPortJPerKg);
        }
        for (int s = 0; s < segments.length; s++) {
            if (lit && s == coil) {
                fire(s, heatW * seconds);
            } else {
                lose(s, seconds);
            }
        }
        boil();
    }

    /** Moves water on by less than a cell. */
    private void shift(double mass, double enteringJPerKg) {
        int count = jPerKg.length;
        boolean forward = flowKgPerS >= 0;
        portsJ += mass * (jPerKg[forward ? count - 1 : 0] - enteringJPerKg);
        double from = enteringJPerKg;
        // The cells of a run are alike: a division saved for each.
        double of = 0;
        double share = 0;
        int end = forward ? count : -1;
        int way = forward ? 1 : -1;
        for (int i = forward ? 0 : count - 1; i != end; i += way) {
            if (kg[i] != of) {
                of = kg[i];
                share = mass / of;
            }
            double here = jPerKg[i];
            jPerKg[i] = here + share * (from - here);
            from = here;
        }
    }

    /** Counterflow inside the tube, from cell to cell and, at the ports, with the tank. */
    private void mix(double seconds, double coldPortJPerKg, double returnPortJPerKg) {
        int last = jPerKg.length - 1;
        double below = LiquidTable.WATER.densityKgPerM3(WaterHeat.tempC(coldPortJPerKg));
        double here = density[0];
        portsJ -= mixed(mixedKg(0, 0, here - below, seconds), 0, coldPortJPerKg);
        for (int s = 0; s < segments.length; s++) {
            for (int i = first[s]; i < first[s + 1] && i < last; i++) {
                double next = density[i + 1];
                double kilograms = mixedKg(s, i, next - here, seconds);
                here = next;
                if (kilograms > 0) {
                    double most = Math.min(kg[i], kg[i + 1]) * MOST_MIXED;
                    double heatJ = mixed(Math.min(most, kilograms), i, jPerKg[i + 1]);
                    jPerKg[i + 1] -= heatJ / kg[i + 1];
                }
            }
        }
        double above = returnPortJPerKg == coldPortJPerKg
                ? below
                : LiquidTable.WATER.densityKgPerM3(WaterHeat.tempC(returnPortJPerKg));
        portsJ -= mixed(mixedKg(segments.length - 1, last, above - here, seconds), last, returnPortJPerKg);
    }

    /**
     * Water that changes places across a border of a cell, kg.
     *
     * @param s the run that the cell belongs to
     * @param denser how much denser the water beyond the border is in the forward direction than that before it, kg/m³
     */
    private double mixedKg(int s, int i, double denser, double seconds) {
        Segment segment = segments[s];
        // Lighter water above stays there; in a level pipe it slides over the denser either way.
        if (!segment.level && denser * segment.riseM <= 0) {
            return 0;
        }
        double pull = Math.sqrt(Constants.GRAVITY_M_PER_S2 * Math.abs(denser) / (USUAL_KG_PER_M3 * cellM[i]));
        double diffusivity = detail.counterflow() * segment.boreM * segment.boreM * pull;
        return Math.min(MOST_MIXED * kg[i], USUAL_KG_PER_M3 * segment.areaM2 * diffusivity / cellM[i] * seconds);
    }

    /** Heat that so much water brings into a cell in exchange for its own, J. */
    private double mixed(double kilograms, int i, double farJPerKg) {
        double heatJ = kilograms * (farJPerKg - jPerKg[i]);
        jPerKg[i] += heatJ / kg[i];
        return heatJ;
    }

    /** Heats one run evenly, J. */
    void fire(int s, double heatJ) {
        int cells = first[s + 1] - first[s];
        for (int i = first[s]; i < first[s + 1]; i++) {
            jPerKg[i] += heatJ / cells / kg[i];
        }
        coilJ += heatJ;
    }

    private void lose(int s, double seconds) {
        double[] lostWPerM = segments[s].loss.lostWPerM();
        for (int i = first[s]; i < first[s + 1]; i++) {
            double lost = LossTable.at(lostWPerM, tempC[i]) * cellM[i] * seconds;
            jPerKg[i] -= lost / kg[i];
            lostJ += lost;
        }
    }

    private void boil() {
        boiling = false;
        for (int i = 0; i < jPerKg.length; i++) {
            double over = jPerKg[i] - boilJPerKg[i];
            if (over > 0) {
                jPerKg[i] = boilJPerKg[i];
                steamJ += over * kg[i];
                boiling = true;
            }
            look(i);
        }
    }

    /** Reads what follows from the heat of a cell. */
    private void look(int i) {
        double place = WaterByHeat.place(jPerKg[i]);
        int piece = WaterByHeat.piece(place);
        double along = place - piece;
        tempC[i] = WaterByHeat.tempC(piece, along);
        density[i] = WaterByHeat.densityKgPerM3(piece, along);
        kinematic[i] = WaterByHeat.kinematicM2PerS(piece, along);
    }

    /** Flow of now, kg/s, forward positive. */
    public double flowKgPerS() {
        return flowKgPerS;
    }

    /** Temperature at the coil's inlet end, °C: end of the cold legs. */
    public double coilInC() {
        return tempC[first[coil] - 1];
    }

    /** Temperature at the coil's outlet end, °C. */
    public double coilOutC() {
        return tempC[first[coil + 1] - 1];
    }

    /** Temperature at the return port, °C: end of the hot legs. */
    public double returnC() {
        return tempC[tempC.length - 1];
    }

    /** Heat that the coil took up so far, J. */
    public double coilJ() {
        return coilJ;
    }

    /** Heat that the legs and an unlit coil lost so far, J; negative where they were warmed. */
    public double lostJ() {
        return lostJ;
    }

    /** Heat that left as steam so far, J. */
    public double steamJ() {
        return steamJ;
    }

    /** Heat that the water took to the tank so far, J: what left by the ports less what came in by them. */
    public double portsJ() {
        return portsJ;
    }

    /** Whether water boiled in the last step. */
    public boolean boiling() {
        return boiling;
    }

    /** Hottest water in the loop, °C. */
    public double hottestC() {
        double most = tempC[0];
        for (double each : tempC) {
            most = Math.max(most, each);
        }
        return most;
    }

    /** Heat above 0 °C held by water and metal of the loop, J. */
    public double heldJ() {
        double sum = 0;
        for (int i = 0; i < jPerKg.length; i++) {
            sum += kg[i] * jPerKg[i];
        }
        return sum;
    }
}

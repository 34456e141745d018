package loftcoil.engine.tank;

import java.util.Arrays;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.water.Water;

/**
 * The water of an open-vented tank in layers, marched through draws, the loop and rest.
 *
 * <p>State: the heat of each layer above 0 °C ({@link WaterHeat}) and its mass. A full layer has a constant mass, that of its
 * slice filled at 10 °C; water that grows as it warms stands in the space above the waterline, so true levels are up to 4 %
 * higher than {@link #levelM}, to the safe side for the ports. Every move books its heat in the {@link Ledger}; the account
 * closes to rounding (tests hold it to 1e-9 of what moved).
 *
 * <p>Flow is a plug ({@link PlugFlow}); a stream that enters rises or sinks to where its temperature fits and takes no other
 * water along, which is the best a good port can do; inversions turn over at once ({@link InversionMixing}). Left out: heat led by
 * the metal of the wall, mixing by jets, and lighter water below 4 °C.
 *
 * <p>No method but the constructor allocates. Not safe for use by several threads; make one for each run.
 */
public final class Layers {

    private static final Allowed MASS = new Allowed(0, 1e6, "kg");
    private static final Allowed SECONDS = new Allowed(0, 86_400, "s");

    /** The top layer joins the one below when lighter than this share of a full one, and parts from it above 1 + this. */
    private static final double LEAST_SHARE = 0.25;

    /** The base keeps this share of a layer: a puddle below any port. */
    private static final double PUDDLE_SHARE = 0.01;

    private static final double COLD_KG_PER_M3 = Water.densityKgPerM3(FullWeight.COLD_C);

    /** Rounding of a port's height, kg. */
    private static final double ON_THE_EDGE_KG = 1e-9;

    final double[] jPerKg;
    final double[] kg;
    final double[] fullKg;
    final double leastKg;
    private final double[] belowKg;

    private final LayerPlan plan;
    private final TankShape shape;
    private final double coldKg;
    private final double returnKg;
    private final double drawKg;
    private final double coveredKg;
    private final boolean edges;
    private final boolean returnIsAbove;
    private final int coldFromAbove;
    private final int coldFromBelow;
    private final int returnFromAbove;
    private final int returnFromBelow;
    private final int drawFromAbove;
    private final int drawFromBelow;
    private final double boilJPerKg;
    private final Allowed temperature;
    private final Allowed sameCount;
    private final Ledger ledger;
    private final PlugFlow plug;
    private final InversionMixing settling;
    private final Resting resting;
    private int wet;
    private double drawnJ;
    private double flashedJ;
    private double hottestBackJ;

    /**
     * A tank full to its waterline, all at one temperature.
     *
     * @param plan the tank and how it is cut
     */
    public Layers(LayerPlan plan) {
        this(plan, all(plan, WaterHeat.jPerKg(plan.startC())), full(below(plan)), plan.layers());
    }

    private Layers(LayerPlan plan, double[] jPerKg, double[] kg, int wet) {
        this.plan = plan;
        this.jPerKg = jPerKg;
        this.kg = kg;
        this.wet = wet;
        int count = plan.layers();
        Ports ports = plan.ports();
        shape = plan.shape();
        temperature = new Allowed(0, plan.boilC(), "°C");
        sameCount = new Allowed(count, count, "layers");
        coldKg = kgBelow(ports.coldM());
        returnKg = kgBelow(ports.returnM());
        drawKg = kgBelow(ports.drawM());
        coveredKg = kgBelow(Math.max(ports.returnM(), ports.coldM()) + ports.boreM() / 2);
        belowKg = below(plan);
        fullKg = full(belowKg);
        leastKg = Arrays.stream(fullKg).min().orElseThrow();
        edges = plan.cutAtPorts();
        int under = edges ? -1 : 0;
        coldFromAbove = portAt(coldKg, 0);
        coldFromBelow = portAt(coldKg, under);
        returnFromAbove = portAt(returnKg, 0);
        returnFromBelow = portAt(returnKg, under);
        drawFromAbove = portAt(drawKg, 0);
        drawFromBelow = portAt(drawKg, under);
        returnIsAbove = returnKg >= coldKg;
        boilJPerKg = WaterHeat.jPerKg(plan.boilC());
        ledger = new Ledger(energyJ());
        plug = new PlugFlow(jPerKg, kg);
        settling = new InversionMixing(jPerKg, kg);
        resting = new Resting(this, plan);
    }

    /** The same water in a tank of its own, whose account begins now. */
    public Layers copy() {
        return new Layers(plan, jPerKg.clone(), kg.clone(), wet);
    }

    private static double[] all(LayerPlan plan, double value) {
        double[] layers = new double[plan.layers()];
        Arrays.fill(layers, value);
        return layers;
    }

    private static double[] below(LayerPlan plan) {
        return Arrays.stream(plan.cutsM3()).map(m3 -> m3 * COLD_KG_PER_M3).toArray();
    }

    private static double[] full(double[] below) {
        double[] full = new double[below.length - 1];
        for (int i = 0; i < full.length; i++) {
            full[i] = below[i + 1] - below[i];
        }
        return full;
    }

    /** Heat of each layer for each kilogram above 0 °C, J/kg, into an array as long as there are layers. */
    public void heats(double[] into) {
        System.arraycopy(jPerKg, 0, into, 0, jPerKg.length);
    }

    /**
     * Goes on as from an earlier state to this one so many times more, where that is little: a day that hardly changed the tank stands for
     * the days to come. The level must be the same. What this adds is booked in no heat of the {@link Ledger}, whose account it stays in.
     *
     * @param before the earlier state, from {@link #heats}
     * @param times how many times more, 0 or more
     * @param mostJPerKg most that a layer may have changed between the two, J/kg
     * @return whether it was little; else nothing is done
     */
    public boolean goOn(double[] before, double times, double mostJPerKg) {
        for (int i = 0; i < wet; i++) {
            double change = jPerKg[i] - before[i];
            double after = jPerKg[i] + times * change;
            if (!(Math.abs(change) <= mostJPerKg && after >= 0 && after <= boilJPerKg)) {
                return false;
            }
        }
        double energyBefore = energyJ();
        for (int i = 0; i < wet; i++) {
            jPerKg[i] += times * (jPerKg[i] - before[i]);
        }
        settling.settle(wet);
        ledger.goneOnJ += energyJ() - energyBefore;
        return true;
    }

    /** Number of layers, with or without water. */
    public int count() {
        return kg.length;
    }

    /** Number of layers that hold water, counted from the base; the topmost may hold up to a quarter more than its slice. */
    public int wet() {
        return wet;
    }

    /**
     * Temperature of a layer.
     *
     * @param layer counted from the base, from 0 to {@link #wet} − 1
     * @return °C
     * @throws RefusedException where there is no water there
     */
    public double tempC(int layer) {
        return WaterHeat.tempC(jPerKg[requireWet(layer)]);
    }

    /**
     * Sets the temperature of a layer, at the start of a march; the account begins anew with the next {@link Layers} only, so
     * this books the change as heat.
     *
     * @param layer counted from the base, from 0 to {@link #wet} − 1
     * @param tempC temperature in °C, 0 to the boiling point
     * @throws RefusedException where there is no water there or the temperature is outside its range
     */
    public void warm(int layer, double tempC) {
        int at = requireWet(layer);
        double after = heatOf(tempC);
        ledger.heatJ += kg[at] * (after - jPerKg[at]);
        jPerKg[at] = after;
        settling.settle(wet);
    }

    /**
     * Mass of water in a layer.
     *
     * @param layer counted from the base, from 0
     * @return kg, 0 above the water
     */
    public double massKg(int layer) {
        return layer < wet ? kg[layer] : 0;
    }

    /** Mass of all water in kg. */
    public double massKg() {
        // All layers but the topmost are full.
        return belowKg[wet - 1] + kg[wet - 1];
    }

    /** Heat of all water above 0 °C in J. */
    public double energyJ() {
        double even = 0;
        double odd = 0;
        int i = 0;
        for (; i + 2 < wet; i += 2) {
            even += kg[i] * jPerKg[i];
            odd += kg[i + 1] * jPerKg[i + 1];
        }
        if (i + 1 < wet) {
            even += kg[i] * jPerKg[i];
        }
        return even + odd + kg[wet - 1] * jPerKg[wet - 1];
    }

    /** Temperature all water would have if stirred, °C. */
    public double meanC() {
        return WaterHeat.tempC(energyJ() / massKg());
    }

    /** Temperature of the top layer, the hottest, °C. */
    public double topC() {
        return WaterHeat.tempC(jPerKg[wet - 1]);
    }

    /** Temperature at the port that feeds the taps, °C. */
    public double drawC() {
        return WaterHeat.tempC(leaving(drawFromBelow, 1, 0));
    }

    /** Temperature at the port that feeds the loop, °C. */
    public double coldPortC() {
        return WaterHeat.tempC(returnIsAbove ? leaving(coldFromAbove, -1, 0) : leaving(coldFromBelow, 1, 0));
    }

    /** Temperature at the port where the loop comes back, °C. */
    public double returnPortC() {
        return WaterHeat.tempC(returnIsAbove ? leaving(returnFromBelow, 1, 0) : leaving(returnFromAbove, -1, 0));
    }

    /** Water level above the base in m, as if all water were at 10 °C. */
    public double levelM() {
        return shape.levelM(massKg() / COLD_KG_PER_M3);
    }

    /** Whether both ports of the loop are under water to the top of their bore; where not, the loop is broken. */
    public boolean loopCovered() {
        return massKg() >= coveredKg - 1e-9;
    }

    /** The account since the start. */
    public Ledger ledger() {
        return ledger;
    }

    /**
     * Heat of what the last draw took, for each kilogram above 0 °C: {@link WaterHeat#tempC} makes a temperature of it.
     *
     * @return J; 0 where nothing was drawn
     */
    public double lastDrawJ() {
        return drawnJ;
    }

    /**
     * Draws from the draw port while cold water refills at the base: the level stays.
     *
     * @param massKg mass to draw in kg, 0 to 1e6
     * @param refillC temperature of the refill in °C, 0 to the boiling point
     * @return mass drawn in kg: all of it, or none where the port is dry
     * @throws RefusedException where a value is outside its range or not a number
     */
    public double drawRefilling(double massKg, double refillC) {
        MASS.require("massKg", massKg);
        double entering = heatOf(refillC);
        drawnJ = 0;
        if (!(massKg() > drawKg)) {
            return 0;
        }
        drawnJ = push(massKg, 0, drawFromBelow, 1, entering);
        ledger.refillKg += massKg;
        ledger.refillJ += massKg * entering;
        ledger.drawnKg += massKg;
        ledger.drawnJ += drawnJ;
        return massKg;
    }

    /**
     * Draws from the draw port without refill: the level falls, at most to the port.
     *
     * @param massKg mass to draw in kg, 0 to 1e6
     * @return mass drawn in kg: what there was above the port, if less
     * @throws RefusedException where the mass is outside its range or not a number
     */
    public double drawDown(double massKg) {
        double floor = Math.max(drawKg, fullKg[0] * PUDDLE_SHARE);
        double drawn = Math.min(MASS.require("massKg", massKg), Math.max(0, massKg() - floor));
        drawnJ = 0;
        double left = drawn;
        while (left > 0) {
            double part = Math.min(left, lightestKg());
            part = wet == 1 ? left : part;
            drawnJ += plug.lower(wet - 1, Math.min(wet - 1, drawFromAbove), edges ? -1 : 0, part);
            left -= part;
            tidyTop();
        }
        settling.settle(wet);
        ledger.drawnKg += drawn;
        ledger.drawnJ += drawnJ;
        return drawn;
    }

    /**
     * Fills at the base; the level rises, at most to the waterline.
     *
     * @param massKg mass to add in kg, 0 to 1e6
     * @param refillC its temperature in °C, 0 to the boiling point
     * @return mass taken in kg: what there was room for, if less
     * @throws RefusedException where a value is outside its range or not a number
     */
    public double fill(double massKg, double refillC) {
        double room = Math.max(0, belowKg[kg.length] - massKg());
        double taken = Math.min(MASS.require("massKg", massKg), room);
        double entering = heatOf(refillC);
        double left = taken;
        while (left > 0) {
            double part = Math.min(left, Math.min(lightestKg(), LEAST_SHARE * leastKg));
            plug.raise(fit(0, entering), wet - 1, part, entering);
            left -= part;
            tidyTop();
        }
        settling.settle(wet);
        ledger.refillKg += taken;
        ledger.refillJ += taken * entering;
        return taken;
    }

    /**
     * Lets the loop run for a while: it takes water at one port and gives as much back at the other.
     *
     * @param massKg mass that goes round in kg, -1e6 to 1e6: positive from the cold port to the return port, negative backward
     * @param enteringC temperature at which it comes back in °C, 0 to the boiling point
     * @return whether the loop ran: false, and nothing moved, where a port is dry
     * @throws RefusedException where a value is outside its range or not a number
     */
    public boolean circulate(double massKg, double enteringC) {
        double mass = MASS.require("massKg", Math.abs(massKg));
        double entering = heatOf(enteringC);
        if (!loopCovered()) {
            return false;
        }
        boolean forward = massKg >= 0;
        int way = forward == returnIsAbove ? -1 : 1;
        double left = push(mass, forward ? returnFromAbove : coldFromAbove, out(forward), way, entering);
        ledger.loopJ += mass * entering - left;
        return true;
    }

    /**
     * Lets the loop run for a while and give each kilogram so much heat on its way. Where more goes round than the port's layer
     * holds, what comes late has left warmer or cooler than what came first, and comes back so.
     *
     * @param massKg mass that goes round in kg, -1e6 to 1e6: positive from the cold port to the return port, negative backward
     * @param riseJPerKg heat that each kilogram takes up on its way, J/kg; what would be over the boiling point flashes off as
     *     steam ({@link #lastFlashedJ}), and no water comes back under 0 °C
     * @return heat the tank gained, J; 0 where a port is dry
     * @throws RefusedException where the mass is outside its range or not a number
     */
    public double carryRound(double massKg, double riseJPerKg) {
        double left = MASS.require("massKg", Math.abs(massKg));
        flashedJ = 0;
        hottestBackJ = 0;
        if (!loopCovered()) {
            return 0;
        }
        boolean forward = massKg >= 0;
        int near = Math.min(wet - 1, forward ? returnFromAbove : coldFromAbove);
        int way = forward == returnIsAbove ? -1 : 1;
        int out = Math.min(wet - 1, out(forward));
        double gainedJ = 0;
        while (left > 0) {
            double part = Math.min(left, lightestKg());
            double leaving = leaving(out, way, part);
            double wanted = leaving + riseJPerKg;
            double entering = Math.max(0, Math.min(boilJPerKg, wanted));
            hottestBackJ = Math.max(hottestBackJ, entering);
            flashedJ += part * Math.max(0, wanted - boilJPerKg);
            gainedJ += part * (entering - leaving);
            plug.through(fit(near, entering), out, part, entering, leaving);
            left -= part;
        }
        settling.settle(wet);
        ledger.loopJ += gainedJ;
        return gainedJ;
    }

    /** Hottest water that the loop last brought back, °C; 0 where it brought none. It can be hotter than the layer it joins. */
    public double lastHottestBackC() {
        return WaterHeat.tempC(hottestBackJ);
    }

    /** Heat that flashed off as steam from what the loop last brought back, J; it never reached the tank. */
    public double lastFlashedJ() {
        return flashedJ;
    }

    /**
     * Lets time pass without flow: losses, sunshine, heaters, conduction, and what turns over by them.
     *
     * @param seconds 0 to 86 400
     * @param around what acts on the tank, for the same number of layers
     * @throws RefusedException where the time is outside its range or not a number, or the layers differ in number
     */
    public void rest(double seconds, TankSurroundings around) {
        sameCount.require("around", around.heaterW.length);
        resting.rest(wet, SECONDS.require("seconds", seconds), around);
        settling.settle(wet);
    }

    private double push(double massKg, int near, int out, int way, double entering) {
        int from = Math.min(wet - 1, near);
        int to = Math.min(wet - 1, out);
        double leavingJ = 0;
        double left = massKg;
        while (left > 0) {
            double part = Math.min(left, lightestKg());
            double leaving = leaving(to, way, part);
            plug.through(fit(from, entering), to, part, entering, leaving);
            leavingJ += part * leaving;
            left -= part;
        }
        settling.settle(wet);
        return leavingJ;
    }

    /** The layer by which the loop leaves the tank. */
    private int out(boolean forward) {
        if (forward) {
            return returnIsAbove ? coldFromAbove : coldFromBelow;
        }
        return returnIsAbove ? returnFromBelow : returnFromAbove;
    }

    private double leaving(int out, int way, double massKg) {
        return plug.leaving(Math.min(wet - 1, out), edges ? way : 0, massKg, wet);
    }

    /** The layer a stream comes to rest in: it rises past colder layers and sinks past warmer ones. */
    private int fit(int near, double entering) {
        int i = near;
        while (i + 1 < wet && jPerKg[i + 1] < entering) {
            i++;
        }
        while (i > 0 && jPerKg[i - 1] > entering) {
            i--;
        }
        return i;
    }

    private double heatOf(double tempC) {
        return WaterHeat.jPerKg(temperature.require("tempC", tempC));
    }

    /**
     * The layer at a port, by the water below it; on the edge of two the upper, or so many above that. Where layers are cut at the ports,
     * the nearest edge is the port's.
     */
    private int portAt(double kgBelow, int above) {
        int at = 0;
        while (at + 1 < fullKg.length && belowKg[at + 1] <= kgBelow + ON_THE_EDGE_KG) {
            at++;
        }
        boolean nearerToUpper = edges && belowKg[at + 1] - kgBelow < kgBelow - belowKg[at];
        return Math.max(0, Math.min(fullKg.length - 1, at + (nearerToUpper ? 1 : 0) + above));
    }

    private double kgBelow(double levelM) {
        return shape.volumeBelowM3(levelM) * COLD_KG_PER_M3;
    }

    /** Mass of the lightest layer, kg: so much can be pushed through at once. */
    public double lightestKg() {
        return Math.min(leastKg, kg[wet - 1]);
    }

    private int requireWet(int layer) {
        if (layer < 0 || layer >= wet) {
            new Allowed(0, wet - 1, "").require("layer", layer);
        }
        return layer;
    }

    /** Keeps the top layer between a quarter and one and a quarter of a full one, so that no step meets a sliver. */
    private void tidyTop() {
        if (wet > 1 && kg[wet - 1] < LEAST_SHARE * fullKg[wet - 1]) {
            double sum = kg[wet - 2] + kg[wet - 1];
            jPerKg[wet - 2] += kg[wet - 1] / sum * (jPerKg[wet - 1] - jPerKg[wet - 2]);
            kg[wet - 2] = sum;
            wet--;
        }
        if (wet < kg.length && kg[wet - 1] > fullKg[wet - 1] + LEAST_SHARE * fullKg[wet]) {
            kg[wet] = kg[wet - 1] - fullKg[wet - 1];
            jPerKg[wet] = jPerKg[wet - 1];
            kg[wet - 1] = fullKg[wet - 1];
            wet++;
        }
    }
}

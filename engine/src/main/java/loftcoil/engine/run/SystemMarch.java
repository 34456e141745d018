package loftcoil.engine.run;

import java.util.Optional;
import loftcoil.engine.tank.Layers;
import loftcoil.engine.tank.Ledger;
import loftcoil.engine.tank.TankSurroundings;
import loftcoil.engine.tank.WaterHeat;

/**
 * The whole system stepped through time. In a step: draws that start in it, then the loop (lit for the part of the step in which the
 * fire burns, unlit for the rest), then loss, sun and conduction; each acts on what the one before left. Where nothing is lit or
 * drawn, several steps are taken as one ({@link Pace#quietS}). While no fire burns the loop comes last in every other step. No method but the
 * constructor and {@link #totals} allocates. Not safe for use by several threads.
 */
final class SystemMarch {

    private final SystemPlan plan;
    private final Layers tank;
    private final TankSurroundings around;
    private final LoopMarch loop;
    private final DrawMarch draws;
    private final FireHours fire;
    private final Optional<WindowMarch> window;
    private final int stepS;
    private final int quietSteps;
    private final ExtremesWatch watch = new ExtremesWatch();
    private final int refillStep;
    private final double coldC;
    private final double aroundC;
    private final double coldJPerKg;

    private boolean restFirst;
    private long stepsTaken;
    private double litS;
    private double boiledS;
    private double hottestC;
    private boolean nobodyHome;

    /** From a tank full of cold water. */
    SystemMarch(SystemPlan plan) {
        this(plan, new Layers(plan.layers()));
    }

    /** From a tank that was marched before; it is taken on, not copied. */
    SystemMarch(SystemPlan plan, Layers tank) {
        this.plan = plan;
        this.tank = tank;
        stepS = plan.pace().stepS();
        quietSteps = plan.pace().quietS() / stepS;
        around = new TankSurroundings(plan.layers().layers());
        loop = new LoopMarch(plan.loop(), plan.layers(), tank);
        coldC = plan.design().site().coldSupplyC();
        aroundC = plan.design().tank().aroundC();
        coldJPerKg = WaterHeat.jPerKg(coldC);
        draws = new DrawMarch(plan.draws(), stepS, coldC, plan.refilledAsDrawn());
        fire = plan.design().fire().map(lit -> new FireHours(lit, stepS)).orElseGet(() -> FireHours.none(stepS));
        window = plan.window()
                .map(year -> new WindowMarch(
                        year,
                        plan.design().window().orElseThrow(),
                        plan.design().seenFace().orElseThrow()));
        refillStep = plan.refillAtH().isPresent() ? (int) (plan.refillAtH().getAsDouble() % 24 * 3600 / stepS) : -1;
    }

    /** Whether somebody draws, fills and lights the fire on the days to come. */
    void home(boolean somebody) {
        nobodyHome = !somebody;
    }

    /** One day; days before and after the year count round. */
    void day(int day) {
        day(day, day, 1);
    }

    /** One day under the mean weather of so many days from another on. */
    void day(int day, int weatherFrom, int weatherDays) {
        window.ifPresent(panes -> panes.days(weatherFrom, weatherDays));
        int steps = plan.pace().stepsPerDay();
        int stride;
        for (int i = 0; i < steps; i += stride) {
            stride = i % quietSteps == 0 && isQuiet(day, i) ? quietSteps : 1;
            steps(day, i, stride);
            stepsTaken++;
        }
    }

    /** Whether no fire burns in a quiet step, and nothing is drawn or filled after its start. */
    private boolean isQuiet(int day, int from) {
        if (nobodyHome) {
            return true;
        }
        int until = from + quietSteps;
        if (draws.startsWithin(from + 1, until) || (refillStep > from && refillStep < until)) {
            return false;
        }
        int month = Calendar.month(day);
        int monthOfYesterday = Calendar.month(day - 1);
        for (int i = from; i < until; i++) {
            if (fire.share(month, monthOfYesterday, i) > 0) {
                return false;
            }
        }
        return true;
    }

    /** One step of a day. */
    void step(int day, int stepOfDay) {
        window.ifPresent(panes -> panes.days(day, 1));
        steps(day, stepOfDay, 1);
        stepsTaken++;
    }

    /** So many steps of a day taken as one; the fire's part is that of the first. */
    private void steps(int day, int stepOfDay, int count) {
        int seconds = count * stepS;
        if (!nobodyHome) {
            fillAndDraw(stepOfDay);
        }
        double steamBefore = tank.ledger().steamJ();
        loop.month(Calendar.month(day));
        double litShare = nobodyHome ? 0 : fire.share(Calendar.month(day), Calendar.month(day - 1), stepOfDay);
        int minuteOfDay = (int) ((long) stepOfDay * stepS / 60);
        // With the fire out by turns in either order: what one does to the other within a step is then made good in the
        // next.
        restFirst = litShare == 0 && !restFirst;
        if (restFirst) {
            rest(minuteOfDay, seconds);
            loop(litShare, seconds);
        } else {
            loop(litShare, seconds);
            rest(minuteOfDay, seconds);
        }
        if (loop.boiled || tank.ledger().steamJ() > steamBefore) {
            boiledS += seconds;
        }
        hottestC = Math.max(hottestC, Math.max(loop.hottestBackC, tank.topC()));
        watch.see(tank, seconds);
    }

    private void fillAndDraw(int stepOfDay) {
        if (stepOfDay == refillStep) {
            tank.fill(tank.massKg() + 1e5, coldC);
        }
        draws.step(stepOfDay, tank);
    }

    private void loop(double litShare, int seconds) {
        loop.begin();
        if (litShare < 1) {
            loop.out((1 - litShare) * seconds);
        }
        if (litShare > 0) {
            litS += litShare * seconds;
            loop.lit(litShare * seconds);
        }
    }

    private void rest(int minuteOfDay, int seconds) {
        double meanC = tank.meanC();
        around.loss(plan.losses().at(meanC), aroundC);
        if (window.isPresent()) {
            window.get().act(minuteOfDay, meanC, around);
            watch.seeAir(window.get().leastAirC(minuteOfDay));
        }
        tank.rest(seconds, around);
    }

    Layers tank() {
        return tank;
    }

    /** Steps taken since the march began. */
    long stepsTaken() {
        return stepsTaken;
    }

    /** Times that flow and heat of the loop were looked up since the march began. */
    long looks() {
        return loop.looks;
    }

    /** Flow of the loop at the end of the last step, kg/s; backward negative. */
    double loopFlowKgPerS() {
        return loop.flowKgPerS;
    }

    ExtremesWatch watch() {
        return watch;
    }

    /** Hottest water in the tank since this was last asked, °C. */
    double takeHottestC() {
        double taken = hottestC;
        hottestC = tank.topC();
        return taken;
    }

    /** All that was counted since the march began. */
    Totals totals() {
        Ledger ledger = tank.ledger();
        // Heat counts above the cold supply, so that water which comes and goes carries none of its own.
        Losses losses = new Losses(
                ledger.lossJ(),
                ledger.windowJ(),
                loop.litLossJ,
                loop.nightLossJ,
                loop.steamJ + ledger.steamJ(),
                -ledger.iceJ());
        return new Totals(
                ledger.heatJ(),
                loop.coilJ,
                ledger.drawnJ() - ledger.drawnKg() * coldJPerKg,
                losses,
                tank.energyJ() - tank.massKg() * coldJPerKg,
                draws.shortJ(),
                new Litres(draws.asWantedL, draws.tooCoolL, draws.missingL),
                new Times(litS, boiledS, loop.backwardS));
    }
}

package loftcoil.engine.start;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.design.Design;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.CircuitPlan;
import loftcoil.engine.loop.MarchDetail;
import loftcoil.engine.loop.Setting;
import loftcoil.engine.loop.SteadyFlow;
import loftcoil.engine.loop.WarmingLoop;
import loftcoil.engine.run.Heatings;
import loftcoil.engine.run.Recent;
import loftcoil.engine.watch.Watch;

/**
 * A design's fire lit after each of several rests. The loop has run, then stood for a quarter of an hour, an hour and eight hours
 * without fire, its pipes cooling and the water creeping as it will; the tank stays warm. Besides, all of it is started from cold.
 * The fire comes to its heat in five minutes. Each start is tried without, with some and with full counterflow inside the tube.
 *
 * @param tried every start that was tried
 */
public record Starts(List<Start> tried) {

    /** Hours without fire. */
    static final double[] GAPS_H = {0.25, 1, 8};

    /** Tanks that every design is started on, °C. */
    static final double[] TANKS_C = {40, 60};

    private static final Recent<Lit, Optional<Starts>> KNOWN = new Recent<>(16);

    /** Starts on one tank, as a whole sheet wants them and until one fails: designs that differ in their tank's size alone share most. */
    private static final Recent<OnTank, List<Start>> WHOLE = new Recent<>(64);

    private static final Recent<Alike, List<Start>> UNTIL = new Recent<>(64);

    /** A tank is started at this much below its boiling point at most, K: at it no loop can be computed. */
    private static final double BELOW_BOILING_K = 1;

    /** Two tanks nearer to each other than this are one, K. */
    private static final double SAME_TANK_K = 2;

    /** For a guess: cells twice as long, rests in steps three times as long. What it guesses is marched again as usual. */
    private static final MarchDetail COARSE = new MarchDetail(0.1, 2, 8, 30, 0);

    private static final double HOUR_S = 3600;
    /** Longest step while the fire is lit, s. */
    private static final double LIT_STEP_S = 2;

    /** Keeps a copy of the starts. */
    public Starts {
        tried = List.copyOf(tried);
    }

    /**
     * Starts a design.
     *
     * @param design a design
     * @param hottestC hottest tank of the year, °C; empty where it is not known
     * @return empty where the coil takes no heat
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed
     */
    public static Optional<Starts> of(Design design, OptionalDouble hottestC) {
        return of(design, hottestC, Watch.NONE);
    }

    /**
     * The same, watched.
     *
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed
     * @throws Watch.StoppedException where the watch ends it
     */
    public static Optional<Starts> of(Design design, OptionalDouble hottestC, Watch watch) {
        return KNOWN.of(new Lit(design, hottestC), lit -> lit.started(watch));
    }

    /**
     * Starts a design until one fails, hottest tank first, with some counterflow and, where that goes wrong, with full: enough to see
     * whether a start is a danger, and most of what makes it not sure.
     *
     * @param coarse whether it is marched in longer cells and steps: enough for a guess alone
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed
     */
    public static Optional<Starts> untilOneFails(Design design, OptionalDouble hottestC, boolean coarse) {
        return of(design, hottestC, coarse ? COARSE : MarchDetail.LONG, true, Watch.NONE);
    }

    private record Lit(Design design, OptionalDouble hottestC) {
        Optional<Starts> started(Watch watch) {
            return of(design, hottestC, MarchDetail.LONG, false, watch);
        }
    }

    /** The same in other detail; its counterflow is of no account. */
    static Optional<Starts> of(Design design, OptionalDouble hottestC, MarchDetail detail) {
        return of(design, hottestC, detail, false, Watch.NONE);
    }

    private static Optional<Starts> of(
            Design design, OptionalDouble hottestC, MarchDetail detail, boolean untilOneFails, Watch watch) {
        CoilHeating heating = Heatings.of(design);
        double coldC = design.site().coldSupplyC();
        if (!(design.circuit(coldC).setting().firing().heatW() > 0)) {
            return Optional.empty();
        }
        double boilC = design.circuit(coldC).boilingC(design.tank().waterlineLevelM());
        List<Double> tanks = tanks(hottestC, boilC - BELOW_BOILING_K);
        if (untilOneFails) {
            return Optional.of(untilOneFails(design, heating, coldC, tanks, detail));
        }
        List<Start> starts = new ArrayList<>();
        int rounds = tanks.size() * Counterflow.values().length;
        int done = 0;
        for (double tankC : tanks) {
            Site site = Site.of(design, heating, tankC, detail);
            Alike alike = site.alike();
            for (Counterflow counterflow : Counterflow.values()) {
                watch.pass(Watch.Stage.STARTS, done++, rounds);
                starts.addAll(WHOLE.of(new OnTank(alike, counterflow), key -> site.afterRests(counterflow)));
            }
        }
        Site cold = Site.of(design, heating, coldC, detail);
        for (Counterflow counterflow : Counterflow.values()) {
            starts.add(cold.fromCold(counterflow));
        }
        return Optional.of(new Starts(starts));
    }

    private static Starts untilOneFails(
            Design design, CoilHeating heating, double coldC, List<Double> tanks, MarchDetail detail) {
        List<Start> starts = new ArrayList<>();
        for (int i = tanks.size() - 1; i >= 0; i--) {
            Site site = Site.of(design, heating, tanks.get(i), detail);
            List<Start> here = UNTIL.of(site.alike(), key -> site.untilOneFails());
            starts.addAll(here);
            if (here.get(here.size() - 1).bad()) {
                return new Starts(starts);
            }
        }
        Site cold = Site.of(design, heating, coldC, detail);
        fails(starts, cold.fromCold(Counterflow.SOME), () -> cold.fromCold(Counterflow.FULL));
        return new Starts(starts);
    }

    /** Tries a start with full counterflow only where that with some goes wrong; the last of them is bad where both are. */
    private static boolean fails(List<Start> all, Start some, Supplier<Start> full) {
        all.add(some);
        if (!some.bad()) {
            return false;
        }
        Start other = full.get();
        all.add(other);
        return other.bad();
    }

    /** The starts after rests, with some and with full counterflow, on a tank that is warmer from the cold port up to the return port. */
    static Starts onLayers(Design design, double coldPortC, double returnPortC) {
        StartRun.Tank tank = StartRun.Tank.layered(coldPortC, returnPortC);
        Site site = Site.of(design, Heatings.of(design), tank, coldPortC, MarchDetail.LONG);
        List<Start> starts = new ArrayList<>(site.afterRests(Counterflow.SOME));
        starts.addAll(site.afterRests(Counterflow.FULL));
        return new Starts(starts);
    }

    /** One start after a rest, with some counterflow, and how it went. */
    static StartTrace traced(Design design, double tankC, OptionalDouble gapH) {
        Site site = Site.of(design, Heatings.of(design), tankC, MarchDetail.LONG);
        WarmingLoop loop = site.out().warming(MarchDetail.LONG.withCounterflow(Counterflow.SOME.strength()));
        site.steady().ifPresent(loop::runAs);
        site.rest(loop, gapH.orElseThrow() * HOUR_S);
        loop.goOn(site.lit());
        StartRun run = site.run(loop);
        Start start = run.run(gapH, Counterflow.SOME);
        return new StartTrace(start, run.moments());
    }

    private static List<Double> tanks(OptionalDouble hottestC, double mostC) {
        List<Double> tanks = new ArrayList<>();
        Stream.concat(Stream.of(TANKS_C[0], TANKS_C[1]), hottestC.stream().boxed())
                .map(tankC -> Math.min(tankC, mostC))
                .filter(tankC -> tanks.stream().noneMatch(other -> Math.abs(other - tankC) < SAME_TANK_K))
                .forEach(tanks::add);
        return tanks;
    }

    /** What they come to. */
    public Sureness sureness() {
        if (failing().isPresent()) {
            return Sureness.FAILS;
        }
        return doubtful().isPresent() ? Sureness.UNSURE : Sureness.SURE;
    }

    /**
     * Of the starts that go wrong with some counterflow and with full, the worst, with some: one on a tank on which the loop could flow
     * before one on which it boils however it is started, then the one that boils soonest.
     */
    public Optional<Start> failing() {
        return worst(start -> start.counterflow() == Counterflow.SOME
                && start.bad()
                && same(start, Counterflow.FULL).filter(Start::bad).isPresent());
    }

    /** Of the starts that may go wrong, the worst; those that go wrong for certain are among them. */
    public Optional<Start> doubtful() {
        return worst(start -> start.doubtful() || (start.bad() && !start.stalls()));
    }

    /** Most minutes that one of those that went forward took to do so; empty where none went forward. */
    public OptionalDouble slowestForwardMin() {
        return tried.stream()
                .flatMapToDouble(start -> start.forwardAfterMin().stream())
                .max();
    }

    /** Fewest minutes from lighting until water boiled; empty where none boiled. */
    public OptionalDouble soonestBoilingMin() {
        return tried.stream()
                .flatMapToDouble(start -> start.firstBoilingMin().stream())
                .min();
    }

    /** Hottest water in any of them, °C. */
    public double hottestC() {
        return tried.stream().mapToDouble(Start::hottestC).max().orElseThrow();
    }

    /** What they come to, in a sentence. */
    public String words() {
        return switch (sureness()) {
            case SURE ->
                "sure: of " + tried.size() + " starts that were tried none boils for long, swings or runs backward";
            case UNSURE ->
                "not sure: of " + tried.size() + " starts that were tried some may go wrong; the cautions say which";
            case FAILS -> "fails: of " + tried.size() + " starts that were tried some go wrong; the cautions say which";
        };
    }

    private Optional<Start> same(Start as, Counterflow counterflow) {
        return tried.stream()
                .filter(start -> start.counterflow() == counterflow
                        && start.tankC() == as.tankC()
                        && start.gapH().equals(as.gapH()))
                .findFirst();
    }

    private Optional<Start> worst(Predicate<Start> of) {
        return tried.stream()
                .filter(of)
                .min(Comparator.comparing((Start start) -> !start.bad())
                        .thenComparing(start -> !start.canFlow())
                        .thenComparing(start -> start.firstBoilingMin().orElse(Double.POSITIVE_INFINITY)));
    }

    /** All that a loop's starts on a tank follow from. */
    private record Alike(
            CircuitPlan lit,
            Setting burning,
            CircuitPlan out,
            Setting quiet,
            StartRun.Tank tank,
            CoilHeating heating,
            MarchDetail detail) {}

    private record OnTank(Alike alike, Counterflow counterflow) {}

    /** A loop on a tank of one temperature. */
    private record Site(
            Circuit lit,
            Circuit out,
            Optional<SteadyFlow> steady,
            StartRun.Tank tank,
            CoilHeating heating,
            MarchDetail detail) {

        static Site of(Design design, CoilHeating heating, double tankC, MarchDetail detail) {
            return of(design, heating, StartRun.Tank.uniform(tankC), tankC, detail);
        }

        /** What it has run at before is the steady flow on a tank that is all as warm as its cold port. */
        static Site of(Design design, CoilHeating heating, StartRun.Tank tank, double coldPortC, MarchDetail detail) {
            Circuit lit = design.circuit(coldPortC);
            return new Site(lit, design.circuitFireOut(coldPortC), lit.search().forward(), tank, heating, detail);
        }

        Alike alike() {
            return new Alike(lit.plan(), lit.setting(), out.plan(), out.setting(), tank, heating, detail);
        }

        List<Start> untilOneFails() {
            List<Start> starts = new ArrayList<>();
            Rested some = new Rested(this, Counterflow.SOME);
            Rested full = new Rested(this, Counterflow.FULL);
            for (double gapH : GAPS_H) {
                if (fails(starts, some.lit(gapH), () -> full.lit(gapH))) {
                    break;
                }
            }
            return List.copyOf(starts);
        }

        List<Start> afterRests(Counterflow counterflow) {
            Rested rested = new Rested(this, counterflow);
            return Arrays.stream(GAPS_H).mapToObj(rested::lit).toList();
        }

        Start fromCold(Counterflow counterflow) {
            return run(lit.warming(detail.withCounterflow(counterflow.strength())))
                    .run(OptionalDouble.empty(), counterflow);
        }

        private void rest(WarmingLoop loop, double seconds) {
            double left = seconds;
            while (left > 1e-9) {
                double step = Math.min(left, loop.longestStepS());
                loop.push(step, tank.densityKgPerM3());
                loop.carry(step, 0, tank.coldPortJPerKg(), tank.returnPortJPerKg());
                left -= step;
            }
        }

        private StartRun run(WarmingLoop loop) {
            double steadyKgPerS = steady.map(SteadyFlow::flowKgPerS).orElse(0.0);
            double step = Math.min(LIT_STEP_S, LIT_STEP_S * detail.longestStepS() / MarchDetail.LONG.longestStepS());
            return new StartRun(loop, tank, heating, steadyKgPerS, step);
        }
    }

    /** A loop that has run and rests ever longer. */
    private static final class Rested {

        private final Site site;
        private final Counterflow counterflow;
        private final WarmingLoop loop;
        private double restedH;

        Rested(Site site, Counterflow counterflow) {
            this.site = site;
            this.counterflow = counterflow;
            loop = site.out().warming(site.detail().withCounterflow(counterflow.strength()));
            site.steady().ifPresent(loop::runAs);
        }

        /** How its fire, lit after so many hours, no fewer than before, starts it. */
        Start lit(double gapH) {
            site.rest(loop, (gapH - restedH) * HOUR_S);
            restedH = gapH;
            WarmingLoop lighted = loop.copy();
            lighted.goOn(site.lit());
            return site.run(lighted).run(OptionalDouble.of(gapH), counterflow);
        }
    }
}

package loftcoil.engine.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import loftcoil.engine.caution.HarderCase;
import loftcoil.engine.caution.YearFacts;
import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.design.ColdNight;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Outdoors;
import loftcoil.engine.loop.Boils;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.SteadyFlow;
import loftcoil.engine.loop.Still;

/**
 * The loop in every steady state in which a design is judged: the tank from cold to its hottest, the fire from its usual heat to half
 * as strong again, and where pipes run outdoors the air there as in the months of fire, on the coldest night and in the warmest month of
 * fire. A state that is added here is judged on every face.
 *
 * <p>Hottest is the hottest of the year, and never less than {@link HarderCase#HOT_C}: a fire on a day on which nobody draws comes to it in most
 * tanks, and a verdict must not get milder once the year is known. It ends {@link #BELOW_BOILING_K} under the boiling point of the
 * tank, from where the tank itself is the danger, whatever the loop is.
 *
 * @param boils the state with the least fire, and of these the one with the coolest tank, in which water boils
 * @param still the same in which nothing flows
 * @param nearest of the states in which water flows, the one in which it comes nearest to boiling
 */
public record JudgedStates(Optional<HarderCase> boils, Optional<HarderCase> still, Optional<HarderCase> nearest) {

    /** A tank in the afternoon, °C. */
    static final double COOL_C = Sheet.USUAL_TANK_C;

    /** How far under its own boiling point the tank ends, K: what the caution on a boiling tank takes, and what layers blur. */
    static final double BELOW_BOILING_K = 5 + YearFacts.BLUR_K;

    /** A fire half as strong again; where the heat is worked out from the fire, its high end if that is more. */
    static final double STRONGEST = 1.5;

    /**
     * Spacing of the tanks that are looked at, K; the state that is told is closed in further. Of fires the two ends are looked at:
     * what holds for both holds between (a test walks between them).
     */
    private static final double EVERY_K = 12;

    private static final int HALVINGS = 4;
    private static final double MOST_W = 100_000;
    private static final double W_PER_KW = 1000;

    /** Every state of a loop. */
    private record Loop(Circuit circuit, CoilHeating usual) {

        HarderCase at(double tankC, double factor) {
            CoilHeating.Agreed agreed = usual.times(factor).agreed(circuit.withTankC(tankC));
            return factor == 1
                    ? HarderCase.tankAt(tankC, agreed.search())
                    : HarderCase.stronger(tankC, factor, agreed.heatW() / W_PER_KW, agreed.search());
        }
    }

    /**
     * Judges a loop in all of them.
     *
     * @param lit the loop with the fire lit, at any tank
     * @param spread the loop with the most heat, where the heat is worked out from the fire
     * @param hottestC hottest tank of the year, °C; empty where the year is not known
     * @return without any state where the coil takes no heat
     */
    static JudgedStates of(Design design, Circuit lit, Optional<HeatSpread> spread, OptionalDouble hottestC) {
        double usualW = lit.setting().firing().heatW();
        if (!(usualW > 0)) {
            return new JudgedStates(Optional.empty(), Optional.empty(), Optional.empty());
        }
        double strongest = Math.max(
                STRONGEST,
                spread.map(HeatSpread::high)
                        .map(high -> high.heatKW() * W_PER_KW / usualW)
                        .orElse(1.0));
        strongest = Math.max(1, Math.min(strongest, MOST_W / usualW));
        double[] tanks = tanks(design, lit, hottestC);
        double[] factors = {1, strongest};
        JudgedStates states = judged(new Loop(lit, design.coilHeating()), tanks, factors);
        if (!Outdoors.any(design)) {
            return states;
        }
        return Stream.of(ColdNight.of(design).nightC(), Outdoors.warmestLitC(design))
                .map(airC -> new Loop(Outdoors.at(design, airC).circuit(COOL_C), design.coilHeating()))
                .map(loop -> judged(loop, tanks, factors))
                .reduce(states, JudgedStates::worse);
    }

    /** The worse of the states that two loops are in. */
    private JudgedStates worse(JudgedStates other) {
        Comparator<HarderCase> easiest =
                Comparator.comparingDouble(HarderCase::heatFactor).thenComparingDouble(HarderCase::tankC);
        return new JudgedStates(
                first(boils, other.boils, easiest),
                first(still, other.still, easiest),
                first(nearest, other.nearest, JudgedStates::byMargin));
    }

    private static Optional<HarderCase> first(
            Optional<HarderCase> one, Optional<HarderCase> other, Comparator<HarderCase> by) {
        return Stream.concat(one.stream(), other.stream()).min(by);
    }

    private static double[] tanks(Design design, Circuit lit, OptionalDouble hottestC) {
        double coldC = design.site().coldSupplyC();
        double boilingC = lit.boilingC(design.tank().waterlineLevelM());
        double hotC = Math.max(HarderCase.HOT_C, hottestC.orElse(0) + YearFacts.BLUR_K);
        double topC = Math.max(coldC, Math.min(hotC, boilingC - BELOW_BOILING_K));
        int steps = (int) Math.ceil((topC - coldC) / EVERY_K);
        double[] tanks = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            tanks[i] = steps == 0 ? topC : coldC + (topC - coldC) * i / steps;
        }
        return tanks;
    }

    private static JudgedStates judged(Loop loop, double[] tanks, double[] factors) {
        Optional<HarderCase> boils = Optional.empty();
        Optional<HarderCase> still = Optional.empty();
        List<HarderCase> flowing = new ArrayList<>();
        for (double factor : factors) {
            for (int i = 0; i < tanks.length; i++) {
                HarderCase state = loop.at(tanks[i], factor);
                if (state.search().circulates()) {
                    flowing.add(state);
                } else if (state.search().circulation() instanceof Still && still.isEmpty()) {
                    still = Optional.of(coolest(loop, tanks, i, state));
                } else if (state.search().circulation() instanceof Boils && boils.isEmpty()) {
                    boils = Optional.of(coolest(loop, tanks, i, state));
                }
            }
        }
        return new JudgedStates(boils, still, nearest(loop, tanks, flowing));
    }

    /** A state that is as bad as one of the tanks, closed in on the coolest tank from the one before. */
    private static HarderCase coolest(Loop loop, double[] tanks, int at, HarderCase bad) {
        double goodC = at == 0 ? tanks[0] : tanks[at - 1];
        HarderCase coolest = bad;
        for (int i = 0; at > 0 && i < HALVINGS; i++) {
            HarderCase middle = loop.at((goodC + coolest.tankC()) / 2, bad.heatFactor());
            if (alike(middle, bad)) {
                coolest = middle;
            } else {
                goodC = middle.tankC();
            }
        }
        return coolest;
    }

    private static boolean alike(HarderCase one, HarderCase other) {
        return one.search().circulation().getClass()
                == other.search().circulation().getClass();
    }

    /** The state nearest to boiling, with those half a step to both sides of it. */
    private static Optional<HarderCase> nearest(Loop loop, double[] tanks, List<HarderCase> flowing) {
        Optional<HarderCase> found = flowing.stream().min(JudgedStates::byMargin);
        if (found.isEmpty()) {
            return found;
        }
        double step = tanks.length > 1 ? tanks[1] - tanks[0] : 0;
        double factor = found.get().heatFactor();
        Stream<HarderCase> beside = Stream.of(-0.5, 0.5)
                .map(half -> found.get().tankC() + half * step)
                .filter(tankC -> tankC > tanks[0] && tankC < tanks[tanks.length - 1])
                .map(tankC -> loop.at(tankC, factor))
                .filter(state -> state.search().circulates());
        return Stream.concat(found.stream(), beside).min(JudgedStates::byMargin);
    }

    private static int byMargin(HarderCase one, HarderCase other) {
        return Double.compare(marginK(one), marginK(other));
    }

    private static double marginK(HarderCase state) {
        return state.search()
                .forward()
                .map(SteadyFlow::boilMargin)
                .orElseThrow()
                .marginK();
    }

    /** All that the rules look at: first what is worst. */
    List<HarderCase> cases() {
        return Stream.of(boils, still, nearest).flatMap(Optional::stream).toList();
    }

    /** The worst; empty where the coil takes no heat. */
    public Optional<HarderCase> worst() {
        return cases().stream().findFirst();
    }

    /** Least distance from boiling, K; nought where in some state nothing flows without boiling: the water is at its boiling point then. */
    public static double boilMarginK(HarderCase worst) {
        return worst.search().forward().map(flow -> flow.boilMargin().marginK()).orElse(0.0);
    }
}

package loftcoil.engine.run;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.tank.WaterHeat;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Thirty January days of tank and loop, no draws, by the march and by an adaptive integrator of a
 * well-kept library, stopped where the fire is lit and goes out. The set-up prints how far each ends from its own finest run: the tolerance is
 * chosen so that the integrator is no more exact than the march.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class MarchAgainstIntegratorBenchmark {

    private static final int DAYS = 30;
    private static final double LIT_FROM_S = 17 * 3600;
    private static final double LIT_UNTIL_S = 21 * 3600;
    private static final double DAY_S = 86_400;
    private static final double SUN_STEP_S = 600;

    /**
     * Step of the march, s, and the error the integrator allows itself in a step, K. The pairs end about equally exact: the
     * first by the heat held, which is what a year's figures are made of; the second and third by the worst layer.
     */
    @Param({"60/0.003", "60/0.015", "300/0.1"})
    public String pair;

    /** Whether the sun shines in through the panes; it changes every ten minutes, and the integrator stops there. */
    @Param({"false", "true"})
    public boolean sun;

    private int stepS;
    private double toleranceK;

    private SystemPlan plan = plan(false);

    private static SystemPlan plan(boolean sun) {
        Design bothy = Example.orchardBothy().withCoilHeatKW(0.3);
        Design plain = new Design(
                bothy.name(),
                bothy.site(),
                bothy.tank(),
                bothy.coil(),
                bothy.fire(),
                bothy.coldLegs(),
                bothy.hotLegs(),
                sun ? bothy.window() : Optional.empty(),
                bothy.taps(),
                List.of(),
                bothy.safety(),
                bothy.notes());
        return SystemPlan.of(plain, Pace.USUAL, Heatings.of(plain));
    }

    /** Prints the errors that make the comparison fair. */
    @Setup
    public void errors() {
        plan = plan(sun);
        stepS = Integer.parseInt(pair.substring(0, pair.indexOf('/')));
        toleranceK = Double.parseDouble(pair.substring(pair.indexOf('/') + 1));
        double[] finestMarch = marched(5);
        double[] finestIntegrated = integrated(1e-5);
        double[] marched = marched(stepS);
        double[] integrated = integrated(toleranceK);
        System.out.printf(
                "# march, %d s: worst layer %.2g K, mean %.2g K; integrator, %g K: worst layer %.2g K, mean %.2g K;"
                        + " the two finest: %.2g K apart, mean %.2g K%n",
                stepS,
                apart(marched, finestMarch),
                Math.abs(mean(marched) - mean(finestMarch)),
                toleranceK,
                apart(integrated, finestIntegrated),
                Math.abs(mean(integrated) - mean(finestIntegrated)),
                apart(finestMarch, finestIntegrated),
                Math.abs(mean(finestMarch) - mean(finestIntegrated)));
    }

    private static double mean(double[] tempC) {
        return Arrays.stream(tempC).average().orElseThrow();
    }

    private static double apart(double[] one, double[] other) {
        double most = 0;
        for (int i = 0; i < one.length; i++) {
            most = Math.max(most, Math.abs(one[i] - other[i]));
        }
        return most;
    }

    /** The march. */
    @Benchmark
    public double[] march() {
        return marched(stepS);
    }

    /** The same equations under the integrator. */
    @Benchmark
    public double[] integrator() {
        return integrated(toleranceK);
    }

    private double[] marched(int stepS) {
        SystemMarch march = new SystemMarch(plan.with(Pace.USUAL.withStepS(stepS)));
        for (int day = 0; day < DAYS; day++) {
            march.day(day);
        }
        double[] tempC = new double[Pace.USUAL.layers()];
        for (int i = 0; i < tempC.length; i++) {
            tempC[i] = march.tank().tempC(i);
        }
        return tempC;
    }

    private double[] integrated(double tolerance) {
        TankLoopEquations equations = new TankLoopEquations(plan);
        double joules = 4186 * tolerance;
        double[] state = new double[equations.getDimension()];
        Arrays.fill(state, WaterHeat.jPerKg(plan.layers().startC()));
        for (int day = 0; day < DAYS; day++) {
            state = part(equations, joules, false, state, new Piece(day, 0, LIT_FROM_S));
            state = part(equations, joules, true, state, new Piece(day, LIT_FROM_S, LIT_UNTIL_S));
            state = part(equations, joules, false, state, new Piece(day, LIT_UNTIL_S, DAY_S));
        }
        double[] tempC = new double[state.length];
        for (int i = 0; i < state.length; i++) {
            tempC[i] = WaterHeat.tempC(state[i]);
        }
        return tempC;
    }

    /** A stretch of a day in which the fire does not change. */
    private record Piece(int day, double fromS, double untilS) {}

    private double[] part(TankLoopEquations equations, double joules, boolean lit, double[] state, Piece piece) {
        equations.lit = lit;
        double longestS = sun ? SUN_STEP_S : piece.untilS() - piece.fromS();
        double[] now = state;
        for (double at = piece.fromS(); at < piece.untilS(); at += longestS) {
            equations.minute = (int) ((piece.day() * DAY_S + at) / 60);
            ODEIntegrator integrator = new DormandPrince853Integrator(1e-7, 7200, joules, 0);
            now = integrator
                    .integrate(equations, new ODEState(0, now), longestS)
                    .getPrimaryState();
        }
        return now;
    }
}

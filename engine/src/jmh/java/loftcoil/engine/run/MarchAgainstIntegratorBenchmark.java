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
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.nonstiff.HighamHall54Integrator;
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
 * Thirty January days of tank and loop, no draws, by the march in the steps of a year and by adaptive integrators of a well-kept library,
 * each at equal error: the integrator is allowed as much in a step as keeps its own error just below that of the march. An error is the root mean
 * square, over the layers at the thirty midnights, of what parts a run from the finest of its kind. The set-up prints all of them, and that the two
 * finest agree.
 */
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

    /** Steps of the finest march, s, and what the finest integrator is allowed in a step, K. */
    private static final int FINEST_S = 5;

    private static final double FINEST_K = 1e-5;
    private static final double LOOSEST_K = 10;
    private static final double TIGHTER = 1.25;

    /** The march, in the steps and with the cuts of a year. */
    @State(Scope.Benchmark)
    public static class Marched {

        /** A year has 48; a search through many years 12. */
        @Param({"12", "48"})
        public int layers;

        /** Whether the sun shines in through the panes; it changes every ten minutes, and the integrator stops there. */
        @Param({"false", "true"})
        public boolean sun;

        SystemPlan plan;
        double error;
        double[][] finest;

        /** Finds the error of the march. */
        @Setup
        public void find() {
            plan = plan();
            finest = run(plan.with(plan.pace().withStepS(FINEST_S)));
            error = apart(run(plan), finest);
            System.out.printf("# march: %.2g K%n", error);
        }

        private SystemPlan plan() {
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
            return SystemPlan.of(plain, Pace.YEAR.everyDay().withLayers(layers), Heatings.of(plain));
        }

        static double[][] run(SystemPlan plan) {
            SystemMarch march = new SystemMarch(plan);
            double[][] midnights = new double[DAYS][plan.layers().layers()];
            for (int day = 0; day < DAYS; day++) {
                march.day(day);
                for (int i = 0; i < midnights[day].length; i++) {
                    midnights[day][i] = march.tank().tempC(i);
                }
            }
            return midnights;
        }
    }

    /** The same equations under an integrator. */
    @State(Scope.Benchmark)
    public static class Integrated extends Marched {

        /** Dormand and Prince's of eighth order, theirs of fifth, and Higham and Hall's of fifth. */
        @Param({"DormandPrince853", "DormandPrince54", "HighamHall54"})
        public String integrator;

        private double toleranceK;

        /** Finds what it is allowed in a step. */
        @Override
        @Setup
        public void find() {
            super.find();
            double[][] finestIntegrated = run(FINEST_K);
            toleranceK = LOOSEST_K;
            double own = apart(run(toleranceK), finestIntegrated);
            while (own > error) {
                toleranceK /= TIGHTER;
                own = apart(run(toleranceK), finestIntegrated);
            }
            System.out.printf(
                    "# %s, %.2g K in a step: %.2g K; the two finest: %.2g K apart%n",
                    integrator, toleranceK, own, apart(finest, finestIntegrated));
        }

        double[][] run() {
            return run(toleranceK);
        }

        private double[][] run(double tolerance) {
            TankLoopEquations equations = new TankLoopEquations(plan);
            double[] state = new double[layers];
            Arrays.fill(state, WaterHeat.jPerKg(plan.layers().startC()));
            double[][] midnights = new double[DAYS][layers];
            for (int day = 0; day < DAYS; day++) {
                state = part(equations, tolerance, false, state, new Piece(day, 0, LIT_FROM_S));
                state = part(equations, tolerance, true, state, new Piece(day, LIT_FROM_S, LIT_UNTIL_S));
                state = part(equations, tolerance, false, state, new Piece(day, LIT_UNTIL_S, DAY_S));
                for (int i = 0; i < layers; i++) {
                    midnights[day][i] = WaterHeat.tempC(state[i]);
                }
            }
            return midnights;
        }

        private double[] part(
                TankLoopEquations equations, double tolerance, boolean lit, double[] state, Piece piece) {
            equations.lit = lit;
            double longestS = sun ? SUN_STEP_S : piece.untilS() - piece.fromS();
            double[] now = state;
            for (double at = piece.fromS(); at < piece.untilS(); at += longestS) {
                equations.minute = (int) ((piece.day() * DAY_S + at) / 60);
                now = integrator(4186 * tolerance)
                        .integrate(equations, new ODEState(0, now), longestS)
                        .getPrimaryState();
            }
            return now;
        }

        private ODEIntegrator integrator(double joules) {
            return switch (integrator) {
                case "DormandPrince853" -> new DormandPrince853Integrator(1e-7, 7200, joules, 0);
                case "DormandPrince54" -> new DormandPrince54Integrator(1e-7, 7200, joules, 0);
                case "HighamHall54" -> new HighamHall54Integrator(1e-7, 7200, joules, 0);
                default -> throw new IllegalStateException(integrator);
            };
        }
    }

    /** A stretch of a day in which the fire does not change. */
    private record Piece(int day, double fromS, double untilS) {}

    private static double apart(double[][] one, double[][] other) {
        double squares = 0;
        int places = 0;
        for (int day = 0; day < one.length; day++) {
            for (int i = 0; i < one[day].length; i++) {
                squares += Math.pow(one[day][i] - other[day][i], 2);
                places++;
            }
        }
        return Math.sqrt(squares / places);
    }

    /** The march. */
    @Benchmark
    public double[][] march(Marched month) {
        return Marched.run(month.plan);
    }

    /** The same equations under the integrator. */
    @Benchmark
    public double[][] integrator(Integrated month) {
        return month.run();
    }
}

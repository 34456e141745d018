package loftcoil.engine.run;

import java.util.concurrent.TimeUnit;
import loftcoil.engine.HigherEachTime;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of a year of the whole system: made ready, marched, and both; and how the march grows with layers. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class YearBenchmark {

    /** Layers of the tank. */
    @Param({"12", "24", "48"})
    public int layers;

    private final Design design = Example.orchardBothy();
    private final SystemPlan plan = SystemPlan.of(design, Pace.USUAL, Heatings.of(design));

    private final HigherEachTime higher = new HigherEachTime();

    /** From a design to the year's figures, all searched and tabulated anew. */
    @Benchmark
    public YearRun wholeYear() {
        return YearRun.of(higher.of(design), Pace.YEAR.withLayers(layers));
    }

    /** The march alone: 396 days of one-minute steps, run-in counted. */
    @Benchmark
    public YearRun marchMinutes() {
        return YearRun.of(plan.with(Pace.USUAL.withLayers(layers)));
    }

    /** The same in half-minute steps. */
    @Benchmark
    public YearRun marchHalfMinutes() {
        return YearRun.of(plan.with(Pace.USUAL.withLayers(layers).withStepS(30)));
    }
}

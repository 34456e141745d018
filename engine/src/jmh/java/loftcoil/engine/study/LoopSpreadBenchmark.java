package loftcoil.engine.study;

import java.util.concurrent.TimeUnit;
import loftcoil.engine.design.Example;
import loftcoil.engine.loop.Circuit;
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

/** Time for a Monte Carlo of 10 000 loops on one and on two threads, side by side: two should take little more than half. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class LoopSpreadBenchmark {

    private static final int LOOPS = 10_000;

    private final Circuit circuit = Example.orchardBothy().circuit(40);

    /** Threads the loops are shared over. */
    @Param({"1", "2"})
    public int threads;

    /** Draws, searches and sums up all loops. */
    @Benchmark
    public SearchOutcome<LoopSpread> tenThousandLoops() {
        return LoopSpread.of(circuit, LoopDoubts.USUAL, new SpreadPlan(LOOPS, 1, threads), ProgressListener.NONE);
    }
}

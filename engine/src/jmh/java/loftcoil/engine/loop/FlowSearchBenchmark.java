package loftcoil.engine.loop;

import java.util.concurrent.TimeUnit;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time to find every flow of one loop, both ways, and to make a loop ready for that. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class FlowSearchBenchmark {

    private final Design design = Example.orchardBothy();
    private final Circuit lit = design.circuit(40);
    private final Circuit night = design.circuitFireOut(40);

    /** Fire lit: the search the sheet, the lessons and the year are made of. */
    @Benchmark
    public FlowSearch searchLit() {
        return lit.search();
    }

    /** Fire out: six decades of flow to look through instead of less than two. */
    @Benchmark
    public FlowSearch searchFireOut() {
        return night.search();
    }

    /** Checking a design and tabulating the losses of its legs. */
    @Benchmark
    public Circuit prepare() {
        return design.circuit(40);
    }
}

package loftcoil.engine.sheet;

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
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time of the verdict on the orchard bothy, warm: its steady part, aim 50 ms; with starts, aim 2 s; with starts and year, aim 2.5 s.
 * The first of a Java machine takes some thirty times that of the steady part, for its classes and tables are made then.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class SafetyVerdictBenchmark {

    private final Design design = Example.orchardBothy();

    private final HigherEachTime higher = new HigherEachTime();

    /** The steady states and the rules. */
    @Benchmark
    public SafetyVerdict steady() {
        return SafetyVerdict.quick(higher.of(design));
    }

    /** These and the starts. */
    @Benchmark
    public SafetyVerdict withStarts() {
        return SafetyVerdict.withoutYear(higher.of(design));
    }

    /** All of it. */
    @Benchmark
    public SafetyVerdict whole() {
        return SafetyVerdict.whole(higher.of(design));
    }
}

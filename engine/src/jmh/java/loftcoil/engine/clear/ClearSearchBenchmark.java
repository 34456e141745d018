package loftcoil.engine.clear;

import java.util.concurrent.TimeUnit;
import loftcoil.engine.design.Changes;
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

/** Time of the search for what clears the dangers of a design; the aim is 10 s on two idle cores, the first of a process too. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 0)
@Measurement(iterations = 4)
@Fork(2)
public class ClearSearchBenchmark {

    private final Design design = Example.orchardBothy();

    private double aboveM;

    /** A hair higher each time: of a design that was looked at before, much is known already. */
    @Benchmark
    public Clears fourDangers() {
        aboveM += 1e-6;
        return ClearSearch.of(Changes.apply(design, "site.altitudeM", Double.toString(620 + aboveM)));
    }
}

package loftcoil.engine.build;

import java.util.concurrent.TimeUnit;
import loftcoil.engine.HigherEachTime;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.run.FirstFire;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of a build sheet, and of the first hour that a lesson draws at each move of a slider. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class BuildSheetBenchmark {

    private final Design design = Example.orchardBothy();

    private final HigherEachTime higher = new HigherEachTime();

    /** All of the sheet: the year, a thousand loops by chance, the first hour. */
    @Benchmark
    public BuildSheet wholeSheet() {
        return BuildSheet.of(higher.of(design));
    }

    /** The first hour alone. */
    @Benchmark
    public FirstFire firstHour() {
        return FirstFire.of(design);
    }
}

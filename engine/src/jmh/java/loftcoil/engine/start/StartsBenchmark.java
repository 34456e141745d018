package loftcoil.engine.start;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import loftcoil.engine.HigherEachTime;
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

/** Time of all starts of a loop that starts well and of one that swings long. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class StartsBenchmark {

    private final Design well = Example.orchardBothy();
    private final Design wide =
            Changes.apply(Changes.apply(well, "loop.tube", "EN1057 35x1.2"), "coil.heatKW", "0.8");

    private final HigherEachTime higher = new HigherEachTime();

    /** The orchard bothy, its tank to 75 °C. */
    @Benchmark
    public Optional<Starts> well() {
        return Starts.of(higher.of(well), OptionalDouble.of(75));
    }

    /** Wide pipe and a small fire. */
    @Benchmark
    public Optional<Starts> wideAndWeak() {
        return Starts.of(higher.of(wide), OptionalDouble.of(75));
    }
}

package loftcoil.runner.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A clock and a processor that are moved by hand. */
class TimeWatchTest {

    private long nanos = 7;
    private Optional<Duration> spent = Optional.of(Duration.ofSeconds(3));

    private TimeWatch watch() {
        return new TimeWatch(Duration.ofSeconds(10), Duration.ofSeconds(60), () -> spent, () -> nanos);
    }

    private void pass(double seconds, double computing) {
        nanos += (long) (seconds * 1e9);
        spent = spent.map(before -> before.plusMillis((long) (computing * 1000)));
    }

    @Test
    void aBusyComputerEndsNothingEarly() {
        TimeWatch watch = watch();
        assertEquals(Optional.empty(), watch.look());
        pass(50, 2);
        assertEquals(Optional.empty(), watch.look());
        assertEquals(Duration.ofSeconds(2), watch.computed());
    }

    @Test
    void whatComputesTooLongIsEnded() {
        TimeWatch watch = watch();
        watch.look();
        pass(10, 10);
        assertEquals(Optional.empty(), watch.look());
        pass(0.1, 0.1);
        assertEquals(Optional.of(Outcome.Cause.TIME), watch.look());
    }

    @Test
    void severalThreadsComputeFasterThanTheClock() {
        TimeWatch watch = watch();
        watch.look();
        pass(3, 11);
        assertEquals(Optional.of(Outcome.Cause.TIME), watch.look());
    }

    @Test
    void whatSleepsIsEndedByTheClock() {
        TimeWatch watch = watch();
        watch.look();
        pass(60, 0);
        assertEquals(Optional.empty(), watch.look());
        pass(0.2, 0);
        assertEquals(Optional.of(Outcome.Cause.WAIT), watch.look());
        assertEquals(Duration.ZERO, watch.computed());
    }

    @Test
    void whatTheMachineComputedBeforeDoesNotCount() {
        spent = Optional.of(Duration.ofHours(1));
        TimeWatch watch = watch();
        assertEquals(Optional.empty(), watch.look());
        pass(1, 1);
        assertEquals(Optional.empty(), watch.look());
    }

    @Test
    void whereProcessorTimeIsNotToldTheClockDecides() {
        spent = Optional.empty();
        TimeWatch watch = watch();
        watch.look();
        pass(59, 0);
        assertEquals(Optional.empty(), watch.look());
        pass(2, 0);
        assertEquals(Optional.of(Outcome.Cause.WAIT), watch.look());
    }
}

package loftcoil.runner.show;

import java.util.List;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.chart.ChartDrawer;
import loftcoil.runner.chart.ChartOrder;
import loftcoil.runner.session.SessionException;

/**
 * Does in the background what the learner would otherwise wait for: the lessons that the list tells of, a Java machine for the lesson that
 * was opened, and the first chart of this process, which takes ten times as long as any later one.
 */
final class Warming {

    /** Time for a browser to show the lesson that was given to it, before what it does not need yet takes the computer from it. */
    private static final long READING_MS = 600;

    private final ScheduledThreadPoolExecutor background = new ScheduledThreadPoolExecutor(1, work -> {
        Thread thread = new Thread(work, "warming");
        thread.setDaemon(true);
        return thread;
    });

    Warming() {
        background.setExecuteExistingDelayedTasksAfterShutdownPolicy(false);
    }

    /** Draws a chart that nobody sees. */
    static void chart() {
        ChartOrder.Axis axis = new ChartOrder.Axis("warming", "");
        ChartOrder.Curve curve = new ChartOrder.Curve("line", List.of(0.0, 1.0), List.of(0.0, 1.0));
        ChartDrawer.draw(new ChartOrder("warming", axis, axis, List.of(curve), List.of()));
    }

    /** Does this as soon as what came before is done. */
    void later(Runnable work) {
        background.execute(() -> quietly(work));
    }

    /** Does this once a lesson that is being given out can be read. */
    void afterwards(Runnable work) {
        ScheduledFuture<?> unused = background.schedule(() -> quietly(work), READING_MS, TimeUnit.MILLISECONDS);
    }

    private static void quietly(Runnable work) {
        try {
            work.run();
        } catch (SessionException | RefusedException notNow) {
            // Nobody has asked for anything yet: who needs it will meet the same trouble and be told.
            return;
        }
    }

    void close() {
        // Not interrupted: what is being opened is closed by its owner.
        background.shutdown();
    }
}

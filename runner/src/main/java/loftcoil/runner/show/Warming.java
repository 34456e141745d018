package loftcoil.runner.show;

import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import loftcoil.runner.chart.ChartDrawer;
import loftcoil.runner.chart.ChartOrder;
import loftcoil.runner.session.SessionException;

/**
 * Does in the background what the learner would otherwise wait for: a Java machine for the lesson that was opened, and the
 * first chart of this process, which takes ten times as long as any later one.
 */
final class Warming {

    private final ExecutorService background = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "warming");
        thread.setDaemon(true);
        return thread;
    });

    /** Draws a chart that nobody sees. */
    void chart() {
        ChartOrder.Axis axis = new ChartOrder.Axis("warming", "");
        ChartOrder.Curve curve = new ChartOrder.Curve("line", List.of(0.0, 1.0), List.of(0.0, 1.0));
        later(() -> ChartDrawer.draw(new ChartOrder("warming", axis, axis, List.of(curve), List.of())));
    }

    /** Does this as soon as what came before is done. */
    void later(Runnable work) {
        background.execute(() -> {
            try {
                work.run();
            } catch (SessionException notNow) {
                // Nobody has asked for anything yet: the run that needs it will meet the same trouble and tell it.
                return;
            }
        });
    }

    void close() {
        // Not interrupted: what is being opened is closed by its owner.
        background.shutdown();
    }
}

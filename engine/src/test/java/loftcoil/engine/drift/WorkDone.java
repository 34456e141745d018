package loftcoil.engine.drift;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.function.Function;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.run.DayRun;
import loftcoil.engine.run.YearRun;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.study.LoopDoubts;
import loftcoil.engine.study.LoopSpread;
import loftcoil.engine.study.ProgressListener;
import loftcoil.engine.study.SpreadPlan;

/**
 * Prints how many kilobytes each kind of work makes on this thread, the second time that it is done, of a design not looked at before. In
 * a Java machine of its own that has the quick compiler alone the count does not depend on how busy the computer is: what is searched,
 * marched or tabulated more often than before shows in it.
 */
final class WorkDone {

    private static final int TANK_C = 40;
    private static final int LOOPS = 200;
    private static final double HAIR_M = 1e-3;
    private static final int KB = 1024;

    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private static int times;

    private WorkDone() {}

    public static void main(String[] args) {
        tell("all steady flows, fire lit", design -> design.circuit(TANK_C).search());
        tell("all steady flows, fire out", design -> design.circuitFireOut(TANK_C)
                .search());
        tell("sheet of a design", design -> Sheet.of(design, TANK_C));
        tell("loops by chance", WorkDone::loops);
        tell("a day", design -> DayRun.of(design, 1));
        tell("a year", YearRun::of);
        tell("whole build sheet", BuildSheet::of);
    }

    private static Object loops(Design design) {
        return LoopSpread.of(
                design.circuit(TANK_C), LoopDoubts.USUAL, new SpreadPlan(LOOPS, 1, 1), ProgressListener.NONE);
    }

    private static void tell(String what, Function<Design, Object> work) {
        work.apply(another());
        Design design = another();
        long before = THREADS.getCurrentThreadAllocatedBytes();
        Object made = work.apply(design);
        long kb = (THREADS.getCurrentThreadAllocatedBytes() - before) / KB;
        if (made == null) {
            throw new IllegalStateException(what + " came to nothing");
        }
        System.out.println(what + ": " + kb);
    }

    /** The bothy a hair higher up each time, so that nothing is known of it yet. */
    private static Design another() {
        Design bothy = Example.orchardBothy();
        times++;
        return Changes.apply(
                bothy, "site.altitudeM", Double.toString(bothy.site().altitudeM() + times * HAIR_M));
    }
}

package loftcoil.runner.show;

import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.watch.Watch;

/**
 * Works out the build sheet of the learner's own design in the background, says how far that is, and ends it where that is wanted. One
 * of a design that has been changed meanwhile is ended.
 */
final class BuildDesk {

    private final LearnerStore store;
    private final WholeSheets sheets;
    private final ExecutorService background = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "loftcoil-build-sheet");
        thread.setDaemon(true);
        return thread;
    });
    private Optional<Work> last = Optional.empty();

    BuildDesk(LearnerStore store, WholeSheets sheets) {
        this.store = store;
        this.sheets = sheets;
    }

    /** How far it is. */
    synchronized View.Building view() {
        return current().map(Work::view).orElseGet(() -> new View.Building(View.BuildState.NONE, 0, ""));
    }

    /** Begins unless it is done or under way. */
    synchronized View.Building start() {
        if (current().filter(work -> !work.ended()).isEmpty()) {
            Work work = new Work(store.design());
            last = Optional.of(work);
            background.execute(work);
        }
        return view();
    }

    /** Ends it; nothing of it is kept. */
    synchronized View.Building stop() {
        last.ifPresent(Work::stop);
        return view();
    }

    /** As much of the sheet as follows without a year and a start: some milliseconds of work. */
    BuildSheet half() {
        return sheets.half();
    }

    void close() {
        synchronized (this) {
            last.ifPresent(Work::stop);
        }
        background.shutdown();
    }

    private Optional<Work> current() {
        Design now = store.design();
        Optional<Work> same = last.filter(work -> work.design.equals(now));
        if (same.isEmpty()) {
            last.ifPresent(Work::stop);
        }
        return same;
    }

    /** One sheet of one design. */
    private final class Work implements Runnable, Watch {

        private final Design design;
        private volatile boolean cancelled;
        private volatile boolean done;
        private volatile String trouble = "";

        Work(Design design) {
            this.design = design;
        }

        @Override
        public void run() {
            try {
                sheets.build(this);
                done = true;
            } catch (Watch.StoppedException stopped) {
                cancelled = true;
            } catch (RefusedException cannotBe) {
                trouble = SafetyWords.why(cannotBe, store.units());
            }
        }

        @Override
        public boolean cancelled() {
            return cancelled;
        }

        void stop() {
            cancelled = true;
        }

        /** Whether it has to be begun again to have the sheet. */
        boolean ended() {
            return !done && (cancelled || !trouble.isEmpty());
        }

        View.Building view() {
            if (done) {
                return new View.Building(View.BuildState.DONE, 100, "");
            }
            if (!trouble.isEmpty()) {
                return new View.Building(View.BuildState.REFUSED, 0, "The year could not be judged: " + trouble);
            }
            return cancelled ? new View.Building(View.BuildState.STOPPED, 0, "Stopped.") : sheets.far();
        }
    }
}

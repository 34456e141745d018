package loftcoil.runner.show;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;
import loftcoil.engine.clear.ClearSearch;
import loftcoil.engine.clear.ClearWords;
import loftcoil.engine.clear.Cleared;
import loftcoil.engine.clear.Clears;
import loftcoil.engine.clear.Way;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.study.ProgressListener;
import loftcoil.engine.words.Units;

/**
 * Searches in the background what would clear the dangers of the learner's own design. A search of a design that has been changed
 * meanwhile is ended, and what it found is no longer told.
 */
final class ClearsDesk {

    private static final String NOT_SEARCHED = ClearWords.notSearched().metric();

    private final LearnerStore store;
    private final ExecutorService background = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "loftcoil-clears");
        thread.setDaemon(true);
        return thread;
    });
    private Optional<Search> last = Optional.empty();

    ClearsDesk(LearnerStore store) {
        this.store = store;
    }

    /** How far the search of the design is, or what it found. */
    synchronized View.Clears view() {
        return current()
                .map(search -> search.view(store.units()))
                .orElseGet(() -> new View.Clears(View.ClearState.NONE, 0, 0, List.of(), NOT_SEARCHED));
    }

    /** Begins to search unless that is done or under way. */
    synchronized View.Clears start() {
        if (current().filter(search -> !search.stopped()).isEmpty()) {
            Search search = new Search(store.design());
            last = Optional.of(search);
            background.execute(search);
        }
        return view();
    }

    /** Ends the search; what was found until then is told. */
    synchronized View.Clears stop() {
        last.ifPresent(Search::stop);
        return view();
    }

    /** What a finished search found for the design; empty where there was none. */
    synchronized Optional<Clears> found() {
        return current().flatMap(Search::result);
    }

    /**
     * A way that a finished search found for the design as it is.
     *
     * @param danger code of the danger
     * @param number among its ways and then its rarer ones, from 0
     * @throws UnknownNameException where there is none
     */
    synchronized Way way(String danger, int number) {
        return found().stream()
                .flatMap(clears -> clears.dangers().stream())
                .filter(cleared -> cleared.kind().code().equals(danger))
                .flatMap(cleared -> Stream.concat(cleared.ways().stream(), cleared.rarer().stream()))
                .skip(Math.max(0, number))
                .findFirst()
                .orElseThrow(() -> new UnknownNameException(
                        "Your design has been changed since that was found; search once more."));
    }

    void close() {
        synchronized (this) {
            last.ifPresent(Search::stop);
        }
        background.shutdown();
    }

    /** The last search, where it is of the design as it is now. */
    private Optional<Search> current() {
        Design now = store.design();
        Optional<Search> same = last.filter(search -> search.design.equals(now));
        if (same.isEmpty()) {
            last.ifPresent(Search::stop);
        }
        return same;
    }

    /** One search of one design. */
    private static final class Search implements Runnable, ProgressListener {

        private final Design design;
        private volatile boolean cancelled;
        private int done;
        private int of;
        private Optional<Clears> result = Optional.empty();
        private String trouble = "";

        Search(Design design) {
            this.design = design;
        }

        @Override
        public void run() {
            try {
                Clears found = ClearSearch.of(design, this);
                synchronized (this) {
                    result = Optional.of(found);
                }
            } catch (RefusedException cannotBe) {
                synchronized (this) {
                    trouble = "It could not be searched: " + cannotBe.getMessage();
                }
            }
        }

        @Override
        public synchronized void done(int doneNow, int ofNow) {
            done = doneNow;
            of = ofNow;
        }

        @Override
        public boolean cancelled() {
            return cancelled;
        }

        void stop() {
            cancelled = true;
        }

        /** Whether it was ended before its end. */
        synchronized boolean stopped() {
            return !trouble.isEmpty()
                    || result.map(clears -> !clears.complete()).orElse(cancelled);
        }

        synchronized Optional<Clears> result() {
            return result;
        }

        synchronized View.Clears view(Units units) {
            List<View.ClearedDanger> dangers = result.map(clears -> clears.dangers().stream()
                            .map(cleared -> danger(cleared, units))
                            .toList())
                    .orElse(List.of());
            if (!trouble.isEmpty()) {
                return new View.Clears(View.ClearState.STOPPED, done, of, List.of(), trouble);
            }
            if (result.isEmpty()) {
                View.ClearState state = cancelled ? View.ClearState.STOPPED : View.ClearState.SEARCHING;
                return new View.Clears(state, done, of, dangers, "");
            }
            boolean complete = result.get().complete();
            return new View.Clears(
                    complete ? View.ClearState.DONE : View.ClearState.STOPPED,
                    done,
                    of,
                    dangers,
                    complete ? "" : "The search was stopped; this is what it had found.");
        }
    }

    private static View.ClearedDanger danger(Cleared cleared, Units units) {
        return new View.ClearedDanger(
                cleared.kind().code(),
                units.words(ClearWords.head(cleared)),
                words(cleared.ways(), units),
                cleared.rarer().isEmpty() ? "" : units.words(ClearWords.rarerHead()),
                words(cleared.rarer(), units));
    }

    private static List<String> words(List<Way> ways, Units units) {
        return ways.stream().map(way -> units.words(way.words())).toList();
    }
}

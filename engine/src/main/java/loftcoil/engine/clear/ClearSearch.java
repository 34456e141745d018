package loftcoil.engine.clear;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.Function;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.SafetyVerdict;
import loftcoil.engine.study.ProgressListener;
import loftcoil.engine.study.Workers;

/**
 * Searches for what would clear the dangers of a design.
 *
 * <p>For each danger every lever of the table is tried: the smallest of its steps that is enough is found by halving, judged only as
 * deeply as it takes to see the danger at all. What is found so is a guess. The guesses are taken up cheapest first, and each is shown
 * only where the <em>whole</em> verdict of the changed design has the danger no more, and no other danger or caution that was not there
 * before. Where no single lever does it, pairs are tried, both moved together, and where no pair does, a smaller coil alone and with others.
 * The search ends after a fixed number of whole verdicts
 * and not after a time, so that it finds the same on any machine.
 */
public final class ClearSearch {

    /** How many whole verdicts it may take in all, the design's own not counted; a second or less of a processor each. */
    public static final int MOST_WHOLE = 14;

    /** How many of these may go into a second and third way for a danger that has one. */
    private static final int MORE_WHOLE = 4;

    private static final int THREADS = 2;

    private final Judge judge;
    private final ProgressListener watch;
    private final Telling telling;

    private ClearSearch(Judge judge, ProgressListener watch) {
        this.judge = judge;
        this.watch = watch;
        this.telling = new Telling(watch);
    }

    /**
     * Searches to the end.
     *
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed
     */
    public static Clears of(Design design) {
        return of(design, ProgressListener.NONE);
    }

    /**
     * Searches on two threads; takes some seconds.
     *
     * @param design a design
     * @param watch is told how far the search is, and may stop it; interrupting the waiting thread stops it too
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed
     */
    public static Clears of(Design design, ProgressListener watch) {
        SafetyVerdict whole = SafetyVerdict.whole(design);
        List<CautionKind> dangers =
                whole.of(Severity.DANGER).stream().map(Caution::kind).distinct().toList();
        return dangers.isEmpty()
                ? new Clears(design, List.of(), true, 0)
                : new ClearSearch(new Judge(design, whole), watch).search(dangers);
    }

    private Clears search(List<CautionKind> dangers) {
        Map<String, List<Guess.Try>> steps = new ConcurrentHashMap<>();
        List<Quest> quests =
                dangers.stream().map(danger -> new Quest(danger, judge, steps)).toList();
        List<Runnable> screens =
                quests.stream().flatMap(quest -> quest.screens().stream()).toList();
        telling.expect(screens.size() + Math.min(MOST_WHOLE, quests.size() * Quest.TRIED));
        work(screens);
        takeUp(quests);
        pairs(quests);
        further(quests, Quest::lastResort);
        confirm(quests, MORE_WHOLE, Quest::next);
        confirm(quests, MOST_WHOLE, Quest::nextConduct);
        boolean complete = !stopped();
        if (complete) {
            telling.end();
        }
        // Of a danger that a stopped search had not come to, nothing is known: it may not say that nothing was found.
        List<Cleared> found = quests.stream()
                .map(Quest::cleared)
                .filter(danger -> complete || !danger.ways().isEmpty())
                .toList();
        return new Clears(judge.design(), found, complete, judge.wholeVerdicts());
    }

    /** Pairs for those dangers for which nothing was found by now, in rounds, until each has enough or none is left. */
    private void pairs(List<Quest> quests) {
        List<Quest> open = quests.stream().filter(Quest::open).toList();
        while (!stopped()) {
            List<Runnable> round =
                    open.stream().flatMap(quest -> quest.nextPairs().stream()).toList();
            if (round.isEmpty()) {
                break;
            }
            telling.expect(round.size());
            work(round);
        }
        takeUp(quests);
    }

    /** One more try for those dangers for which nothing was found by now. */
    private void further(List<Quest> quests, Consumer<Quest> tried) {
        List<Quest> open = quests.stream().filter(Quest::open).toList();
        telling.expect(open.size());
        work(open.stream().<Runnable>map(quest -> () -> tried.accept(quest)).toList());
        takeUp(quests);
    }

    /** One way for each danger, if there is any; what is found for one is offered for the others. */
    private void takeUp(List<Quest> quests) {
        confirm(quests, MOST_WHOLE, quest -> quest.open() ? quest.next() : Optional.empty());
        adopt(quests);
    }

    /** Guesses are judged wholly in rounds, one of each danger, until each has enough, none is left or so many are judged. */
    private void confirm(List<Quest> quests, int most, Function<Quest, Optional<Runnable>> next) {
        while (!stopped()) {
            List<Runnable> round = new ArrayList<>();
            for (Quest quest : quests) {
                if (judge.wholeVerdicts() + round.size() < most) {
                    next.apply(quest).ifPresent(round::add);
                }
            }
            if (round.isEmpty()) {
                return;
            }
            work(round);
        }
    }

    /** What was found for one danger may clear another for which nothing was. */
    private void adopt(List<Quest> quests) {
        if (!stopped()) {
            List<Way> all = quests.stream()
                    .flatMap(quest -> quest.ways().stream())
                    .sorted(Way.CHEAPEST_FIRST)
                    .distinct()
                    .toList();
            quests.stream().filter(Quest::open).forEach(quest -> quest.adopt(all));
        }
    }

    private void work(List<Runnable> pieces) {
        if (!pieces.isEmpty() && !stopped()) {
            telling.part();
            Workers.eachLong(pieces.size(), THREADS, i -> pieces.get(i).run(), telling);
        }
    }

    private boolean stopped() {
        return watch.cancelled() || Thread.currentThread().isInterrupted();
    }
}

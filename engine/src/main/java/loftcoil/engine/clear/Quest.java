package loftcoil.engine.clear;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.Stream;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.study.NamedValue;
import loftcoil.engine.study.Rebuild;

/** The search for what clears one danger: what is guessed, taken up and found so far. For use by several threads. */
final class Quest {

    /** How many ways are shown for a danger. */
    static final int SHOWN = 3;

    /** How many whole verdicts one danger may take, conduct apart. */
    static final int TRIED = 4;

    /** Into how many parts the way of a pair is cut, both levers moved by the same share of theirs. */
    private static final int PARTS = 8;

    private static final Comparator<Guess> CHEAPEST_FIRST = Comparator.comparing(Guess::way, Way.CHEAPEST_FIRST);

    private final CautionKind danger;
    private final Judge judge;
    private final Depth depth;
    private final PriorityQueue<Guess> guesses = new PriorityQueue<>(CHEAPEST_FIRST);
    private final PriorityQueue<Guess> conduct = new PriorityQueue<>(CHEAPEST_FIRST);
    private final List<Way> ways = new ArrayList<>();
    private final List<Way> rarer = new ArrayList<>();
    private int tried;

    Quest(CautionKind danger, Judge judge) {
        this.danger = danger;
        this.judge = judge;
        this.depth = judge.shows(danger);
    }

    /** One piece of work a lever: its smallest step that may be enough. */
    List<Runnable> screens() {
        return levers().<Runnable>map(lever -> () -> {
                    Optional<Guess> guess = Guess.smallest(tries(lever), danger, judge, depth);
                    guess.ifPresent(found -> add(lever.conduct() ? conduct : guesses, found));
                })
                .toList();
    }

    /** One piece of work a pair of levers, as many pairs as the depth leaves time for. */
    List<Runnable> pairs() {
        List<List<Guess.Try>> built = levers().filter(lever -> !lever.conduct())
                .map(this::tries)
                .filter(tries -> !tries.isEmpty())
                .toList();
        List<List<List<Guess.Try>>> pairs = new ArrayList<>();
        for (int i = 0; i < built.size(); i++) {
            for (List<Guess.Try> other : built.subList(i + 1, built.size())) {
                pairs.add(Stream.of(built.get(i), other)
                        .sorted(Comparator.comparingDouble(Quest::allTheWay))
                        .toList());
            }
        }
        return pairs.stream()
                .sorted(Comparator.comparingDouble(
                        pair -> pair.get(0).get(0).way().cost()
                                + pair.get(1).get(0).way().cost()))
                .limit(mostPairs())
                .<Runnable>map(pair -> () -> pair(pair.get(0), pair.get(1)).ifPresent(found -> add(guesses, found)))
                .toList();
    }

    private static double allTheWay(List<Guess.Try> tries) {
        return tries.get(tries.size() - 1).way().cost();
    }

    /** The cheaper moved all its way and the dearer as little as is enough; where that is none, both by the same share. */
    private Optional<Guess> pair(List<Guess.Try> cheaper, List<Guess.Try> dearer) {
        Way all = cheaper.get(cheaper.size() - 1).way();
        List<Guess.Try> alone = new ArrayList<>();
        dearer.forEach(step -> add(alone, together(all, step.way())));
        Optional<Guess> found = Guess.smallest(alone, danger, judge, depth);
        if (found.isPresent()) {
            return found;
        }
        List<Guess.Try> shared = new ArrayList<>();
        for (int part = 1; part <= PARTS; part++) {
            add(shared, together(share(cheaper, part), share(dearer, part)));
        }
        return Guess.smallest(shared, danger, judge, depth);
    }

    private int mostPairs() {
        return switch (depth) {
            case QUICK -> 60;
            case YEAR -> 8;
            case STARTS, HOT_STARTS -> 8;
            case WHOLE -> 0;
        };
    }

    /** A start that goes wrong only on the hottest tank of the year wants a cooler tank: no pipe helps there. */
    private Stream<Lever> levers() {
        return Levers.ALL.stream()
                .filter(lever -> lever.clears().contains(danger))
                .filter(lever -> depth != Depth.HOT_STARTS || Levers.cools(lever));
    }

    private synchronized void add(PriorityQueue<Guess> to, Guess guess) {
        to.add(guess);
    }

    /** Whether no way was found by now. */
    synchronized boolean open() {
        return ways.isEmpty();
    }

    /** The next guess to be judged wholly, taken out; none where enough was found or tried. */
    synchronized Optional<Runnable> next() {
        if (ways.size() >= SHOWN || tried >= TRIED) {
            return Optional.empty();
        }
        Optional<Guess> cheapest = Optional.ofNullable(guesses.poll());
        cheapest.ifPresent(guess -> tried++);
        return cheapest.map(guess -> () -> confirm(guess, guesses, ways));
    }

    /** The next guess of conduct; one is enough. */
    synchronized Optional<Runnable> nextConduct() {
        return rarer.isEmpty()
                ? Optional.ofNullable(conduct.poll()).map(guess -> () -> confirm(guess, conduct, rarer))
                : Optional.empty();
    }

    private void confirm(Guess guess, PriorityQueue<Guess> again, List<Way> found) {
        boolean clean = judge.clean(guess.design(), danger, Depth.WHOLE);
        boolean gone = clean || judge.gone(guess.design(), danger, Depth.WHOLE);
        synchronized (this) {
            if (clean) {
                found.add(guess.way());
            } else if (!gone) {
                // The rough judgement was too kind: a little more may do.
                guess.further().ifPresent(again::add);
            }
        }
    }

    synchronized Cleared cleared() {
        return new Cleared(
                danger,
                ways.stream().sorted(Way.CHEAPEST_FIRST).toList(),
                rarer.stream().sorted(Way.CHEAPEST_FIRST).toList());
    }

    private List<Guess.Try> tries(Lever lever) {
        List<Guess.Try> tries = new ArrayList<>();
        List<Lever.Step> steps = lever.steps().of(judge.design());
        for (int i = 0; i < steps.size(); i++) {
            add(tries, lever.way(steps.get(i), i));
        }
        return tries;
    }

    private static Way share(List<Guess.Try> tries, int part) {
        return tries.get((tries.size() * part + PARTS - 1) / PARTS - 1).way();
    }

    private static Way together(Way one, Way other) {
        List<NamedValue> changes = new ArrayList<>(one.changes());
        changes.addAll(other.changes());
        return new Way(
                changes,
                Steps.SENTENCES.say("and", "first", one.words(), "second", other.words()),
                one.cost() + other.cost());
    }

    /** A step that the design cannot take, or that leaves it as it is, is none. */
    private void add(List<Guess.Try> tries, Way way) {
        try {
            Design changed = Rebuild.applied(judge.design(), way.changes());
            if (!changed.equals(judge.design())) {
                tries.add(new Guess.Try(way, changed));
            }
        } catch (RefusedException cannotBe) {
            // It reaches beyond what can be built: the others may not.
        }
    }
}

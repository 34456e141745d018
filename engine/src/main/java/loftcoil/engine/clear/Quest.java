package loftcoil.engine.clear;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Queue;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.study.NamedValue;
import loftcoil.engine.study.Rebuild;
import loftcoil.engine.words.MeasuredText;

/** The search for what clears one danger: what is guessed, taken up and found so far. For use by several threads. */
final class Quest {

    /** How many ways are shown for a danger. */
    static final int SHOWN = 3;

    /** How many pairs are found before no more are tried. */
    private static final int PAIRS = 2;

    /** How many whole verdicts one danger may take, conduct and the last resort apart. */
    static final int TRIED = 4;

    /** How many more for the last resort. */
    private static final int TRIED_LAST = 3;

    /** Into how many parts the way of a pair is cut, both levers moved by the same share of theirs. */
    private static final int PARTS = 8;

    private static final Comparator<Guess> CHEAPEST_FIRST = Comparator.comparing(Guess::way, Way.CHEAPEST_FIRST);

    private final CautionKind danger;
    private final Judge judge;
    private final Depth shown;
    private final Depth depth;
    private final PriorityQueue<Guess> guesses = new PriorityQueue<>(CHEAPEST_FIRST);
    private final PriorityQueue<Guess> unsure = new PriorityQueue<>(CHEAPEST_FIRST);
    private final PriorityQueue<Guess> conduct = new PriorityQueue<>(CHEAPEST_FIRST);
    private final Map<String, List<Guess.Try>> known;
    private final List<Way> ways = new ArrayList<>();
    private final List<Way> rarer = new ArrayList<>();
    private Optional<Queue<List<Lever>>> pairs = Optional.empty();
    private int pairsFound;
    private int tried;
    private int mostTried = TRIED;
    private Optional<Guess.Try> furthest = Optional.empty();

    /**
     * Nothing is tried yet.
     *
     * @param known the steps of each lever for the design, made where they are first asked for; shared with the quests for its other dangers
     */
    Quest(CautionKind danger, Judge judge, Map<String, List<Guess.Try>> known) {
        this.danger = danger;
        this.judge = judge;
        this.known = known;
        this.shown = judge.shows(danger);
        this.depth = judge.hotTank() && Levers.isOfFlow(danger) ? onHotTank(shown) : shown;
    }

    /** One piece of work a lever: its smallest step that may be enough. */
    List<Runnable> screens() {
        return levers().<Runnable>map(lever -> () -> {
                    Optional<Guess> guess = smallest(tries(lever), depth);
                    guess.ifPresent(found -> add(lever.conduct() ? conduct : guesses, found));
                })
                .toList();
    }

    /**
     * The next pairs of levers to be tried, one piece of work each: as many as are still wanted, so that none is tried in vain. Empty where
     * enough were found or none is left.
     */
    synchronized List<Runnable> nextPairs() {
        if (pairs.isEmpty()) {
            pairs = Optional.of(new ArrayDeque<>(pairs()));
        }
        Queue<List<Lever>> left = pairs.orElseThrow();
        List<Runnable> next = new ArrayList<>();
        for (int wanted = PAIRS - pairsFound; wanted > 0 && !left.isEmpty(); wanted--) {
            List<Lever> pair = left.remove();
            next.add(() -> pair(pair).ifPresent(this::addPair));
        }
        return next;
    }

    private synchronized void addPair(Guess guess) {
        guesses.add(guess);
        pairsFound++;
    }

    /**
     * The last resort, where nothing else that is built was found: a smaller coil alone, with one of the strong levers, with two of them. Each
     * ends where the thread is interrupted.
     */
    void lastResort() {
        mostTried = tried + TRIED_LAST;
        Levers.ALL.stream()
                .filter(lever -> Levers.isLastResort(lever) && lever.clears().contains(danger))
                .map(this::tries)
                .filter(tries -> !tries.isEmpty())
                .forEach(this::lastResort);
    }

    private void lastResort(List<Guess.Try> last) {
        List<List<Guess.Try>> beside = Levers.strongest().stream()
                .map(levers -> levers.stream()
                        .filter(lever -> lever.clears().contains(danger))
                        .map(this::tries)
                        .filter(tries -> !tries.isEmpty())
                        .reduce(this::shared))
                .flatMap(Optional::stream)
                .toList();
        Optional<Guess> found = smallest(last, deep());
        for (int i = 0; i < beside.size() && found.isEmpty(); i++) {
            if (Thread.currentThread().isInterrupted()) {
                return;
            }
            found = pair(last, beside.get(i));
        }
        found.ifPresent(guess -> add(guesses, guess));
    }

    /** Takes over what was found for another danger and clears this one too; its whole verdict is known. */
    synchronized void adopt(List<Way> others) {
        others.stream()
                .filter(way -> ways.size() < SHOWN && !ways.contains(way))
                .filter(way -> judge.clean(way.appliedTo(judge.design()), danger, Depth.WHOLE))
                .forEach(ways::add);
    }

    synchronized List<Way> ways() {
        return List.copyOf(ways);
    }

    private List<List<Lever>> pairs() {
        List<Lever> built = Levers.ALL.stream()
                .filter(lever -> lever.clears().contains(danger) && !lever.conduct() && !Levers.isLastResort(lever))
                .filter(lever -> !tries(lever).isEmpty())
                .toList();
        List<List<Lever>> pairs = new ArrayList<>();
        for (int i = 0; i < built.size(); i++) {
            for (Lever other : built.subList(i + 1, built.size())) {
                pairs.add(List.of(built.get(i), other));
            }
        }
        return pairs.stream()
                .filter(this::helps)
                .sorted(Comparator.comparingInt(Levers::promise)
                        .thenComparingDouble(
                                pair -> pair.get(0).cost() + pair.get(1).cost()))
                .limit(mostPairs())
                .toList();
    }

    /** Under a tank that comes too near boiling a loop alone is no help. */
    private boolean helps(List<Lever> pair) {
        return !judge.hotTank() || pair.stream().anyMatch(Levers::cools);
    }

    private Optional<Guess> pair(List<Lever> pair) {
        List<List<Guess.Try>> byCost = pair.stream()
                .map(this::tries)
                .sorted(Comparator.comparingDouble(Quest::allTheWay))
                .toList();
        return pair(byCost.get(0), byCost.get(1));
    }

    /** How deeply what may change tank and loop is judged: where starts go wrong, on the tank that comes of it. */
    private Depth deep() {
        return depth == Depth.STARTS ? Depth.HOT_STARTS : depth;
    }

    private static double allTheWay(List<Guess.Try> tries) {
        return tries.get(tries.size() - 1).way().cost();
    }

    /** The cheaper moved all its way and the dearer as little as is enough; where that is none, both by the same share. */
    private Optional<Guess> pair(List<Guess.Try> cheaper, List<Guess.Try> dearer) {
        Way all = cheaper.get(cheaper.size() - 1).way();
        List<Guess.Try> alone = new ArrayList<>();
        dearer.forEach(step -> add(alone, together(all, step.way())));
        Optional<Guess> found = guessed(alone, deep());
        if (found.isPresent()) {
            // Of the cheaper too no more than is needed, with the dearer as it was found; only what comes of both is
            // marched finely.
            Way enough = found.get().way();
            List<Guess.Try> less = new ArrayList<>();
            cheaper.forEach(step -> dearer.stream()
                    .filter(other -> together(all, other.way()).equals(enough))
                    .forEach(other -> add(less, together(step.way(), other.way()))));
            return smallest(less, deep()).or(() -> found.flatMap(this::sure));
        }
        return smallest(shared(cheaper, dearer), deep());
    }

    private List<Guess.Try> shared(List<Guess.Try> one, List<Guess.Try> other) {
        List<Guess.Try> shared = new ArrayList<>();
        for (int part = 1; part <= PARTS; part++) {
            add(shared, together(share(one, part), share(other, part)));
        }
        return shared;
    }

    private Optional<Guess> smallest(List<Guess.Try> tries, Depth depthOf) {
        return guessed(tries, depthOf).flatMap(this::sure);
    }

    private Optional<Guess> guessed(List<Guess.Try> tries, Depth depthOf) {
        tries.stream().reduce((first, second) -> second).ifPresent(this::went);
        return Guess.smallest(tries, danger, judge, depthOf);
    }

    private Optional<Guess> sure(Guess coarse) {
        return danger == CautionKind.START ? coarse.sure(danger, judge) : Optional.of(coarse);
    }

    /** The dearest that was tried is what is told where nothing is found. */
    private synchronized void went(Guess.Try far) {
        if (furthest.filter(known -> Way.CHEAPEST_FIRST.compare(known.way(), far.way()) >= 0)
                .isEmpty()) {
            furthest = Optional.of(far);
        }
    }

    private int mostPairs() {
        return switch (depth) {
            case QUICK -> 60;
            case YEAR, STARTS, HOT_STARTS -> 8;
            case SURE_STARTS, FINE_YEAR, WHOLE -> 0;
        };
    }

    /** Where the tank comes too near boiling, what a loop does is judged on it: nothing is clear of it that is clear on a cool one. */
    private static Depth onHotTank(Depth shown) {
        return switch (shown) {
            case QUICK -> Depth.YEAR;
            case STARTS -> Depth.HOT_STARTS;
            case YEAR, HOT_STARTS, SURE_STARTS, FINE_YEAR, WHOLE -> shown;
        };
    }

    /** A start that goes wrong only on the hottest tank of the year wants a cooler tank: no pipe helps there. */
    private Stream<Lever> levers() {
        return Levers.ALL.stream()
                .filter(lever -> lever.clears().contains(danger))
                .filter(lever -> !Levers.isLastResort(lever))
                .filter(lever -> shown != Depth.HOT_STARTS || Levers.cools(lever));
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
        if (ways.size() >= SHOWN || tried >= mostTried) {
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
            } else if (gone && unsure(guess)) {
                // Out of danger and not yet sure: that caution is a new one, and it takes a good deal more.
                guess.muchFurther().ifPresent(again::add);
                unsure.add(guess);
            } else if (!gone) {
                // The rough judgement was too kind: a little more may do, of a start a good deal more.
                (danger == CautionKind.START ? guess.muchFurther() : guess.further()).ifPresent(again::add);
            }
        }
    }

    private boolean unsure(Guess guess) {
        return judge.come(guess.design(), Depth.WHOLE)
                .filter(List.of(CautionKind.START_UNSURE)::equals)
                .isPresent();
    }

    synchronized Cleared cleared() {
        return new Cleared(
                danger,
                ways.stream().sorted(Way.CHEAPEST_FIRST).toList(),
                rarer.stream().sorted(Way.CHEAPEST_FIRST).toList(),
                ways.isEmpty() ? because() : Optional.empty());
    }

    /** What is in the way of the dearest that was tried, as far as it was judged; what comes nearest goes first. */
    private Optional<MeasuredText> because() {
        if (!unsure.isEmpty()) {
            return Optional.of(Steps.SENTENCES.say(
                    "because-unsure", "what", unsure.peek().way().words()));
        }
        return furthest.map(far -> {
            if (!judge.gone(far.design(), danger, deep())) {
                return Steps.SENTENCES.say("because-stays", "what", far.way().words());
            }
            List<CautionKind> come = judge.come(far.design(), deep()).orElse(List.of());
            return come.isEmpty()
                    ? Steps.SENTENCES.say("because-open")
                    : Steps.SENTENCES.say(
                            "because-comes",
                            "what",
                            far.way().words(),
                            "codes",
                            come.stream().map(CautionKind::code).collect(Collectors.joining(", ")));
        });
    }

    private List<Guess.Try> tries(Lever lever) {
        return known.computeIfAbsent(lever.code(), code -> made(lever));
    }

    private List<Guess.Try> made(Lever lever) {
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
                Lever.rounded(one.cost() + other.cost()));
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

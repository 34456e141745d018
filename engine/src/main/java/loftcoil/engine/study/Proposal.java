package loftcoil.engine.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The cheapest loop that does what is wanted: for each tube allowed, height of the tank and thickness of lagging are searched, and
 * the tubes compared.
 *
 * @param best the cheapest that meets all aims; empty where none does
 * @param nearest the best of each tube looked at, cheapest first among those that meet the aims, then those that come nearest
 */
public record Proposal(Optional<Candidate> best, List<Candidate> nearest) {

    /** Keeps a copy of the list. */
    public Proposal {
        nearest = List.copyOf(nearest);
    }

    /**
     * Searches.
     *
     * @param wanted what is wanted
     * @param watch is told of each loop looked at, and may stop: the proposal is then the best of those looked at
     */
    public static Outcome<Proposal> of(Wanted wanted, ProgressListener watch) {
        List<String> tubes = wanted.choices().tubes();
        List<Candidate> nearest = new ArrayList<>();
        int all = tubes.size() * TubeSearch.MOST_LOOKS;
        for (int i = 0; i < tubes.size(); i++) {
            TubeSearch search = new TubeSearch(wanted, tubes.get(i), watch, i * TubeSearch.MOST_LOOKS, all);
            boolean finished = search.run();
            search.best().ifPresent(nearest::add);
            if (!finished) {
                return new Outcome.Cancelled<>(sorted(nearest), i * TubeSearch.MOST_LOOKS + search.looks(), all);
            }
        }
        return new Outcome.Finished<>(sorted(nearest));
    }

    private static Proposal sorted(List<Candidate> candidates) {
        List<Candidate> sorted = new ArrayList<>(candidates);
        sorted.sort((one, two) -> one.beats(two) ? -1 : two.beats(one) ? 1 : 0);
        return new Proposal(sorted.stream().filter(Candidate::meetsAims).findFirst(), sorted);
    }
}

package loftcoil.bench;

import java.util.ArrayList;
import java.util.List;
import loftcoil.runner.chart.ChartDrawer;
import loftcoil.runner.session.Outcome;
import loftcoil.runner.session.Session;
import loftcoil.runner.session.SessionSetup;

/**
 * Measures how long a snippet takes against bare JShell in the same process, on the same snippets in the same run, and
 * how long a redraw takes while a value is dragged. Warm, the two by turns.
 */
final class SnippetBench {

    private static final int WARM_ROUNDS = 4;
    private static final int ROUNDS = 12;
    private static final int REDRAWS = 200;

    private SnippetBench() {}

    /** Measures and prints. */
    static void run() {
        SessionSetup setup = SessionSetup.usual();
        try (Session session = Session.open(setup);
                BareShell bare = new BareShell(setup)) {
            compare(session, bare);
            redraw(session);
        }
    }

    private static void compare(Session session, BareShell bare) {
        Times ours = new Times("our session, a snippet");
        Times again = new Times("our session, unchanged");
        Times theirs = new Times("bare JShell in-process");
        List<Double> ratios = new ArrayList<>();
        List<String> snippets = Snippets.twenty();
        for (int round = 0; round < WARM_ROUNDS + ROUNDS; round++) {
            boolean warm = round >= WARM_ROUNDS;
            for (int i = 0; i < snippets.size(); i++) {
                // A comment makes it another text, so that it is compiled in each round on both sides.
                String source = snippets.get(i) + "\n// round " + round;
                String step = "snippet " + i;
                boolean oursFirst = (round + i) % 2 == 0;
                double first = oursFirst ? time(() -> done(session, step, source)) : time(() -> bare.run(source));
                double second = oursFirst ? time(() -> bare.run(source)) : time(() -> done(session, step, source));
                double unchanged = time(() -> done(session, step, source));
                if (warm) {
                    double mine = oursFirst ? first : second;
                    double other = oursFirst ? second : first;
                    ours.add(mine);
                    theirs.add(other);
                    again.add(unchanged);
                    ratios.add(mine / other);
                }
            }
        }
        System.out.println(theirs);
        System.out.println(ours);
        System.out.println(again);
        System.out.printf(
                "ratio of medians %.2f; median of paired ratios %.2f%n",
                ours.median() / theirs.median(), Times.middle(ratios));
    }

    private static void redraw(Session session) {
        Times all = new Times("redraw: set, run, draw");
        Times run = new Times("of it: set and run");
        for (int i = 0; i < REDRAWS + REDRAWS / 4; i++) {
            double at = i * 0.01;
            double ran = time(() -> session.bind("double", "draggedM", "" + at));
            List<Outcome> outcome = new ArrayList<>();
            ran += time(() -> outcome.add(done(session, "drag", Snippets.DRAGGED)));
            double drawn = time(() -> outcome.get(0).trace().charts().forEach(ChartDrawer::draw));
            if (i >= REDRAWS / 4) {
                all.add(ran + drawn);
                run.add(ran);
            }
        }
        System.out.println(all);
        System.out.println(run);
    }

    private static Outcome done(Session session, String step, String source) {
        Outcome outcome = session.run(step, source);
        if (!(outcome instanceof Outcome.Done)) {
            throw new IllegalStateException(source + " gave " + outcome);
        }
        return outcome;
    }

    private static double time(Runnable work) {
        long began = System.nanoTime();
        work.run();
        return (System.nanoTime() - began) / 1e6;
    }
}

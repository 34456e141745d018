package loftcoil.runner.prove;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.DesignFields;
import loftcoil.runner.chart.ChartDrawer;
import loftcoil.runner.lesson.Drag;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.session.Outcome;
import loftcoil.runner.session.Session;

/** Runs the snippets of one lesson in order. */
final class SnippetProof {

    private final Session session;
    private final List<String> faults = new ArrayList<>();
    private int ran;
    private int charts;

    SnippetProof(Session session) {
        this.session = session;
    }

    void take(Step step) {
        if (!(step instanceof Step.Snippet snippet)) {
            return;
        }
        ran++;
        if (snippet.drag().isEmpty()) {
            run(snippet, "");
            return;
        }
        // The ends of the range are where a snippet breaks, if it does; the start comes last, as it stays for what
        // follows.
        Drag drag = snippet.drag().get();
        checkDecided(snippet, drag);
        for (double value : List.of(drag.from(), drag.to(), drag.start())) {
            session.bind("double", drag.variable(), Double.toString(value));
            run(snippet, " with " + drag.variable() + " = " + value);
        }
    }

    private void checkDecided(Step.Snippet snippet, Drag drag) {
        boolean number = Changes.names().contains(drag.decided())
                && Changes.describe(drag.decided()).options().isEmpty();
        if (!drag.decided().isEmpty() && !number) {
            faults.add("snippet " + snippet.id() + ": decided=" + drag.decided()
                    + "; allowed: a change of the design that takes a number, of " + Changes.names());
        }
        boolean field = DesignFields.at(drag.within())
                .filter(known -> !known.unit().isEmpty())
                .isPresent();
        if (!drag.within().isEmpty() && !field) {
            faults.add("snippet " + snippet.id() + ": within=" + drag.within()
                    + "; allowed: the path of a field of the design that measures something");
        }
    }

    private void run(Step.Snippet snippet, String with) {
        Outcome outcome = session.run(snippet.id(), snippet.source());
        String where = "snippet " + snippet.id() + with + ": ";
        if (outcome instanceof Outcome.NotJava notJava) {
            notJava.problems()
                    .forEach(p -> faults.add(where + "line " + (snippet.line() + p.line() - 1) + " of the lesson: "
                            + p.words() + " (" + p.compiler() + ")"));
        } else if (outcome instanceof Outcome.Threw threw) {
            faults.add(where + threw.exception() + " " + threw.message());
        } else if (outcome instanceof Outcome.Stopped stopped) {
            faults.add(where + "stopped, " + stopped.cause());
        }
        charts += outcome.trace().charts().size();
        outcome.trace().charts().forEach(order -> {
            if (ChartDrawer.draw(order).says().isBlank()) {
                faults.add(where + "the plot " + order.title() + " says nothing");
            }
        });
    }

    int ran() {
        return ran;
    }

    int charts() {
        return charts;
    }

    List<String> faults() {
        return faults;
    }
}

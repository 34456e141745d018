package loftcoil.runner.exercise;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Change;
import loftcoil.engine.design.Changes;
import loftcoil.engine.words.Numeral;

/**
 * Something of a system that can be changed, within bounds that make sense there.
 *
 * @param change name of the design change
 * @param span where a number is set: the stops it may take; empty where one of the options is chosen
 * @param options texts to choose among; empty where a number is set
 */
public record Lever(String change, Optional<About.Span> span, List<String> options) {

    /** Keeps its own copy. */
    public Lever {
        options = List.copyOf(options);
    }

    /** What it is, in words. */
    public String label() {
        return described().label();
    }

    /** The unit of its number; empty where there is none. */
    public String unit() {
        return described().unit();
    }

    private Change described() {
        return Changes.describe(change);
    }

    /** What it may be set to, in words. */
    public String allowed() {
        return span.map(stops -> Numeral.typed(stops.from()) + " to " + Numeral.typed(stops.to()) + " " + unit())
                .map(String::strip)
                .orElse(String.join(" | ", options));
    }
}

package loftcoil.runner.show;

import java.util.Locale;
import loftcoil.engine.design.Design;
import loftcoil.engine.loop.FlowSearch;

/** What must be said at once of a design that was just changed: that its loop stands or boils. */
final class FlowWarning {

    /** A tank in the afternoon, and one late in a good evening, when a loop is nearest to boiling; °C. */
    private static final double[] TANKS_C = {40, 70};

    private FlowWarning() {}

    /** Markdown for the coolest of the tanks with which the loop does not circulate; empty where it does with each. */
    static String of(Design design) {
        for (double tankC : TANKS_C) {
            FlowSearch found = design.circuit(tankC).search();
            if (found.forward().isEmpty()) {
                return String.format(
                        Locale.ROOT,
                        "**Danger: do not build it like this.** With the whole tank at %.0f °C: %s%n%n",
                        tankC,
                        found.words());
            }
        }
        return "";
    }
}

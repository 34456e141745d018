package loftcoil.engine.caution;

import java.util.Map;
import java.util.Set;
import loftcoil.engine.design.Leg;

/** Anything between coil and tank that can be shut. */
final class ValveInLoop implements CautionRule {

    private static final Set<String> VALVES = Set.of("gate", "gate-half-shut", "gate-nearly-shut", "ball", "check");

    @Override
    public void look(CautionFacts facts, Findings findings) {
        for (Leg leg : facts.design().coldLegs()) {
            look("'" + leg.name() + "'", leg.fittings(), findings);
        }
        for (Leg leg : facts.design().hotLegs()) {
            look("'" + leg.name() + "'", leg.fittings(), findings);
        }
        look("the coil", facts.design().coil().fittings(), findings);
    }

    private static void look(String where, Map<String, Integer> fittings, Findings findings) {
        fittings.forEach((key, count) -> {
            if (count > 0 && VALVES.contains(key)) {
                findings.caution(
                        "LC-VALVE",
                        "There is a valve (%d x %s) in %s. Shut or stuck while the fire burns it makes a sealed boiler"
                                + " that can burst. No valve belongs between the coil and the tank.",
                        count,
                        key,
                        where);
            }
        });
    }
}

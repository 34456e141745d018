package loftcoil.engine.caution;

import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import loftcoil.engine.design.Leg;
import loftcoil.engine.words.Measure;

/** Anything between coil and tank that can be shut. */
final class ValveInLoop implements CautionRule {

    private static final Set<String> VALVES = Set.of("gate", "gate-half-shut", "gate-nearly-shut", "ball", "check");

    @Override
    public void look(CautionFacts facts, Findings findings) {
        for (Leg leg : facts.design().coldLegs()) {
            leg(leg, findings);
        }
        for (Leg leg : facts.design().hotLegs()) {
            leg(leg, findings);
        }
        valves(
                facts.design().coil().fittings(),
                (count, fitting) -> findings.cautionAs(
                        CautionKind.VALVE,
                        "coil",
                        "count",
                        count,
                        "fitting",
                        fitting,
                        "burst",
                        CautionKind.VALVE.part("burst")));
    }

    private static void leg(Leg leg, Findings findings) {
        valves(
                leg.fittings(),
                (count, fitting) -> findings.cautionAs(
                        CautionKind.VALVE,
                        "leg",
                        "count",
                        count,
                        "fitting",
                        fitting,
                        "leg",
                        leg.name(),
                        "burst",
                        CautionKind.VALVE.part("burst")));
    }

    private static void valves(Map<String, Integer> fittings, BiConsumer<Measure, String> found) {
        fittings.forEach((key, count) -> {
            if (count > 0 && VALVES.contains(key)) {
                found.accept(Measure.count(count), key);
            }
        });
    }
}

package loftcoil.engine.caution;

import java.util.Set;
import java.util.TreeSet;
import loftcoil.engine.design.Materials;

/** Zinc, plain steel or aluminium in one water with copper. */
final class MixedMetals implements CautionRule {

    private static final Set<String> EATEN = Set.of("galvanised steel", "plain steel", "aluminium");

    @Override
    public void look(CautionFacts facts, Findings findings) {
        facts.safety()
                .materials()
                .ifPresentOrElse(
                        materials -> judge(materials, findings),
                        () -> findings.ask(
                                "safety.materials",
                                "What is the tank made of, and is there any other metal or plastic pipe? Copper eats galvanised and plain"
                                        + " steel; plastic softens near a fire."));
    }

    private static void judge(Materials materials, Findings findings) {
        Set<String> eaten = new TreeSet<>(materials.inLoop());
        eaten.add(materials.tank());
        eaten.retainAll(EATEN);
        if (!eaten.isEmpty()) {
            findings.caution(
                    "LC-METALS",
                    "Besides the copper tube the water touches %s. Copper dissolved in warm water settles there and eats"
                            + " pits through it in a few years; the loop carries it round, so no order of pipes helps.",
                    String.join(" and ", eaten));
        }
    }
}

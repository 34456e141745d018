package loftcoil.engine.caution;

import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import loftcoil.engine.design.Materials;

/** Zinc, plain steel or aluminium in one water with copper. */
final class MixedMetals implements CautionRule {

    private static final Set<Materials.Metal> EATEN =
            EnumSet.of(Materials.Metal.GALVANISED_STEEL, Materials.Metal.PLAIN_STEEL, Materials.Metal.ALUMINIUM);

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
        Set<String> eaten = new TreeSet<>();
        Stream.concat(materials.inLoop().stream(), Stream.of(materials.tank()))
                .filter(EATEN::contains)
                .forEach(metal -> eaten.add(metal.code()));
        if (!eaten.isEmpty()) {
            findings.caution(
                    "LC-METALS",
                    "Besides the copper tube the water touches %s. Copper dissolved in warm water settles there and eats"
                            + " pits through it in a few years; the loop carries it round, so no order of pipes helps.",
                    String.join(" and ", eaten));
        }
    }
}

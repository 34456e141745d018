package loftcoil.engine.caution;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.Materials;
import loftcoil.engine.design.Tap;
import loftcoil.engine.design.Trunk;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeMetal;
import loftcoil.engine.pipe.TubeTable;

/** Zinc, plain steel or aluminium in one water with copper, or in fresh water by themselves. */
final class MixedMetals implements CautionRule {

    private static final Set<Materials.Metal> EATEN =
            EnumSet.of(Materials.Metal.GALVANISED_STEEL, Materials.Metal.PLAIN_STEEL, Materials.Metal.ALUMINIUM);

    @Override
    public void look(CautionFacts facts, Findings findings) {
        Optional<Materials> materials = facts.safety().materials();
        if (materials.isEmpty()) {
            findings.ask("safety.materials");
        }
        Set<TubeMetal> tubes = tubes(facts.design());
        Set<String> eaten = new TreeSet<>();
        materials.stream()
                .flatMap(said -> Stream.concat(said.inLoop().stream(), Stream.of(said.tank())))
                .filter(EATEN::contains)
                .forEach(metal -> eaten.add(metal.code()));
        if (tubes.contains(TubeMetal.STEEL)) {
            eaten.add(Materials.Metal.PLAIN_STEEL.code());
        }
        if (!eaten.isEmpty()) {
            boolean copper = tubes.contains(TubeMetal.COPPER)
                    || materials
                            .filter(said -> said.tank() == Materials.Metal.COPPER)
                            .isPresent();
            findings.cautionAs(CautionKind.METALS, copper ? "copper" : "alone", "metals", String.join(" and ", eaten));
        }
    }

    private static Set<TubeMetal> tubes(Design design) {
        Stream<String> legs = Stream.of(design.coldLegs(), design.hotLegs())
                .flatMap(List::stream)
                .map(Leg::tube);
        Stream<String> taps = Stream.concat(
                design.taps().stream().map(Tap::tube), design.trunk().stream().map(Trunk::tube));
        return Stream.of(Stream.of(design.coil().tube()), legs, taps)
                .flatMap(tubes -> tubes)
                .flatMap(tube -> TubeTable.find(tube).stream())
                .map(Tube::metal)
                .collect(Collectors.toSet());
    }
}

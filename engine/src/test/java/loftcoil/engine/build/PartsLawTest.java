package loftcoil.engine.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Dwelling;
import loftcoil.engine.pipe.FittingTable;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.RandomDesigns;
import org.junit.jupiter.api.Test;

/** What the lists of a build sheet owe each other, on random designs and the example dwellings. */
class PartsLawTest {

    private static List<Design> many() {
        List<Design> designs = new ArrayList<>(RandomDesigns.some(60, 23));
        for (Dwelling dwelling : Dwelling.values()) {
            designs.add(dwelling.design());
        }
        return designs;
    }

    /** Every fitting that a leg, the coil or a tap has is bought, of each kind as many at least. */
    @Test
    void everyFittingOfTheDesignIsBought() {
        for (Design design : many()) {
            Map<String, Integer> wanted = new HashMap<>();
            List<Map<String, Integer>> all = new ArrayList<>();
            design.coldLegs().forEach(leg -> all.add(leg.fittings()));
            design.hotLegs().forEach(leg -> all.add(leg.fittings()));
            all.add(design.coil().fittings());
            design.taps().forEach(tap -> all.add(tap.fittings()));
            all.forEach(fittings -> fittings.forEach((key, count) -> wanted.merge(key, count, Integer::sum)));
            List<PartsList.Part> parts = PartsList.of(design).parts();
            wanted.forEach((key, count) -> {
                if (count > 0
                        && !List.of("entrance", "exit", "tee-branch", "tee-run").contains(key)) {
                    String words = FittingTable.find(key).orElseThrow().words();
                    double bought = parts.stream()
                            .filter(part -> part.what().metric().startsWith(words + ","))
                            .mapToDouble(part -> part.amount().value())
                            .sum();
                    assertTrue(bought >= count, design.name() + ": " + words + " " + bought + " of " + count);
                }
            });
        }
    }

    /** The tank has one draw port: where several pipes leave it, what parts them is bought, and for each a valve that fits it. */
    @Test
    void pipesThatLeaveByTheOneDrawPortHaveTeesAndValvesOfTheirOwn() {
        for (Design design : many()) {
            List<String> tubes = new ArrayList<>();
            design.trunk().ifPresent(trunk -> tubes.add(trunk.tube()));
            design.taps().stream().filter(tap -> !design.onTrunk(tap)).forEach(tap -> tubes.add(tap.tube()));
            List<PartsList.Part> parts = PartsList.of(design).parts();
            assertEquals(Math.max(0, tubes.size() - 1), amount(parts, "tee at the draw port"), design.name());
            for (String tube : tubes) {
                assertEquals(
                        (double) tubes.stream().filter(tube::equals).count(),
                        amount(parts, "full-bore ball valve for the draw pipe, " + tube),
                        design.name());
            }
        }
    }

    /** A house of four tubes: each change of tube has a reducer, and each bend is of the tube that it belongs to. */
    @Test
    void whereTheTubeChangesThereIsAReducer() {
        Design mixed = Dwelling.ORCHARD_BOTHY.design();
        for (String[] told : new String[][] {
            {"coldLegs[0].tube", "EN1057 28x0.9"},
            {"coldLegs[1].tube", "EN1057 22x0.9"},
            {"coil.tube", "EN1057 22x0.9"},
            {"hotLegs[0].tube", "EN1057 28x0.9"},
            {"hotLegs[0].fittings.elbow90", "0"},
            {"hotLegs[0].fittings.elbow45", "2"},
            {"hotLegs[1].tube", "EN1057 35x1.2"}
        }) {
            mixed = Changes.apply(mixed, told[0], told[1]);
        }
        List<PartsList.Part> parts = PartsList.of(mixed).parts();

        assertEquals(2, amount(parts, "reducer from EN1057 28x0.9 to EN1057 22x0.9"), "C1 to C2, coil to H1");
        assertEquals(1, amount(parts, "reducer from EN1057 35x1.2 to EN1057 28x0.9"), "H1 to H2");
        assertEquals(3, amount(parts, "reducer"));
        assertEquals(2, amount(parts, "45 degree elbow, for EN1057 28x0.9"), "both belong to H1");
        assertEquals(2, amount(parts, "45 degree elbow"));
        assertEquals(0, amount(PartsList.of(Dwelling.ORCHARD_BOTHY.design()).parts(), "reducer"));
    }

    private static double amount(List<PartsList.Part> parts, String begins) {
        return parts.stream()
                .filter(part -> part.what().metric().startsWith(begins))
                .mapToDouble(part -> part.amount().value())
                .sum();
    }

    /** Each pipe of the drawing is cut, held and bought, and nothing else is. */
    @Test
    void everyMarkOfTheDrawingIsCutAndHeldAndNoOther() {
        for (Design design : many()) {
            Drawing drawing = Drawing.of(design);
            List<String> drawn = new ArrayList<>();
            drawing.pipes().forEach(pipe -> drawn.add(pipe.mark()));
            drawing.taps().forEach(pipe -> drawn.add(pipe.mark()));
            List<String> cut = CutMaker.of(design).pieces().stream()
                    .map(piece -> piece.mark().replaceFirst("-.*", ""))
                    .distinct()
                    .sorted()
                    .toList();
            assertEquals(drawn.stream().sorted().toList(), cut, design.name());
            for (CutList.Piece piece : CutMaker.of(design).pieces()) {
                assertTrue(
                        PartsList.of(design).parts().stream()
                                .anyMatch(part -> part.what().metric().contains(piece.tube())),
                        design.name() + " " + piece.tube());
            }
            List<String> ports =
                    drawing.ports().stream().map(Drawing.Port::label).toList();
            assertEquals(List.of("cold port", "return port", "draw port"), ports);
        }
    }
}

package loftcoil.engine.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loftcoil.engine.build.CutList.Bar;
import loftcoil.engine.build.CutList.Piece;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.SafeBothy;
import loftcoil.engine.words.MeasuredText;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** No tube is lost between drawing, pieces and the lengths to buy. */
class CutListLawTest {

    private static final Design BOTHY = Example.orchardBothy();

    @Property(tries = 60, seed = "7")
    void piecesAndWasteAddUpToWhatIsBought(
            @ForAll @DoubleRange(min = 0, max = 8) double addedM, @ForAll @IntRange(min = 0, max = 5) int elbows) {
        CutList cuts = CutMaker.of(BOTHY.withAddedRunM(addedM).withElbowsPerLeg(elbows));
        Map<String, Double> cutMm = new HashMap<>();
        cuts.pieces().forEach(piece -> cutMm.put(piece.mark(), piece.cutMm().value()));
        assertEquals(cuts.pieces().size(), cutMm.size(), "marks are told apart");
        List<String> placed = new ArrayList<>();
        for (Bar bar : cuts.bars()) {
            double used = bar.marks().stream().mapToDouble(cutMm::get).sum() / 1000;
            double saws = (bar.marks().size() - 1) * StockCutter.SAW_MM / 1000;
            assertEquals(used, bar.usedM().value(), 1e-9);
            assertEquals(
                    bar.stockM().value(), bar.usedM().value() + bar.wasteM().value(), 1e-9);
            assertTrue(bar.wasteM().value() >= saws - 1e-9, "saw cuts fit into the waste");
            placed.addAll(bar.marks());
        }
        assertEquals(
                cutMm.keySet().stream().sorted().toList(),
                placed.stream().sorted().toList());
    }

    @Test
    void aTrunkIsCutOnceAndHasOneTeeFewerThanTaps() {
        Design shared = SafeBothy.merged(
                Example.orchardBothyJson(),
                """
                {"trunk": {"tube": "EN1057 28x0.9", "lengthM": 4, "fittings": {"elbow90": 1}}}
                """);
        CutList cuts = CutMaker.of(shared);
        assertEquals(4000, centresMm(cuts, "T0-"), 1e-6);
        assertEquals(1000 * shared.taps().get(2).lengthM(), centresMm(cuts, "T3-"), 1e-6);
        assertTrue(cuts.rules().stream().anyMatch(rule -> rule.metric().contains("one tee fewer than taps")));
        assertEquals(
                List.of("EN1057 28x0.9 2.0"),
                PipeParts.of(shared, cuts).stream()
                        .filter(part -> part.what().metric().startsWith("tee"))
                        .map(part -> part.what().metric().replaceFirst(".*for ", "") + " "
                                + part.amount().value())
                        .toList());
    }

    private static double centresMm(CutList cuts, String mark) {
        return cuts.pieces().stream()
                .filter(piece -> piece.mark().startsWith(mark))
                .mapToDouble(piece -> piece.centreMm().value())
                .sum();
    }

    @Property(tries = 60, seed = "8")
    void noPieceIsLongerThanALengthAsSold(
            @ForAll @DoubleRange(min = 0, max = 20) double addedM, @ForAll @IntRange(min = 0, max = 3) int elbows) {
        CutList cuts = CutMaker.of(BOTHY.withAddedRunM(addedM).withElbowsPerLeg(elbows));
        cuts.pieces().forEach(piece -> assertTrue(piece.cutMm().value() <= 3000, piece.mark()));
    }

    @Property(tries = 60, seed = "9")
    void aLegIsItsPiecesAndTheirTakeOff(
            @ForAll @DoubleRange(min = 0, max = 8) double addedM, @ForAll @IntRange(min = 0, max = 5) int elbows) {
        Design design = BOTHY.withAddedRunM(addedM).withElbowsPerLeg(elbows);
        CutList cuts = CutMaker.of(design);
        List<Leg> legs = new ArrayList<>(design.coldLegs());
        legs.addAll(design.hotLegs());
        for (Leg leg : legs) {
            List<Piece> pieces = cuts.pieces().stream()
                    .filter(piece -> piece.leg().equals(leg.name()))
                    .toList();
            double centre =
                    pieces.stream().mapToDouble(p -> p.centreMm().value()).sum();
            double cutAndOff = pieces.stream()
                    .mapToDouble(p -> p.cutMm().value() + p.takeOffMm().value())
                    .sum();
            assertEquals(1000 * leg.lengthM(), centre, 1e-6, leg.name());
            assertEquals(centre, cutAndOff, 1e-6, leg.name());
        }
    }

    @Test
    void aLegOfSevenMetresWithoutFittingsIsJoinedByTwoCouplings() {
        Design design = BOTHY.withElbowsPerLeg(0).withAddedRunM(6.2);
        CutList cuts = CutMaker.of(design);
        Leg leg = design.hotLegs().stream()
                .filter(one -> one.lengthM() > 6.1)
                .findFirst()
                .orElseThrow();
        List<MeasuredText> joints = cuts.pieces().stream()
                .filter(piece -> piece.leg().equals(leg.name()))
                .map(Piece::between)
                .toList();
        assertEquals(3, joints.size(), joints.toString());
        int couplings = PartsList.of(design).parts().stream()
                .filter(part -> part.what().metric().equals("coupling, for EN1057 22x0.9"))
                .mapToInt(part -> (int) part.amount().value())
                .sum();
        assertTrue(couplings >= 2, "couplings: " + couplings);
    }

    @Test
    void fittingsOfThePartsListAreThoseOfTheDesign() {
        PartsList parts = PartsList.of(BOTHY);
        int elbows = parts.parts().stream()
                .filter(part -> part.what().metric().startsWith("sharp 90 degree elbow"))
                .mapToInt(part -> (int) part.amount().value())
                .sum();
        int legs = 2 + 1 + 1 + 2;
        int coil = 4;
        int taps = 5 + 6 + 6;
        assertEquals(legs + coil + taps, elbows);
    }

    @Test
    void tooShortAPieceIsNamed() {
        CutList cuts = CutMaker.of(BOTHY.withElbowsPerLeg(20));
        assertTrue(
                cuts.rules().stream()
                        .anyMatch(rule -> rule.metric().contains("Too short")
                                && rule.metric().contains("C2-1")),
                cuts.rules().toString());
        assertTrue(CutMaker.of(BOTHY).rules().stream()
                .noneMatch(rule -> rule.metric().contains("Too short")));
    }
}

package loftcoil.engine.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;

class ProposalLawTest {

    private static final Design BOTHY = Example.orchardBothy();
    private static final Aims AIMS = new Aims(50, 0.018, 20, 12);

    @Test
    void noLoopOfAFineGridIsCheaper() {
        Choices choices = new Choices(List.of("EN1057 22x0.9", "EN1057 28x0.9"), 1.4, 3.2, 60);
        Wanted wanted = new Wanted(BOTHY, AIMS, choices, Prices.INVENTED);
        Candidate best =
                Proposal.of(wanted, ProgressListener.NONE).result().best().orElseThrow();
        Candidate grid = grid(wanted).orElseThrow();
        // Half a per cent for the last millimetre and centimetre, to which the proposal is rounded up.
        assertTrue(
                best.cost() <= 1.005 * grid.cost(),
                best.cost() + " against " + grid.cost() + " of " + grid.tube() + " " + grid.baseM() + " m "
                        + grid.laggingMm() + " mm");
    }

    @Test
    void whatIsProposedMeetsTheAimsWhenReckonedAfresh() {
        Candidate best =
                Proposal.of(wanted(AIMS), ProgressListener.NONE).result().best().orElseThrow();
        var lit = best.design().circuit(50).search().forward().orElseThrow();
        assertTrue(lit.flowKgPerS() >= 0.018);
        assertTrue(lit.boilMargin().marginK() >= 20);
        assertTrue(NightLoss.watts(best.design(), 50) <= 12);
        assertEquals(best.tube(), best.design().coil().tube());
        assertEquals(best.baseM(), best.design().tank().baseM(), 1e-9);
    }

    @Test
    void harderAimsCostNoLess() {
        double easy = cost(new Aims(50, 0.012, 20, 40));
        double harder = cost(new Aims(50, 0.024, 20, 40));
        assertTrue(harder >= 0.995 * easy, harder + " against " + easy);
    }

    @Test
    void theSameQuestionGetsTheSameAnswer() {
        assertEquals(
                Proposal.of(wanted(AIMS), ProgressListener.NONE).result(),
                Proposal.of(wanted(AIMS), ProgressListener.NONE).result());
    }

    @Test
    void whereNothingDoesTheNearestIsToldWithWhatItLacks() {
        Proposal proposal = Proposal.of(wanted(new Aims(50, 0.9, 20, 12)), ProgressListener.NONE)
                .result();
        assertTrue(proposal.best().isEmpty());
        assertTrue(proposal.nearest().get(0).lacks() > 0);
        assertTrue(proposal.nearest().get(0).flowKgPerS() < 0.9);
    }

    @Test
    void aStoppedSearchKeepsTheBestOfItsLooks() {
        ProgressListener stops = new StopsAfter(40);
        Outcome<Proposal> outcome = Proposal.of(wanted(AIMS), stops);
        Outcome.Cancelled<?> cancelled = assertInstanceOf(Outcome.Cancelled.class, outcome);
        assertEquals(40, cancelled.done());
        assertEquals(1, outcome.result().nearest().size());
    }

    /** Mass of a metre of tube by EN 1057, from memory: 15 x 0.7 0.280 kg, 22 x 0.9 0.531 kg, 28 x 0.9 0.682 kg. */
    @Test
    void copperByWeightAsTheTubeTablesHaveItFromMemory() {
        assertEquals(0.280, LoopCost.copperKg("EN1057 15x0.7", 1), 0.001);
        assertEquals(0.682, LoopCost.copperKg("EN1057 28x0.9", 1), 0.001);
        assertEquals(0.531, LoopCost.copperKg("EN1057 22x0.9", 1), 0.001);
    }

    @Test
    void everyBadQuestionIsRefusedByName() {
        RefusedException aims = assertThrows(RefusedException.class, () -> new Aims(200, -1, Double.NaN, -1));
        assertEquals(4, aims.faults().size());
        RefusedException choices = assertThrows(RefusedException.class, () -> new Choices(List.of("pipe"), 3, 2, 1000));
        assertEquals(3, choices.faults().size());
        assertThrows(RefusedException.class, () -> new Choices(List.of(), 1, 2, 10));
        assertThrows(RefusedException.class, () -> new Prices(-1, 0, 0));
    }

    private static Wanted wanted(Aims aims) {
        return new Wanted(
                BOTHY, aims, new Choices(List.of("EN1057 22x0.9", "EN1057 28x0.9"), 1.4, 3.2, 60), Prices.INVENTED);
    }

    private static double cost(Aims aims) {
        return Proposal.of(wanted(aims), ProgressListener.NONE)
                .result()
                .best()
                .orElseThrow()
                .cost();
    }

    private static Optional<Candidate> grid(Wanted wanted) {
        Optional<Candidate> best = Optional.empty();
        for (String tube : wanted.choices().tubes()) {
            for (double baseM = 1.4; baseM <= 3.2; baseM += 0.05) {
                for (double laggingMm = 0; laggingMm <= 60; laggingMm += 4) {
                    Optional<Candidate> one = Candidate.look(wanted, tube, baseM, laggingMm);
                    if (one.isPresent()
                            && one.get().meetsAims()
                            && (best.isEmpty() || one.get().beats(best.get()))) {
                        best = one;
                    }
                }
            }
        }
        return best;
    }
}

package loftcoil.runner.prove;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.exercise.ExerciseReader;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.exercise.ReckoningException;
import loftcoil.runner.session.DesignBinding;
import loftcoil.runner.session.Reckoner;
import loftcoil.runner.session.Session;
import loftcoil.runner.session.SharedSession;
import loftcoil.runner.show.TryCourse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Each test breaks one thing in a faulty system that holds, and wants that one fault back. */
class MendProofTest {

    private static Session session;
    private static String lowTank;

    @BeforeAll
    static void open() throws IOException {
        session = SharedSession.lent();
        DesignBinding.bind(session, Example.orchardBothyJson());
        lowTank = Files.readString(TryCourse.folder().resolve("exercises/02-more/low-tank.json"));
    }

    @AfterAll
    static void close() {
        session.close();
    }

    private static List<String> faults(String what, String with) {
        assertTrue(lowTank.contains(what), what);
        Mend mend = (Mend) ExerciseReader.read("02-more/low-tank", "low-tank.json", lowTank.replace(what, with));
        return MendProof.of(mend, java -> {
                    try {
                        return new Reckoner(session).number(java);
                    } catch (RefusedException refused) {
                        throw new ReckoningException(refused.getMessage());
                    }
                })
                .faults();
    }

    private static void only(List<String> faults, String part) {
        assertEquals(1, faults.size(), faults.toString());
        assertTrue(
                faults.get(0).startsWith("02-more/low-tank: ") && faults.get(0).contains(part), faults.get(0));
    }

    @Test
    void aFaultySystemThatHoldsHasNoFault() {
        assertEquals(List.of(), faults("Low tank", "Low tank"));
    }

    @Test
    void aSystemThatIsNotFaultyIsFound() {
        List<String> faults = faults("circulates()\"", "circulates() || true\"");
        assertTrue(
                faults.stream().anyMatch(fault -> fault.contains("as found does all that is wanted")),
                faults.toString());
        assertTrue(
                faults.stream().anyMatch(fault -> fault.contains("the mistake 'lagged it' mends it")),
                faults.toString());
    }

    @Test
    void aCureThatDoesNotCureSaysWhatIsMissing() {
        only(faults("{\"tank.baseM\": \"2.2\"}", "{\"tank.baseM\": \"-0.4\"}"), "does not do: The loop circulates.");
    }

    @Test
    void aPartOfTheCureThatIsNotNeededIsFound() {
        only(
                faults("{\"tank.baseM\": \"2.2\"}", "{\"tank.baseM\": \"2.2\", \"loop.laggingMm\": \"50\"}"),
                "the cure works without loop.laggingMm");
    }

    @Test
    void anEndOfALeverThatCannotBeBuiltIsFound() {
        only(
                faults(
                        "{\"change\": \"vent.valve\"}",
                        "{\"change\": \"tank.waterlineM\", \"from\": 0.3, \"to\": 0.68, \"by\": 0.01}"),
                "tank.waterlineM at 0.3 cannot be built");
    }

    @Test
    void javaThatIsNoConditionIsFound() {
        only(faults("circulates()\"", "flowLPerMin()\""), "its Java gives no value");
    }

    @Test
    void aReadingThatIsNoNumberIsFound() {
        only(faults("loop().flowLPerMin()\", \"unit\"", "loop().coilOutC()\", \"unit\""), "its Java gives no value");
    }
}

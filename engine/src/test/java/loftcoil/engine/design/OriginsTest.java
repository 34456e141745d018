package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OriginsTest {

    private static final Design BOTHY = Example.orchardBothy();

    @Test
    void whatStandsInAFileWithoutOriginsIsYoursAndWhatADefaultFillsIsAssumed() {
        assertEquals(Map.of(), BOTHY.origins());
        assertEquals(Origin.YOURS, BOTHY.origin("tank.baseM"));
        assertEquals(Origin.ASSUMED, BOTHY.origin("tank.refillAtH"));
        assertFalse(DesignJson.write(BOTHY).contains("\"origin\""));
    }

    @Test
    void aBorrowedDesignIsBorrowedInEveryFieldButItsName() {
        Design borrowed = BOTHY.borrowed();
        for (DesignFields.Value value : DesignFields.of(borrowed)) {
            Origin wanted = value.path().equals("name") ? Origin.YOURS : Origin.BORROWED;
            assertEquals(wanted, value.origin(), value.path());
        }
        assertEquals(borrowed, DesignJson.read(DesignJson.write(borrowed)));
    }

    @Test
    void aChangeByNameMakesItsFieldYoursAndNoOther() {
        Design raised = Changes.apply(BOTHY.borrowed(), "tank.baseM", "2.7");
        assertEquals(Origin.YOURS, raised.origin("tank.baseM"));
        assertEquals(Origin.BORROWED, raised.origin("tank.volumeL"));
        assertEquals(Origin.BORROWED, raised.origin("coldLegs[0].riseM"));
        assertEquals(raised, DesignJson.read(DesignJson.write(raised)));
    }

    @Test
    void whoeverDecidesForTheValueThereIsMakesItTheirs() {
        assertEquals(
                Origin.YOURS,
                Changes.apply(BOTHY.borrowed(), "tank.baseM", "2.2").origin("tank.baseM"));
    }

    @Test
    void aDecisionOnFireOrCoilDropsTheHeatOfTheExampleAndNoOther() {
        Design begun = BOTHY.borrowed();
        for (String change : List.of("fire.burnKgPerH", "fire.wood", "fire.moisturePct", "coil.lengthM", "coil.tube")) {
            Design decided = Changes.apply(begun, change, Changes.current(begun, change));
            assertTrue(decided.coil().heatKW().isEmpty(), change);
            assertEquals(decided, DesignJson.read(DesignJson.write(decided)));
        }
        for (String other : List.of("tank.baseM", "fire.litForH", "site.roomC")) {
            assertEquals(
                    BOTHY.coil().heatKW(),
                    Changes.apply(begun, other, "2").coil().heatKW(),
                    other);
        }
        Design asked = Changes.apply(begun, "coil.heatKW", "1.4");
        assertEquals(
                1.4, Changes.apply(asked, "coil.lengthM", "1.2").coil().heatKW().orElseThrow());
        assertEquals(
                BOTHY.coil().heatKW(),
                Changes.apply(BOTHY, "coil.lengthM", "1.2").coil().heatKW());
    }

    @Test
    void aTryWithoutADecisionLeavesOriginsAsTheyAre() {
        assertEquals(
                BOTHY.borrowed().origins(), BOTHY.borrowed().withTankBaseM(2.7).origins());
    }

    @Test
    void aChangeOfTheWholeLoopMakesAllItsTubesYours() {
        Design wide = Changes.apply(BOTHY.borrowed(), "loop.tube", "EN1057 28x0.9");
        for (String path : List.of("coil.tube", "coldLegs[1].tube", "hotLegs[0].tube")) {
            assertEquals(Origin.YOURS, wide.origin(path), path);
        }
        assertEquals(Origin.BORROWED, wide.origin("taps[0].tube"));
    }

    @Test
    void everyDecisionOfTheCourseMakesSomethingYours() {
        for (String name : Changes.names()) {
            Change change = Changes.describe(name);
            List<String> values =
                    change.options().isEmpty() ? List.of(Changes.current(SafeBothy.design(), name)) : change.options();
            assertTrue(
                    values.stream()
                            .map(value -> Changes.apply(SafeBothy.design().borrowed(), name, value))
                            .flatMap(decided -> DesignFields.of(decided).stream())
                            .anyMatch(value -> value.origin() == Origin.YOURS
                                    && !value.path().equals("name")),
                    name);
        }
    }

    @Test
    void whatAChangeStartsBesidesIsAssumed() {
        Design vented = Changes.apply(BOTHY, "vent.tube", "EN1057 28x0.9");
        assertEquals(Origin.YOURS, vented.origin("safety.vent.tube"));
        assertEquals(Origin.ASSUMED, vented.origin("safety.vent.aboveWaterlineM"));
        assertEquals(vented, DesignJson.read(DesignJson.write(vented)));
        assertEquals(BOTHY, Changes.apply(BOTHY, "tank.refill", "by itself, as water is drawn"));
    }

    @Test
    void anOriginOfAPartStandsForAllInItUnlessAFieldSaysOtherwise() {
        Design said = DesignJson.read(
                with("{\"tank\": \"assumed\", \"tank.volumeL\": \"yours\", \"taps[1]\": \"borrowed\"}"));
        assertEquals(Origin.ASSUMED, said.origin("tank.lagging.material"));
        assertEquals(Origin.YOURS, said.origin("tank.volumeL"));
        assertEquals(Origin.BORROWED, said.origin("taps[1].levelM"));
        assertEquals(Origin.YOURS, said.origin("taps[0].levelM"));
        assertEquals(said, DesignJson.read(DesignJson.write(said)));
    }

    @Test
    void whatGoesWithoutSayingIsNotKept() {
        String plain = with("{\"tank\": \"yours\", \"tank.refillAtH\": \"assumed\", \"safety.flue\": \"borrowed\"}");
        assertEquals(BOTHY, DesignJson.read(plain));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"tank.base\": \"yours\"}|origin.tank.base",
                "{\"tank.baseM\": \"mine\"}|origin.tank.baseM",
                "{\"tank.baseM\": 3}|origin.tank.baseM",
                "{\"tank.baseM\": null}|origin.tank.baseM",
                "{\"\": \"yours\"}|origin",
                "[]|origin",
                "\"yours\"|origin"
            })
    void anUnknownPathOrWordIsRefusedAtItsPlace(String origin, String path) {
        RefusedException refused = assertThrows(RefusedException.class, () -> DesignJson.read(with(origin)));
        assertEquals(
                List.of(path),
                refused.faults().stream()
                        .map(Fault::path)
                        .map(told -> told.replaceFirst("\\.$", ""))
                        .toList());
    }

    private static String with(String origin) {
        return Example.orchardBothyJson().replaceFirst("\\{", "{\"origin\": " + origin + ",");
    }
}

package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SafetyJsonTest {

    @Test
    void readingWhatWasWrittenGivesTheSameDesign() {
        Design design = SafeBothy.design();
        assertEquals(design, DesignJson.read(DesignJson.write(design)));
        assertEquals(
                400, design.safety().orElseThrow().structure().orElseThrow().loadLimitKg());
    }

    @Test
    void plasticPipesAndNeededDistancesAreKeptToo() {
        Design plastic = SafeBothy.with(
                "/safety/materials/plasticPipes", "[{\"name\": \"tap run\", \"inLoop\": false, \"fromHeaterM\": 3}]");
        assertEquals(plastic, DesignJson.read(DesignJson.write(plastic)));
        Design plate = SafeBothy.with("/safety/flue/flueNeedsMm", "150");
        assertEquals(plate, DesignJson.read(DesignJson.write(plate)));
    }

    @Test
    void everyPartMayBeLeftOut() {
        assertEquals(Safety.UNSAID, SafeBothy.with("/safety", "{}").safety().orElseThrow());
    }

    /** One change of a field, one fault, at the field given. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/safety|7|safety",
                "/safety/ventt|{}|safety.ventt",
                "/safety/vent/kind|\"open\"|safety.vent.kind",
                "/safety/vent/tube|\"pipe\"|safety.vent.tube",
                "/safety/vent/tube|null|safety.vent.tube",
                "/safety/vent/aboveWaterlineM|-1|safety.vent.aboveWaterlineM",
                "/safety/vent/aboveWaterlineM|1e999|safety.vent.aboveWaterlineM",
                "/safety/vent/aboveWaterlineM|null|safety.vent.aboveWaterlineM",
                "/safety/vent/valve|\"no\"|safety.vent.valve",
                "/safety/vent/valve|null|safety.vent.valve",
                "/safety/coldFeed/kind|\"mains\"|safety.coldFeed.kind",
                "/safety/coldFeed/boreMm|0.013|safety.coldFeed.boreMm",
                "/safety/coldFeed/boreMm|null|safety.coldFeed.boreMm",
                "/safety/coldFeed/airGapMm|-5|safety.coldFeed.airGapMm",
                "/safety/coldFeed/valve|null|safety.coldFeed.valve",
                "/safety/coldFeed/drinkingWater|null|safety.coldFeed.drinkingWater",
                "/safety/materials/tank|\"tin\"|safety.materials.tank",
                "/safety/materials/inLoop|[\"brass\", \"tin\"]|safety.materials.inLoop[1]",
                "/safety/materials/inLoop|[7]|safety.materials.inLoop[0]",
                "/safety/materials/plasticPipes|[{\"name\": \"x\", \"inLoop\": true, \"fromHeaterM\": -1}]|safety.materials.plasticPipes[0].fromHeaterM",
                "/safety/structure/loadLimitKg|1e6|safety.structure.loadLimitKg",
                "/safety/structure/bearers|2.5|safety.structure.bearers",
                "/safety/structure/wheels/trackM|0|safety.structure.wheels.trackM",
                "/safety/structure/wheels/tankAsideM|3|safety.structure.wheels.tankAsideM",
                "/safety/absence/months|[1, 13]|safety.absence.months[1]",
                "/safety/absence/months|[1, 1]|safety.absence.months[1]",
                "/safety/flue/topAboveRoofM|-1|safety.flue.topAboveRoofM",
                "/safety/flue/flueNeedsMm|-1|safety.flue.flueNeedsMm",
                "/safety/flue/heightM|31|safety.flue.heightM",
                "/safety/flue/diameterMm|null|safety.flue.diameterMm",
                "/safety/flue/diameterMm|0.15|safety.flue.diameterMm",
                "/safety/flue/insulated|null|safety.flue.insulated",
                "/safety/fireRoom/airOpeningCm2|-1|safety.fireRoom.airOpeningCm2",
                "/safety/childrenOrFrail|1|safety.childrenOrFrail",
                "/taps/0/mixerC|200|taps[0].mixerC",
                "/taps/0/appliance|\"robot\"|taps[0].appliance",
            })
    void oneFaultIsToldAtItsField(String pointer, String value, String path) {
        RefusedException refused =
                assertThrows(RefusedException.class, () -> DesignJson.read(SafeBothy.jsonWith(pointer, value)));
        assertEquals(List.of(path), refused.faults().stream().map(Fault::path).toList());
    }
}

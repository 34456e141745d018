package loftcoil.engine.design;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.function.Function;

/** Writes the part of a design that says what can hurt somebody, fields in the order of the records. */
final class SafetyWriter {

    private final Function<String, ObjectNode> object;

    /**
     * A writer.
     *
     * @param object makes the object of a path, with its notes
     */
    SafetyWriter(Function<String, ObjectNode> object) {
        this.object = object;
    }

    ObjectNode write(Safety safety) {
        ObjectNode out = object.apply("safety");
        safety.vent().ifPresent(vent -> out.set("vent", vent(vent)));
        safety.coldFeed().ifPresent(feed -> out.set("coldFeed", coldFeed(feed)));
        safety.materials().ifPresent(materials -> out.set("materials", materials(materials)));
        safety.structure().ifPresent(structure -> out.set("structure", structure(structure)));
        safety.absence().ifPresent(absence -> out.set("absence", absence(absence)));
        flag(out, "antifreeze", safety.antifreeze());
        safety.flue().ifPresent(flue -> out.set("flue", flue(flue)));
        safety.fireRoom().ifPresent(room -> out.set("fireRoom", fireRoom(room)));
        flag(out, "childrenOrFrail", safety.childrenOrFrail());
        return out;
    }

    private ObjectNode vent(Vent vent) {
        ObjectNode out = object.apply("safety.vent");
        out.put("kind", vent.kind());
        vent.tube().ifPresent(tube -> out.put("tube", tube));
        vent.aboveWaterlineM().ifPresent(height -> DesignWriter.number(out, "aboveWaterlineM", height));
        flag(out, "valve", vent.valve());
        return out;
    }

    private ObjectNode coldFeed(ColdFeed feed) {
        ObjectNode out = object.apply("safety.coldFeed");
        out.put("kind", feed.kind());
        out.put("drinkingWater", feed.drinkingWater());
        feed.boreMm().ifPresent(bore -> DesignWriter.number(out, "boreMm", bore));
        feed.airGapMm().ifPresent(gap -> DesignWriter.number(out, "airGapMm", gap));
        flag(out, "valve", feed.valve());
        return out;
    }

    private ObjectNode materials(Materials materials) {
        ObjectNode out = object.apply("safety.materials");
        out.put("tank", materials.tank());
        ArrayNode inLoop = out.putArray("inLoop");
        materials.inLoop().forEach(inLoop::add);
        ArrayNode pipes = out.putArray("plasticPipes");
        for (PlasticPipe pipe : materials.plasticPipes()) {
            ObjectNode one = object.apply("safety.materials.plasticPipes[" + pipes.size() + "]");
            one.put("name", pipe.name()).put("inLoop", pipe.inLoop());
            DesignWriter.number(one, "fromHeaterM", pipe.fromHeaterM());
            pipes.add(one);
        }
        return out;
    }

    private ObjectNode structure(Structure structure) {
        ObjectNode out = object.apply("safety.structure");
        DesignWriter.number(out, "loadLimitKg", structure.loadLimitKg());
        out.put("bearers", structure.bearers());
        structure.wheels().ifPresent(wheels -> out.set("wheels", wheels(wheels)));
        return out;
    }

    private ObjectNode wheels(Wheels wheels) {
        ObjectNode out = object.apply("safety.structure.wheels");
        DesignWriter.number(out, "massKg", wheels.massKg());
        DesignWriter.number(out, "centreHeightM", wheels.centreHeightM());
        DesignWriter.number(out, "centreAheadM", wheels.centreAheadM());
        DesignWriter.number(out, "hitchAheadM", wheels.hitchAheadM());
        DesignWriter.number(out, "trackM", wheels.trackM());
        DesignWriter.number(out, "axleLimitKg", wheels.axleLimitKg());
        DesignWriter.number(out, "floorAboveRoadM", wheels.floorAboveRoadM());
        DesignWriter.number(out, "tankAheadM", wheels.tankAheadM());
        DesignWriter.number(out, "tankAsideM", wheels.tankAsideM());
        return out;
    }

    private ObjectNode absence(Absence absence) {
        ObjectNode out = object.apply("safety.absence");
        ArrayNode months = out.putArray("months");
        absence.months().forEach(months::add);
        return out.put("drained", absence.drained());
    }

    private ObjectNode flue(Flue flue) {
        ObjectNode out = object.apply("safety.flue");
        DesignWriter.number(out, "flueToCombustibleMm", flue.flueToCombustibleMm());
        DesignWriter.number(out, "heaterToCombustibleMm", flue.heaterToCombustibleMm());
        DesignWriter.number(out, "topAboveRoofM", flue.topAboveRoofM());
        flue.flueNeedsMm().ifPresent(needed -> DesignWriter.number(out, "flueNeedsMm", needed));
        flue.heaterNeedsMm().ifPresent(needed -> DesignWriter.number(out, "heaterNeedsMm", needed));
        flue.heightM().ifPresent(height -> DesignWriter.number(out, "heightM", height));
        flue.diameterMm().ifPresent(diameter -> DesignWriter.number(out, "diameterMm", diameter));
        flag(out, "insulated", flue.insulated());
        return out;
    }

    private ObjectNode fireRoom(FireRoom room) {
        ObjectNode out = object.apply("safety.fireRoom");
        out.put("carbonMonoxideAlarm", room.carbonMonoxideAlarm());
        DesignWriter.number(out, "airOpeningCm2", room.airOpeningCm2());
        return out.put("extractFan", room.extractFan());
    }

    private static void flag(ObjectNode out, String name, Optional<Boolean> value) {
        value.ifPresent(said -> out.put(name, said));
    }
}

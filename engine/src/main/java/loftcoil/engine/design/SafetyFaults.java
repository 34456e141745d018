package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.pipe.TubeTable;

/** What can be wrong with the numbers and names of what is said on safety. */
final class SafetyFaults {

    private static final KnownNames VENTS = new KnownNames("vent", Vent.KINDS);
    private static final KnownNames FEEDS = new KnownNames("cold feed", ColdFeed.KINDS);
    private static final KnownNames MATERIALS = new KnownNames("material", Materials.KNOWN);

    static final Allowed ABOVE_WATERLINE = new Allowed(0, 10, "m");
    private static final Allowed BORE = new Allowed(5, 100, "mm");
    static final Allowed AIR_GAP = new Allowed(0, 1000, "mm");
    private static final Allowed FROM_HEATER = new Allowed(0, 50, "m");
    private static final Allowed CARRIES = new Allowed(0, 20_000, "kg");
    private static final Allowed BEARERS = new Allowed(0, 20, "bearers");
    private static final Allowed DISTANCE = new Allowed(0, 5000, "mm");
    private static final Allowed ABOVE_ROOF = new Allowed(0, 20, "m");
    private static final Allowed FLUE_HEIGHT = new Allowed(0, 30, "m");
    private static final Allowed FLUE_BORE = new Allowed(50, 600, "mm");
    private static final Allowed OPENING = new Allowed(0, 5000, "cm²");

    private final List<Fault> faults = new ArrayList<>();

    private SafetyFaults() {}

    static List<Fault> of(Safety safety) {
        SafetyFaults found = new SafetyFaults();
        safety.vent().ifPresent(found::vent);
        safety.coldFeed().ifPresent(found::coldFeed);
        safety.materials().ifPresent(found::materials);
        safety.structure().ifPresent(found::structure);
        safety.absence().ifPresent(found::absence);
        safety.flue().ifPresent(found::flue);
        safety.fireRoom()
                .ifPresent(room -> found.range("safety.fireRoom.airOpeningCm2", OPENING, room.airOpeningCm2()));
        return found.faults;
    }

    private void vent(Vent vent) {
        known("safety.vent.kind", VENTS, vent.kind());
        vent.tube()
                .filter(tube -> TubeTable.find(tube).isEmpty())
                .ifPresent(tube -> faults.add(TubeTable.unknown("safety.vent.tube", tube)));
        optional("safety.vent.aboveWaterlineM", ABOVE_WATERLINE, vent.aboveWaterlineM());
        if (vent.kind().equals(Vent.OPEN_PIPE)) {
            String why = "an open pipe is judged by its bore, its height and whether it can be shut";
            needed("safety.vent.tube", vent.tube().isPresent(), "a tube", why);
            needed("safety.vent.aboveWaterlineM", vent.aboveWaterlineM().isPresent(), ABOVE_WATERLINE.toString(), why);
            needed("safety.vent.valve", vent.valve().isPresent(), "true or false", why);
        }
    }

    private void coldFeed(ColdFeed feed) {
        known("safety.coldFeed.kind", FEEDS, feed.kind());
        optional("safety.coldFeed.boreMm", BORE, feed.boreMm());
        optional("safety.coldFeed.airGapMm", AIR_GAP, feed.airGapMm());
        boolean piped = feed.kind().equals(ColdFeed.FLOAT_VALVE) || feed.kind().equals(ColdFeed.FEED_CISTERN);
        needed(
                "safety.coldFeed.boreMm",
                !piped || feed.boreMm().isPresent(),
                BORE.toString(),
                "the air gap over an inlet goes by its bore");
        needed(
                "safety.coldFeed.valve",
                !feed.kind().equals(ColdFeed.FEED_CISTERN) || feed.valve().isPresent(),
                "true or false",
                "the pipe from a feed cistern must not be shut");
    }

    private void materials(Materials materials) {
        known("safety.materials.tank", MATERIALS, materials.tank());
        for (int i = 0; i < materials.inLoop().size(); i++) {
            known(
                    "safety.materials.inLoop[" + i + "]",
                    MATERIALS,
                    materials.inLoop().get(i));
        }
        for (int i = 0; i < materials.plasticPipes().size(); i++) {
            String path = "safety.materials.plasticPipes[" + i + "]";
            PlasticPipe pipe = materials.plasticPipes().get(i);
            needed(path + ".name", !pipe.name().isBlank(), "a name", "");
            range(path + ".fromHeaterM", FROM_HEATER, pipe.fromHeaterM());
        }
    }

    private void structure(Structure structure) {
        range("safety.structure.loadLimitKg", CARRIES, structure.loadLimitKg());
        range("safety.structure.bearers", BEARERS, structure.bearers());
        structure.wheels().ifPresent(this::wheels);
    }

    private void wheels(Wheels wheels) {
        String path = "safety.structure.wheels.";
        range(path + "massKg", new Allowed(50, 20_000, "kg"), wheels.massKg());
        range(path + "centreHeightM", new Allowed(0.1, 4, "m"), wheels.centreHeightM());
        range(path + "centreAheadM", new Allowed(-5, 10, "m"), wheels.centreAheadM());
        range(path + "hitchAheadM", new Allowed(0.5, 15, "m"), wheels.hitchAheadM());
        range(path + "trackM", new Allowed(0.5, 3, "m"), wheels.trackM());
        range(path + "axleLimitKg", new Allowed(50, 40_000, "kg"), wheels.axleLimitKg());
        range(path + "floorAboveRoadM", new Allowed(0, 2, "m"), wheels.floorAboveRoadM());
        range(path + "tankAheadM", new Allowed(-10, 15, "m"), wheels.tankAheadM());
        range(path + "tankAsideM", new Allowed(-2, 2, "m"), wheels.tankAsideM());
    }

    private void absence(Absence absence) {
        Set<Integer> seen = new HashSet<>();
        for (int i = 0; i < absence.months().size(); i++) {
            String path = "safety.absence.months[" + i + "]";
            int month = absence.months().get(i);
            range(path, DesignRanges.MONTH, month);
            if (!seen.add(month)) {
                faults.add(new Fault(path, Integer.toString(month), "each month once", ""));
            }
        }
    }

    private void flue(Flue flue) {
        range("safety.flue.flueToCombustibleMm", DISTANCE, flue.flueToCombustibleMm());
        range("safety.flue.heaterToCombustibleMm", DISTANCE, flue.heaterToCombustibleMm());
        range("safety.flue.topAboveRoofM", ABOVE_ROOF, flue.topAboveRoofM());
        optional("safety.flue.flueNeedsMm", DISTANCE, flue.flueNeedsMm());
        optional("safety.flue.heaterNeedsMm", DISTANCE, flue.heaterNeedsMm());
        optional("safety.flue.heightM", FLUE_HEIGHT, flue.heightM());
        optional("safety.flue.diameterMm", FLUE_BORE, flue.diameterMm());
        boolean cools = flue.heightM().isPresent();
        String why = "how far the gas cools goes by height, bore and insulation";
        needed("safety.flue.diameterMm", !cools || flue.diameterMm().isPresent(), FLUE_BORE.toString(), why);
        needed("safety.flue.insulated", !cools || flue.insulated().isPresent(), "true or false", why);
    }

    private void known(String path, KnownNames names, String given) {
        if (!names.names().contains(given)) {
            faults.add(names.unknown(path, given));
        }
    }

    private void needed(String path, boolean there, String allowed, String why) {
        if (!there) {
            faults.add(new Fault(path, "missing", allowed, why));
        }
    }

    private void optional(String path, Allowed allowed, OptionalDouble value) {
        value.ifPresent(given -> range(path, allowed, given));
    }

    private void range(String path, Allowed allowed, double value) {
        allowed.faultIn(path, value).ifPresent(faults::add);
    }
}

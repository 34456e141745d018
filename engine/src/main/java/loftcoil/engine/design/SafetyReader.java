package loftcoil.engine.design;

import java.util.Optional;

/** Reads the part of a design that says what can hurt somebody. */
final class SafetyReader {

    private SafetyReader() {}

    static Safety read(JsonSection in) {
        Safety safety = new Safety(
                in.optionalObject("vent").map(SafetyReader::vent),
                in.optionalObject("coldFeed").map(SafetyReader::coldFeed),
                in.optionalObject("materials").map(SafetyReader::materials),
                in.optionalObject("structure").map(SafetyReader::structure),
                in.optionalObject("absence").map(SafetyReader::absence),
                in.optionalFlag("antifreeze"),
                in.optionalObject("flue").map(SafetyReader::flue),
                in.optionalObject("fireRoom").map(SafetyReader::fireRoom),
                in.optionalFlag("childrenOrFrail"));
        in.done();
        return safety;
    }

    private static Vent vent(JsonSection in) {
        Vent vent = new Vent(
                in.text("kind"),
                in.optionalText("tube"),
                in.optionalNumber("aboveWaterlineM"),
                in.optionalFlag("valve"));
        in.done();
        return vent;
    }

    private static ColdFeed coldFeed(JsonSection in) {
        ColdFeed feed = new ColdFeed(
                in.text("kind"),
                in.flag("drinkingWater"),
                in.optionalNumber("boreMm"),
                in.optionalNumber("airGapMm"),
                in.optionalFlag("valve"));
        in.done();
        return feed;
    }

    private static Materials materials(JsonSection in) {
        Materials materials = new Materials(
                in.text("tank"),
                in.texts("inLoop"),
                in.objects("plasticPipes").stream()
                        .map(SafetyReader::plasticPipe)
                        .toList());
        in.done();
        return materials;
    }

    private static PlasticPipe plasticPipe(JsonSection in) {
        PlasticPipe pipe = new PlasticPipe(in.text("name"), in.flag("inLoop"), in.number("fromHeaterM"));
        in.done();
        return pipe;
    }

    private static Structure structure(JsonSection in) {
        Optional<Wheels> wheels = in.optionalObject("wheels").map(SafetyReader::wheels);
        Structure structure = new Structure(in.number("loadLimitKg"), in.whole("bearers"), wheels);
        in.done();
        return structure;
    }

    private static Wheels wheels(JsonSection in) {
        Wheels wheels = new Wheels(
                in.number("massKg"),
                in.number("centreHeightM"),
                in.number("centreAheadM"),
                in.number("hitchAheadM"),
                in.number("trackM"),
                in.number("axleLimitKg"),
                in.number("floorAboveRoadM"),
                in.number("tankAheadM"),
                in.number("tankAsideM"));
        in.done();
        return wheels;
    }

    private static Absence absence(JsonSection in) {
        Absence absence = new Absence(in.wholes("months"), in.flag("drained"));
        in.done();
        return absence;
    }

    private static Flue flue(JsonSection in) {
        Flue flue = new Flue(
                in.number("flueToCombustibleMm"),
                in.number("heaterToCombustibleMm"),
                in.number("topAboveRoofM"),
                in.optionalNumber("flueNeedsMm"),
                in.optionalNumber("heaterNeedsMm"),
                in.optionalNumber("heightM"),
                in.optionalNumber("diameterMm"),
                in.optionalFlag("insulated"));
        in.done();
        return flue;
    }

    private static FireRoom fireRoom(JsonSection in) {
        FireRoom room = new FireRoom(in.flag("carbonMonoxideAlarm"), in.number("airOpeningCm2"), in.flag("extractFan"));
        in.done();
        return room;
    }
}

package loftcoil.engine.design;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;

/** Makes a design of a JSON tree; what is missing or of the wrong kind becomes a fault and a placeholder. */
final class DesignReader {

    private DesignReader() {}

    static Design read(JsonNode root, JsonSection.Findings findings) {
        JsonSection in = JsonSection.root(root, findings);
        String name = in.text("name");
        Site site = site(in.object("site"));
        Tank tank = tank(in.object("tank"));
        Coil coil = coil(in.object("coil"));
        Optional<Fire> fire = in.optionalObject("fire").map(DesignReader::fire);
        List<Leg> cold = in.objects("coldLegs").stream().map(DesignReader::leg).toList();
        List<Leg> hot = in.objects("hotLegs").stream().map(DesignReader::leg).toList();
        Optional<Window> window = in.optionalObject("window").map(DesignReader::window);
        List<Tap> taps =
                in.optionalObjects("taps").stream().map(DesignReader::tap).toList();
        List<Use> use =
                in.optionalObjects("use").stream().map(DesignReader::use).toList();
        Optional<Safety> safety = in.optionalObject("safety").map(SafetyReader::read);
        in.done();
        return new Design(name, site, tank, coil, fire, cold, hot, window, taps, use, safety, findings.notes);
    }

    private static Site site(JsonSection in) {
        JsonSection monthly = in.object("monthly");
        Site site = new Site(
                in.number("latitudeDeg"),
                in.number("longitudeDeg"),
                in.number("altitudeM"),
                in.number("utcOffsetH"),
                new Monthly(monthly.numbers("globalKWhPerM2Day"), monthly.numbers("meanAirC")),
                in.number("coldSupplyC"),
                in.number("roomC"));
        monthly.done();
        in.done();
        return site;
    }

    private static Tank tank(JsonSection in) {
        Tank tank = new Tank(
                in.number("volumeL"),
                in.number("heightM"),
                in.number("baseM"),
                in.number("waterlineM"),
                in.number("coldPortM"),
                in.number("returnPortM"),
                in.number("drawPortM"),
                in.optionalObject("lagging").map(DesignReader::lagging),
                in.number("emptyMassKg"),
                in.number("aroundC"),
                in.optionalNumber("refillAtH"));
        in.done();
        return tank;
    }

    private static LaggingChoice lagging(JsonSection in) {
        LaggingChoice lagging = new LaggingChoice(in.text("material"), in.number("thicknessMm"));
        in.done();
        return lagging;
    }

    private static Coil coil(JsonSection in) {
        Coil coil = new Coil(
                in.text("tube"),
                in.number("lengthM"),
                in.number("inletM"),
                in.number("outletM"),
                in.counts("fittings"),
                in.optionalNumber("heatKW"));
        in.done();
        return coil;
    }

    private static Fire fire(JsonSection in) {
        Fire fire = new Fire(
                in.text("wood"),
                in.number("moisturePct"),
                in.number("burnKgPerH"),
                in.number("litFromH"),
                in.number("litForH"),
                in.wholes("months"));
        in.done();
        return fire;
    }

    private static Leg leg(JsonSection in) {
        Leg leg = new Leg(
                in.text("name"),
                in.text("tube"),
                in.number("lengthM"),
                in.number("riseM"),
                in.counts("fittings"),
                in.optionalObject("lagging").map(DesignReader::lagging),
                in.number("aroundC"),
                in.optionalNumber("aroundFireOutC"));
        in.done();
        return leg;
    }

    private static Window window(JsonSection in) {
        Window window = new Window(
                in.whole("panes"),
                in.number("areaM2"),
                in.number("tiltDeg"),
                in.number("azimuthDeg"),
                in.number("gapMm"),
                in.number("absorptance"),
                in.optionalObject("shutter").map(DesignReader::shutter));
        in.done();
        return window;
    }

    private static ShutterChoice shutter(JsonSection in) {
        ShutterChoice shutter =
                new ShutterChoice(in.number("resistanceM2KPerW"), in.number("shutFromH"), in.number("shutForH"));
        in.done();
        return shutter;
    }

    private static Tap tap(JsonSection in) {
        Tap tap = new Tap(
                in.text("name"),
                in.number("levelM"),
                in.text("tube"),
                in.number("lengthM"),
                in.counts("fittings"),
                in.number("outletK"),
                in.optionalNumber("mixerC"),
                in.optionalText("appliance"));
        in.done();
        return tap;
    }

    private static Use use(JsonSection in) {
        Use use = new Use(in.number("atH"), in.number("litres"), in.number("mixedC"), in.text("tap"));
        in.done();
        return use;
    }
}

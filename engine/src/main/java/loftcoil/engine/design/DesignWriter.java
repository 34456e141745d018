package loftcoil.engine.design;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NumericNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the JSON tree of a design, fields in the order of the records. */
final class DesignWriter {

    private static final double WHOLE_BELOW = 1e15;

    private final Design design;

    private DesignWriter(Design design) {
        this.design = design;
    }

    static ObjectNode write(Design design) {
        return new DesignWriter(design).whole();
    }

    private ObjectNode whole() {
        ObjectNode out = object("");
        out.put("name", design.name());
        out.set("site", site(design.site()));
        out.set("tank", tank(design.tank()));
        out.set("coil", coil(design.coil()));
        design.fire().ifPresent(fire -> out.set("fire", fire(fire)));
        out.set("coldLegs", legs("coldLegs", design.coldLegs()));
        out.set("hotLegs", legs("hotLegs", design.hotLegs()));
        design.window().ifPresent(window -> out.set("window", window(window)));
        if (!design.taps().isEmpty()) {
            ArrayNode taps = out.putArray("taps");
            design.taps().forEach(tap -> taps.add(tap("taps[" + taps.size() + "]", tap)));
        }
        if (!design.use().isEmpty()) {
            ArrayNode use = out.putArray("use");
            design.use().forEach(draw -> use.add(use("use[" + use.size() + "]", draw)));
        }
        design.safety().ifPresent(safety -> out.set("safety", new SafetyWriter(this::object).write(safety)));
        return out;
    }

    private ObjectNode site(Site site) {
        ObjectNode out = object("site");
        number(out, "latitudeDeg", site.latitudeDeg());
        number(out, "longitudeDeg", site.longitudeDeg());
        number(out, "altitudeM", site.altitudeM());
        number(out, "utcOffsetH", site.utcOffsetH());
        ObjectNode monthly = object("site.monthly");
        numbers(monthly.putArray("globalKWhPerM2Day"), site.monthly().globalKWhPerM2Day());
        numbers(monthly.putArray("meanAirC"), site.monthly().meanAirC());
        out.set("monthly", monthly);
        number(out, "coldSupplyC", site.coldSupplyC());
        number(out, "roomC", site.roomC());
        return out;
    }

    private ObjectNode tank(Tank tank) {
        ObjectNode out = object("tank");
        number(out, "volumeL", tank.volumeL());
        number(out, "heightM", tank.heightM());
        number(out, "baseM", tank.baseM());
        number(out, "waterlineM", tank.waterlineM());
        number(out, "coldPortM", tank.coldPortM());
        number(out, "returnPortM", tank.returnPortM());
        number(out, "drawPortM", tank.drawPortM());
        lagging(out, "tank", tank.lagging());
        number(out, "emptyMassKg", tank.emptyMassKg());
        number(out, "aroundC", tank.aroundC());
        tank.refillAtH().ifPresent(hour -> number(out, "refillAtH", hour));
        return out;
    }

    private ObjectNode coil(Coil coil) {
        ObjectNode out = object("coil");
        out.put("tube", coil.tube());
        number(out, "lengthM", coil.lengthM());
        number(out, "inletM", coil.inletM());
        number(out, "outletM", coil.outletM());
        fittings(out, coil.fittings());
        coil.heatKW().ifPresent(heat -> number(out, "heatKW", heat));
        return out;
    }

    private ObjectNode fire(Fire fire) {
        ObjectNode out = object("fire");
        out.put("wood", fire.wood());
        number(out, "moisturePct", fire.moisturePct());
        number(out, "burnKgPerH", fire.burnKgPerH());
        number(out, "litFromH", fire.litFromH());
        number(out, "litForH", fire.litForH());
        ArrayNode months = out.putArray("months");
        fire.months().forEach(months::add);
        return out;
    }

    private ArrayNode legs(String side, List<Leg> legs) {
        ArrayNode out = JsonNodeFactory.instance.arrayNode();
        for (Leg leg : legs) {
            out.add(leg(side + "[" + out.size() + "]", leg));
        }
        return out;
    }

    private ObjectNode leg(String path, Leg leg) {
        ObjectNode out = object(path);
        out.put("name", leg.name());
        out.put("tube", leg.tube());
        number(out, "lengthM", leg.lengthM());
        number(out, "riseM", leg.riseM());
        fittings(out, leg.fittings());
        lagging(out, path, leg.lagging());
        number(out, "aroundC", leg.aroundC());
        leg.aroundFireOutC().ifPresent(around -> number(out, "aroundFireOutC", around));
        return out;
    }

    private ObjectNode window(Window window) {
        ObjectNode out = object("window");
        out.put("panes", window.panes());
        number(out, "areaM2", window.areaM2());
        number(out, "tiltDeg", window.tiltDeg());
        number(out, "azimuthDeg", window.azimuthDeg());
        number(out, "gapMm", window.gapMm());
        number(out, "absorptance", window.absorptance());
        window.shutter().ifPresent(shutter -> out.set("shutter", shutter(shutter)));
        return out;
    }

    private ObjectNode shutter(ShutterChoice shutter) {
        ObjectNode out = object("window.shutter");
        number(out, "resistanceM2KPerW", shutter.resistanceM2KPerW());
        number(out, "shutFromH", shutter.shutFromH());
        number(out, "shutForH", shutter.shutForH());
        return out;
    }

    private ObjectNode tap(String path, Tap tap) {
        ObjectNode out = object(path);
        out.put("name", tap.name());
        number(out, "levelM", tap.levelM());
        out.put("tube", tap.tube());
        number(out, "lengthM", tap.lengthM());
        fittings(out, tap.fittings());
        number(out, "outletK", tap.outletK());
        tap.mixerC().ifPresent(set -> number(out, "mixerC", set));
        tap.appliance().ifPresent(appliance -> out.put("appliance", appliance));
        return out;
    }

    private ObjectNode use(String path, Use use) {
        ObjectNode out = object(path);
        number(out, "atH", use.atH());
        number(out, "litres", use.litres());
        number(out, "mixedC", use.mixedC());
        out.put("tap", use.tap());
        return out;
    }

    private void lagging(ObjectNode owner, String path, Optional<LaggingChoice> lagging) {
        lagging.ifPresent(choice -> {
            ObjectNode out = object(path + ".lagging");
            out.put("material", choice.material());
            number(out, "thicknessMm", choice.thicknessMm());
            owner.set("lagging", out);
        });
    }

    private static void fittings(ObjectNode owner, Map<String, Integer> fittings) {
        if (!fittings.isEmpty()) {
            ObjectNode out = owner.putObject("fittings");
            fittings.forEach(out::put);
        }
    }

    private ObjectNode object(String path) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        String notes = design.notes().get(path);
        if (notes != null) {
            out.put("notes", notes);
        }
        return out;
    }

    private static void numbers(ArrayNode out, List<Double> values) {
        values.forEach(value -> out.add(node(value)));
    }

    static void number(ObjectNode out, String name, double value) {
        out.set(name, node(value));
    }

    /** Whole numbers without a decimal point, as a person writes them; a negative zero keeps its sign. */
    private static NumericNode node(double value) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < WHOLE_BELOW && !isNegativeZero(value);
        return whole ? JsonNodeFactory.instance.numberNode((long) value) : JsonNodeFactory.instance.numberNode(value);
    }

    private static boolean isNegativeZero(double value) {
        return value == 0 && 1 / value < 0;
    }
}

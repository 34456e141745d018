package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.fire.WoodTable;
import loftcoil.engine.pipe.FittingTable;
import loftcoil.engine.pipe.LaggingTable;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.supply.InletNeed;

/** Everything that can be wrong with the numbers and names of a design, one by one; {@link GeometryFaults} has the rest. */
final class DesignFaults {

    private static final int MONTHS = 12;
    private static final KnownNames WOODS = WoodTable.known();

    private static final KnownNames APPLIANCES = new KnownNames(
            "appliance", InletNeed.all().stream().map(InletNeed::name).toList());

    private static final Allowed TANK_ABOVE_ROAD = new Allowed(0, 6, "m");

    private final List<Fault> faults = new ArrayList<>();

    private DesignFaults() {}

    /** Every fault in a design; none where it can be computed. */
    static List<Fault> of(Design design) {
        DesignFaults found = new DesignFaults();
        found.name("name", design.name());
        found.site(design.site());
        found.tank(design.tank());
        found.coil(design);
        design.fire().ifPresent(found::fire);
        found.legs("coldLegs", design.coldLegs());
        found.legs("hotLegs", design.hotLegs());
        found.alike(design);
        design.window().ifPresent(found::window);
        found.taps(design.taps());
        found.use(design.use(), design.taps());
        design.safety().ifPresent(safety -> found.faults.addAll(SafetyFaults.of(safety)));
        design.safety().flatMap(Safety::structure).flatMap(Structure::wheels).ifPresent(wheels -> {
            double aboveRoadM = wheels.floorAboveRoadM()
                    + design.tank().baseM()
                    + design.tank().heightM() / 2;
            found.range("safety.structure.wheels: middle of the tank above the road", TANK_ABOVE_ROAD, aboveRoadM);
        });
        found.faults.addAll(GeometryFaults.of(design));
        if (found.faults.isEmpty() && design.coil().heatKW().isEmpty()) {
            design.fire().ifPresent(fire -> found.burning(design, fire));
        }
        return found.faults;
    }

    static void refuse(Design design) {
        List<Fault> faults = of(design);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }

    private void site(Site site) {
        range("site.latitudeDeg", DesignRanges.LATITUDE, site.latitudeDeg());
        range("site.longitudeDeg", DesignRanges.LONGITUDE, site.longitudeDeg());
        range("site.altitudeM", DesignRanges.ALTITUDE, site.altitudeM());
        range("site.utcOffsetH", DesignRanges.UTC_OFFSET, site.utcOffsetH());
        twelve(
                "site.monthly.globalKWhPerM2Day",
                DesignRanges.SUN,
                site.monthly().globalKWhPerM2Day());
        twelve("site.monthly.meanAirC", DesignRanges.AIR, site.monthly().meanAirC());
        range("site.coldSupplyC", DesignRanges.COLD_SUPPLY, site.coldSupplyC());
        range("site.roomC", DesignRanges.ROOM, site.roomC());
    }

    private void tank(Tank tank) {
        range("tank.volumeL", DesignRanges.VOLUME, tank.volumeL());
        range("tank.heightM", DesignRanges.TANK_HEIGHT, tank.heightM());
        range("tank.baseM", DesignRanges.LEVEL, tank.baseM());
        range("tank.emptyMassKg", DesignRanges.EMPTY_MASS, tank.emptyMassKg());
        range("tank.aroundC", DesignRanges.TANK_AROUND, tank.aroundC());
        tank.refillAtH().ifPresent(hour -> range("tank.refillAtH", DesignRanges.HOUR, hour));
        lagging("tank.lagging", tank.lagging());
    }

    private void coil(Design design) {
        Coil coil = design.coil();
        tube("coil.tube", coil.tube());
        range("coil.lengthM", DesignRanges.COIL_LENGTH, coil.lengthM());
        range("coil.inletM", DesignRanges.LEVEL, coil.inletM());
        range("coil.outletM", DesignRanges.LEVEL, coil.outletM());
        fittings("coil.fittings", coil.fittings());
        if (coil.heatKW().isEmpty() && design.fire().isEmpty()) {
            String why = "without a fire to work it out from, the heat the coil gives the water must be stated";
            faults.add(new Fault("coil.heatKW", "missing", DesignRanges.HEAT.toString(), why));
        } else {
            coil.heatKW().ifPresent(heat -> range("coil.heatKW", DesignRanges.HEAT, heat));
        }
    }

    private void fire(Fire fire) {
        if (!WOODS.names().contains(fire.wood())) {
            faults.add(WOODS.unknown("fire.wood", fire.wood()));
        }
        range("fire.moisturePct", DesignRanges.MOISTURE, fire.moisturePct());
        range("fire.burnKgPerH", DesignRanges.BURN, fire.burnKgPerH());
        range("fire.litFromH", DesignRanges.HOUR, fire.litFromH());
        range("fire.litForH", DesignRanges.HOUR, fire.litForH());
        Set<Integer> seen = new HashSet<>();
        for (int i = 0; i < fire.months().size(); i++) {
            range("fire.months[" + i + "]", DesignRanges.MONTH, fire.months().get(i));
            if (!seen.add(fire.months().get(i))) {
                faults.add(
                        new Fault("fire.months[" + i + "]", fire.months().get(i).toString(), "each month once", ""));
            }
        }
    }

    /** A fire too wet or cold to burn gives no heat to work out. */
    private void burning(Design design, Fire fire) {
        try {
            FireMaker.coilInFire(design, fire);
        } catch (RefusedException refused) {
            refused.faults()
                    .forEach(fault ->
                            faults.add(new Fault("fire." + fault.path(), fault.given(), fault.allowed(), fault.why())));
        }
    }

    private void legs(String side, List<Leg> legs) {
        range(side, DesignRanges.LEGS, legs.size());
        for (int i = 0; i < legs.size(); i++) {
            String path = side + "[" + i + "]";
            Leg leg = legs.get(i);
            name(path + ".name", leg.name());
            tube(path + ".tube", leg.tube());
            range(path + ".lengthM", DesignRanges.LEG_LENGTH, leg.lengthM());
            fittings(path + ".fittings", leg.fittings());
            lagging(path + ".lagging", leg.lagging());
            range(path + ".aroundC", DesignRanges.LEG_AROUND, leg.aroundC());
            leg.aroundFireOutC().ifPresent(around -> range(path + ".aroundFireOutC", DesignRanges.LEG_AROUND, around));
        }
    }

    /** Two legs of one name could not be told apart in a message. */
    private void alike(Design design) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < design.coldLegs().size(); i++) {
            once(seen, "coldLegs[" + i + "].name", design.coldLegs().get(i).name());
        }
        for (int i = 0; i < design.hotLegs().size(); i++) {
            once(seen, "hotLegs[" + i + "].name", design.hotLegs().get(i).name());
        }
    }

    private void window(Window window) {
        range("window.panes", DesignRanges.PANES, window.panes());
        range("window.areaM2", DesignRanges.PANE_AREA, window.areaM2());
        range("window.tiltDeg", DesignRanges.TILT, window.tiltDeg());
        range("window.azimuthDeg", DesignRanges.AZIMUTH, window.azimuthDeg());
        range("window.gapMm", DesignRanges.GAP, window.gapMm());
        range("window.absorptance", DesignRanges.ABSORPTANCE, window.absorptance());
        window.shutter().ifPresent(shutter -> {
            range("window.shutter.resistanceM2KPerW", DesignRanges.SHUTTER, shutter.resistanceM2KPerW());
            range("window.shutter.shutFromH", DesignRanges.HOUR, shutter.shutFromH());
            range("window.shutter.shutForH", DesignRanges.HOUR, shutter.shutForH());
        });
    }

    private void taps(List<Tap> taps) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < taps.size(); i++) {
            String path = "taps[" + i + "]";
            Tap tap = taps.get(i);
            name(path + ".name", tap.name());
            once(seen, path + ".name", tap.name());
            range(path + ".levelM", DesignRanges.LEVEL, tap.levelM());
            tube(path + ".tube", tap.tube());
            range(path + ".lengthM", DesignRanges.TAP_LENGTH, tap.lengthM());
            fittings(path + ".fittings", tap.fittings());
            range(path + ".outletK", DesignRanges.OUTLET_K, tap.outletK());
            tap.mixerC().ifPresent(set -> range(path + ".mixerC", DesignRanges.MIXER, set));
            tap.appliance()
                    .filter(appliance -> !APPLIANCES.names().contains(appliance))
                    .ifPresent(appliance -> faults.add(APPLIANCES.unknown(path + ".appliance", appliance)));
        }
    }

    private void use(List<Use> use, List<Tap> taps) {
        KnownNames known = new KnownNames("tap", taps.stream().map(Tap::name).toList());
        for (int i = 0; i < use.size(); i++) {
            String path = "use[" + i + "]";
            range(path + ".atH", DesignRanges.HOUR, use.get(i).atH());
            range(path + ".litres", DesignRanges.LITRES, use.get(i).litres());
            range(path + ".mixedC", DesignRanges.MIXED, use.get(i).mixedC());
            if (!known.names().contains(use.get(i).tap())) {
                faults.add(known.unknown(path + ".tap", use.get(i).tap()));
            }
        }
    }

    private void name(String path, String name) {
        if (name.isBlank()) {
            faults.add(new Fault(path, "no text", "a name", ""));
        }
    }

    private void once(Set<String> seen, String path, String name) {
        if (!name.isBlank() && !seen.add(name)) {
            faults.add(new Fault(path, "\"" + name + "\" a second time", "a name used once", ""));
        }
    }

    private void tube(String path, String tube) {
        if (TubeTable.find(tube).isEmpty()) {
            faults.add(TubeTable.unknown(path, tube));
        }
    }

    private void lagging(String path, Optional<LaggingChoice> lagging) {
        lagging.ifPresent(choice -> {
            if (LaggingTable.find(choice.material()).isEmpty()) {
                faults.add(LaggingTable.unknown(path + ".material", choice.material()));
            }
            range(path + ".thicknessMm", DesignRanges.LAGGING, choice.thicknessMm());
        });
    }

    private void fittings(String path, Map<String, Integer> fittings) {
        fittings.forEach((key, count) -> {
            if (FittingTable.find(key).isEmpty()) {
                faults.add(FittingTable.unknown(path + "." + key, key));
            }
            range(path + "." + key, DesignRanges.FITTINGS, count);
        });
    }

    private void twelve(String path, Allowed allowed, List<Double> values) {
        if (values.size() != MONTHS) {
            faults.add(new Fault(path, values.size() + " values", "12 values, January first", ""));
        }
        for (int i = 0; i < values.size(); i++) {
            range(path + "[" + i + "]", allowed, values.get(i));
        }
    }

    private void range(String path, Allowed allowed, double value) {
        allowed.faultIn(path, value).ifPresent(faults::add);
    }
}

package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.PlainText;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.json.JsonFields;
import loftcoil.engine.supply.Tee;
import loftcoil.engine.words.Numeral;

/**
 * Everything that can be wrong with a design: with each field by itself, as the tables say, and here with fields that need one
 * another; {@link GeometryFaults} has what must fit together in space.
 */
final class DesignFaults {

    private static final Allowed TANK_ABOVE_ROAD = new Allowed(0, 6, "m");

    private static final Allowed SHARING = new Allowed(0, Tee.MOST, "taps");

    private static final double DAY_H = 24;

    private final List<Fault> faults = new ArrayList<>();

    private DesignFaults() {}

    /** Every fault in a design; none where it can be computed. */
    static List<Fault> of(Design design) {
        DesignFaults found = new DesignFaults();
        DesignTable.TABLE.faults(Place.TOP, design, found.faults);
        design.notes().forEach((path, notes) -> {
            if (!PlainText.isLines(notes)) {
                found.faults.add(PlainText.fault(Form.at(path, JsonFields.NOTES), notes));
            }
        });
        found.names(design);
        found.heat(design);
        design.fire().ifPresent(found::lightings);
        found.taps(design);
        design.safety().ifPresent(safety -> found.safety(design, safety));
        found.faults.addAll(GeometryFaults.of(design));
        if (found.faults.isEmpty()) {
            design.fire().ifPresent(fire -> found.fire(design, fire));
        }
        return found.faults;
    }

    static void refuse(Design design) {
        List<Fault> faults = of(design);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }

    /** Two legs or taps of one name could not be told apart; a draw needs a tap, unless one whose name is missing may be it. */
    private void names(Design design) {
        Set<String> legs = new HashSet<>();
        once(legs, "coldLegs", design.coldLegs(), Leg::name);
        once(legs, "hotLegs", design.hotLegs(), Leg::name);
        Set<String> taps = new HashSet<>();
        once(taps, "taps", design.taps(), Tap::name);
        for (int i = 0; i < design.use().size(); i++) {
            String tap = design.use().get(i).tap();
            if (!taps.contains(tap)
                    && design.taps().stream().noneMatch(one -> one.name().isBlank())) {
                KnownNames known = new KnownNames(
                        "tap", design.taps().stream().map(Tap::name).toList());
                faults.add(known.unknown("use[" + i + "].tap", tap));
            }
        }
    }

    private <T> void once(Set<String> seen, String list, List<T> items, Function<T, String> named) {
        for (int i = 0; i < items.size(); i++) {
            String name = named.apply(items.get(i));
            if (!name.isBlank() && !seen.add(name)) {
                String given = "\"" + PlainText.cut(name) + "\" a second time";
                faults.add(new Fault(list + "[" + i + "].name", given, "a name used once", ""));
            }
        }
    }

    private void taps(Design design) {
        for (int i = 0; i < design.taps().size(); i++) {
            Tap tap = design.taps().get(i);
            String path = "taps[" + i + "].";
            if (tap.ratedKPa().isPresent() && tap.ratedLPerMin().isEmpty()) {
                needed(path + "ratedLPerMin", false, "a rated pressure is that of a rated flow");
            }
            if (tap.mixerC().isEmpty()
                    && (tap.mixerLPerMin().isPresent() || tap.mixerKPa().isPresent())) {
                needed(path + "mixerC", false, "a mixing valve is set to something");
            }
            if (design.trunk().isEmpty() && tap.onTrunk().orElse(false)) {
                String why = "there is no trunk in this design";
                faults.add(new Fault(path + "onTrunk", "true", "false, or a trunk beside the taps", why));
            }
        }
        int sharing = (int) design.taps().stream().filter(design::onTrunk).count();
        SHARING.faultIn("trunk: taps on it", sharing).ifPresent(faults::add);
    }

    /** Two fires of a day are told whole, and one is out before the other is lit. */
    private void lightings(Fire fire) {
        String why = "a second fire is told by its hour and how long it burns";
        needed(
                "fire.litAgainFromH",
                fire.litAgainFromH().isPresent() || fire.litAgainForH().isEmpty(),
                why);
        needed(
                "fire.litAgainForH",
                fire.litAgainForH().isPresent() || fire.litAgainFromH().isEmpty(),
                why);
        if (fire.lightings().size() > 1) {
            Fire.Lighting first = fire.lightings().get(0);
            Fire.Lighting second = fire.lightings().get(1);
            if (burnsAt(first, second.fromH()) || burnsAt(second, first.fromH())) {
                faults.add(new Fault(
                        "fire.litAgainFromH",
                        Numeral.typed(second.fromH(), 6),
                        "an hour at which the other fire is out, each out before the other is lit",
                        ""));
            }
        }
    }

    private static boolean burnsAt(Fire.Lighting fire, double atH) {
        return (atH - fire.fromH() + DAY_H) % DAY_H < fire.forH();
    }

    private void heat(Design design) {
        if (design.coil().heatKW().isEmpty() && design.fire().isEmpty()) {
            needed(
                    "coil.heatKW",
                    false,
                    "without a fire to work it out from, the heat the coil gives the water must be stated");
        }
    }

    private void safety(Design design, Safety safety) {
        safety.vent().filter(vent -> vent.kind() == Vent.Kind.OPEN_PIPE).ifPresent(vent -> {
            String why = "an open pipe is judged by its bore, its height and whether it can be shut";
            needed("safety.vent.tube", vent.tube().isPresent(), why);
            needed("safety.vent.aboveWaterlineM", vent.aboveWaterlineM().isPresent(), why);
            needed("safety.vent.valve", vent.valve().isPresent(), why);
        });
        safety.coldFeed().filter(feed -> feed.kind() != ColdFeed.Kind.BY_HAND).ifPresent(feed -> {
            boolean valveSaid =
                    feed.kind() != ColdFeed.Kind.FEED_CISTERN || feed.valve().isPresent();
            needed("safety.coldFeed.boreMm", feed.boreMm().isPresent(), "the air gap over an inlet goes by its bore");
            needed("safety.coldFeed.valve", valveSaid, "the pipe from a feed cistern must not be shut");
        });
        safety.flue().filter(flue -> flue.heightM().isPresent()).ifPresent(flue -> {
            String why = "how far the gas cools goes by height, bore and insulation";
            needed("safety.flue.diameterMm", flue.diameterMm().isPresent(), why);
            needed("safety.flue.insulated", flue.insulated().isPresent(), why);
        });
        safety.structure().flatMap(Structure::wheels).ifPresent(wheels -> {
            double aboveRoadM = wheels.floorAboveRoadM()
                    + design.tank().baseM()
                    + design.tank().heightM() / 2;
            if (Double.isFinite(aboveRoadM)) {
                TANK_ABOVE_ROAD
                        .faultIn("safety.structure.wheels: middle of the tank above the road", aboveRoadM)
                        .ifPresent(faults::add);
            }
        });
    }

    private void needed(String path, boolean there, String why) {
        if (!there) {
            String allowed = DesignFields.at(path)
                    .filter(field -> field.options().size() <= 2)
                    .map(DesignField::allowed)
                    .orElse("a tube");
            faults.add(new Fault(path, "missing", allowed, why));
        }
    }

    private void fire(Design design, Fire fire) {
        design.coil().heatKW().ifPresentOrElse(heatKW -> fuel(heatKW, fire.fuelKW()), () -> burning(design, fire));
    }

    /** No coil takes more than the fuel holds. */
    private void fuel(double heatKW, double fuelKW) {
        if (heatKW > fuelKW) {
            faults.add(new Fault(
                    "coil.heatKW",
                    Numeral.typed(heatKW, 6),
                    new Allowed(0, Math.floor(fuelKW * 100) / 100, "kW").toString(),
                    "the wood burnt in an hour holds no more"));
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
}

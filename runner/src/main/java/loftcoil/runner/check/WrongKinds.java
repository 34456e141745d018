package loftcoil.runner.check;

import loftcoil.runner.unit.QuantityKind;
import loftcoil.runner.unit.WrittenUnit;

/** Words for an answer whose unit measures something else. */
final class WrongKinds {

    private WrongKinds() {}

    static Verdict.WrongKind say(WrittenUnit given, WrittenUnit wanted) {
        String what =
                (given.shown().isEmpty() ? "a number without a unit" : given.shown()) + " is " + QuantityKind.of(given);
        String want = QuantityKind.of(wanted) + (wanted.shown().isEmpty() ? "" : " such as " + wanted.shown());
        return new Verdict.WrongKind(what, want, help(given, wanted));
    }

    private static String help(WrittenUnit given, WrittenUnit wanted) {
        if (both(given, wanted, "L/min", "kg/s") || both(given, wanted, "L", "kg")) {
            return "Between litres and kilograms stands the density: a litre of water weighs about 1 kg, and a little less"
                    + " when it is hot.";
        }
        if (both(given, wanted, "W", "kJ")) {
            return "A power is energy for each second: 1 kW for 1 hour is 1 kWh.";
        }
        if (both(given, wanted, "m", "Pa")) {
            return "A height of water presses with its density times gravity times the height: 1 m of cold water is about"
                    + " 9.8 kPa. Write mmH2O or mH2O if you mean that.";
        }
        if (both(given, wanted, "kg", "N")) {
            return "Weight as a force is the mass times gravity, 9.81 m/s².";
        }
        return "";
    }

    private static boolean both(WrittenUnit given, WrittenUnit wanted, String one, String other) {
        return (QuantityKind.is(given, one) && QuantityKind.is(wanted, other))
                || (QuantityKind.is(given, other) && QuantityKind.is(wanted, one));
    }
}

package loftcoil.runner.check;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.constant.Constants;
import loftcoil.runner.exercise.Quantity;
import loftcoil.runner.exercise.Quantity.Temperature;
import loftcoil.runner.unit.QuantityKind;
import loftcoil.runner.unit.WrittenUnit;

/** Slips that need no author to foresee them: sign, diameter, gauge, Fahrenheit, litres, minutes, kilo. */
final class UnitSlips {

    private final Quantity quantity;
    private final WrittenUnit wanted;
    private final double reference;
    private final List<KnownIdeas.Idea> slips = new ArrayList<>();

    /** All that may have been meant, with the values they lead to. */
    static KnownIdeas of(Quantity quantity, WrittenUnit wanted, double reference) {
        return KnownIdeas.of(new UnitSlips(quantity, wanted, reference).slips);
    }

    private UnitSlips(Quantity quantity, WrittenUnit wanted, double reference) {
        this.quantity = quantity;
        this.wanted = wanted;
        this.reference = reference;
        times("sign", -1, "The size is right, the sign is turned round. Which of the two is taken from which?");
        diameter();
        gauge();
        fahrenheit();
        perTime();
        kilo();
    }

    private void slip(String name, double value, double factor, String hint) {
        slips.add(new KnownIdeas.Idea(name, value, quantity.tolerance().times(factor), hint));
    }

    private void times(String name, double factor, String hint) {
        if (reference != 0) {
            slip(name, reference * factor, factor, hint);
        }
    }

    private void diameter() {
        boolean squared = quantity.slips().contains(Quantity.Slip.DIAMETER_SQUARED);
        if (squared || quantity.slips().contains(Quantity.Slip.DIAMETER)) {
            double factor = squared ? 4 : 2;
            times(
                    "diameter",
                    factor,
                    "That is " + (squared ? "four times" : "twice")
                            + " too much. Was the diameter taken where the radius belongs?");
            times(
                    "radius",
                    1 / factor,
                    "That is " + (squared ? "a quarter" : "half")
                            + " of it. Was the radius taken where the diameter belongs?");
        }
    }

    private void gauge() {
        if (QuantityKind.is(wanted, "Pa")) {
            double air = Measured.wanted("Pa").to(wanted, Constants.STANDARD_ATMOSPHERE_PA);
            slip(
                    "gauge",
                    reference - air,
                    1,
                    "That looks like the pressure above the air's (a gauge shows it)."
                            + " The pressure is counted from nothing here, so the air's own is part of it.");
            slip(
                    "absolute",
                    reference + air,
                    1,
                    "That has the pressure of the air in it. What is asked for is"
                            + " the part above it, or a difference.");
        }
    }

    private void fahrenheit() {
        if (quantity.temperature() == Temperature.NONE) {
            return;
        }
        WrittenUnit celsius = Measured.wanted("°C");
        WrittenUnit fahrenheit = Measured.wanted("°F");
        boolean level = quantity.temperature() == Temperature.LEVEL;
        if (!wanted.unit().equals(fahrenheit.unit())) {
            double value = level ? wanted.to(fahrenheit, reference) : wanted.stepTo(fahrenheit, reference);
            slip(
                    "fahrenheit",
                    value,
                    1.8,
                    "That is the number in Fahrenheit. Write °F behind it, or turn it" + " into " + wanted.shown()
                            + ".");
        } else {
            double value = level ? wanted.to(celsius, reference) : wanted.stepTo(celsius, reference);
            slip("celsius", value, 1, "That is the number in Celsius. Write °C behind it.");
        }
        if (level && wanted.unit().equals(celsius.unit())) {
            slip(
                    "kelvin",
                    reference + Constants.KELVIN_AT_ZERO_C,
                    1,
                    "That is the number in kelvin. Take 273.15 away, or write K" + " behind it.");
        }
    }

    private void perTime() {
        boolean perTime = QuantityKind.is(wanted, "L/min")
                || QuantityKind.is(wanted, "kg/s")
                || QuantityKind.is(wanted, "m/s")
                || QuantityKind.is(wanted, "s")
                || QuantityKind.is(wanted, "W");
        if (perTime) {
            times("sixty", 60, "That is sixty times too much. Look at minutes and seconds, or hours and minutes.");
            times("sixtieth", 1.0 / 60, "That is a sixtieth of it. Look at minutes and seconds, or hours and minutes.");
            times("hours", 3600, "That is 3600 times too much. Look at hours and seconds.");
            times("seconds", 1.0 / 3600, "That is 3600 times too little. Look at hours and seconds.");
        }
    }

    private void kilo() {
        if (wanted.shown().equals("%")) {
            times("ratio", 0.01, "That is the ratio. In per cent it is a hundred times as much.");
        } else if (quantity.temperature() == Temperature.NONE) {
            String why = kiloWords();
            times("thousand", 1000, "That is a thousand times too much. " + why);
            times("thousandth", 0.001, "That is a thousandth of it. " + why);
            times("tenfold", 10, "That is ten times too much. Look at the decimal point.");
            times("tenth", 0.1, "That is a tenth of it. Look at the decimal point.");
            times(
                    "hundredfold",
                    100,
                    "That is a hundred times too much. Look at the decimal point, and at centimetres.");
            times("hundredth", 0.01, "That is a hundredth of it. Look at the decimal point, and at centimetres.");
        }
    }

    private String kiloWords() {
        if (QuantityKind.is(wanted, "L") || QuantityKind.is(wanted, "L/min")) {
            return "A cubic metre is 1000 litres.";
        } else if (QuantityKind.is(wanted, "W")) {
            return "A kilowatt is 1000 watts.";
        } else if (QuantityKind.is(wanted, "m")) {
            return "A metre is 1000 millimetres.";
        } else if (QuantityKind.is(wanted, "Pa")) {
            return "A kilopascal is 1000 pascals.";
        } else if (QuantityKind.is(wanted, "kg")) {
            return "A kilogram is 1000 grams.";
        }
        return "Look for a kilo that was left out or taken twice.";
    }
}

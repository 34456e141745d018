package loftcoil.runner.handout;

import java.util.Locale;
import java.util.Optional;

/** Whose units a sheet is written in. */
public enum Units {
    /** Metres, litres, kilograms, degrees Celsius, watts. */
    METRIC("metric units"),
    /** Feet and inches, US gallons, pounds, degrees Fahrenheit, British thermal units. */
    US("US customary units");

    private final String words;

    Units(String words) {
        this.words = words;
    }

    /** The units of that name, whatever the case of its letters. */
    public static Optional<Units> named(String name) {
        for (Units units : values()) {
            if (units.name().equals(name.toUpperCase(Locale.ROOT))) {
                return Optional.of(units);
            }
        }
        return Optional.empty();
    }

    /** How a sheet names them. */
    String words() {
        return words;
    }
}

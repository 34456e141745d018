package loftcoil.engine.design;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;

/**
 * What the figures and the verdict of a design rest on: how many of its values are of each origin. Names are none of them, nor is what may
 * be left out and is, unless a number with a stated range stands in for it.
 *
 * @param yours how many were measured, chosen or decided
 * @param assumed how many were guessed or are stated usual values
 * @param borrowed how many were copied from an example and not looked at since
 */
public record Grounds(int yours, int assumed, int borrowed) {

    /** The grounds of a design. */
    public static Grounds of(Design design) {
        return of(DesignFields.of(design));
    }

    /** The grounds of some values of a design. */
    public static Grounds of(Collection<DesignFields.Value> values) {
        Map<Origin, Integer> counts = new EnumMap<>(Origin.class);
        values.stream().filter(Grounds::counts).forEach(value -> counts.merge(origin(value), 1, Integer::sum));
        return new Grounds(
                counts.getOrDefault(Origin.YOURS, 0),
                counts.getOrDefault(Origin.ASSUMED, 0),
                counts.getOrDefault(Origin.BORROWED, 0));
    }

    /** Whether something rests on a value, so that it is counted. */
    static boolean counts(DesignFields.Value value) {
        boolean name = value.path().equals("name") || value.path().endsWith(".name");
        return !name && (value.text().isPresent() || value.field().assumed().isPresent());
    }

    /** A stand-in is assumed, whatever the part round it is. */
    static Origin origin(DesignFields.Value value) {
        return value.text().isPresent() ? value.origin() : Origin.ASSUMED;
    }

    /** Whether every value was measured, chosen, decided or assumed, so that a verdict is one on this house. */
    public boolean own() {
        return borrowed == 0;
    }

    /** All that in a sentence. */
    public String words() {
        return (yours == 1 ? "1 value is yours, " : yours + " values are yours, ") + assumed + " assumed, " + borrowed
                + " borrowed from the example.";
    }
}

package loftcoil.engine.fault;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.words.Numeral;

/**
 * A closed range of finite numbers with its unit.
 *
 * @param low least allowed value
 * @param high greatest allowed value
 * @param unit the unit both are in, as shown to a person; empty for a plain number
 */
public record Allowed(double low, double high, String unit) {

    /** Checks that the range itself makes sense. */
    public Allowed {
        if (!(low <= high)) {
            throw new IllegalArgumentException("low " + low + " must not exceed high " + high);
        }
    }

    /**
     * The fault in a value, if any. A NaN or an infinity is always a fault.
     *
     * @param path where the value stands
     * @param value the value, in {@link #unit}
     */
    public Optional<Fault> faultIn(String path, double value) {
        return value >= low && value <= high
                ? Optional.empty()
                : Optional.of(new Fault(path, Numeral.typed(value), toString(), ""));
    }

    /**
     * The value itself where it is allowed.
     *
     * @param path where the value stands
     * @param value the value, in {@link #unit}
     * @throws RefusedException where the value is outside the range or not finite
     */
    public double require(String path, double value) {
        // Written so that NaN, which compares false with everything, is refused too. No Optional here: this is on the
        // path of every property evaluation.
        if (value >= low && value <= high) {
            return value;
        }
        throw new RefusedException(List.of(new Fault(path, Numeral.typed(value), toString(), "")));
    }

    /** The range in words, such as {@code 0 to 110 °C}. */
    @Override
    public String toString() {
        return Numeral.typed(low) + " to " + Numeral.typed(high) + (unit.isEmpty() ? "" : " " + unit);
    }
}

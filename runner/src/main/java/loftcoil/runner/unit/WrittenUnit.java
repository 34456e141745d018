package loftcoil.runner.unit;

import javax.measure.IncommensurableException;
import javax.measure.Unit;
import tech.units.indriya.unit.Units;

/**
 * A unit as somebody wrote it.
 *
 * @param shown how it is shown in replies; empty for a plain number
 * @param unit what it is
 */
public record WrittenUnit(String shown, Unit<?> unit) {

    /** True where both measure the same kind of thing, so that one can be turned into the other. */
    public boolean fits(WrittenUnit other) {
        return unit.isCompatible(other.unit);
    }

    /** True for a temperature, be it a level or a difference. */
    public boolean isTemperature() {
        return unit.isCompatible(Units.KELVIN);
    }

    /**
     * A value turned into another unit. Temperatures are taken as levels: 0 °C is 273.15 K.
     *
     * @param value in this unit
     * @param other a unit that {@link #fits}
     * @throws IllegalArgumentException where the units measure different things
     */
    public double to(WrittenUnit other, double value) {
        try {
            return unit.getConverterToAny(other.unit).convert(value);
        } catch (IncommensurableException e) {
            throw new IllegalArgumentException(shown + " cannot be turned into " + other.shown, e);
        }
    }

    /**
     * A difference turned into another unit: a step of 1 °C is a step of 1 K. The same as {@link #to} for all that is no
     * temperature.
     *
     * @param value in this unit
     * @param other a unit that {@link #fits}
     * @throws IllegalArgumentException where the units measure different things
     */
    public double stepTo(WrittenUnit other, double value) {
        return isTemperature() ? to(other, value) - to(other, 0) : to(other, value);
    }
}

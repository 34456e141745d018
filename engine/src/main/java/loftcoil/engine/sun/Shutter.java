package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.RefusedException;

/**
 * An insulating board closed over the outermost pane at set hours. While shut it lies on the glass and keeps out all sun.
 *
 * @param resistanceM2KPerW its own resistance in m² K/W, 0 to 5: 40 mm of foam board about 1.1
 * @param shutFromH clock hour it is closed, 0 to 24
 * @param shutForH for how long, in hours, 0 to 24; 0 for never
 */
public record Shutter(double resistanceM2KPerW, double shutFromH, double shutForH) {

    private static final Allowed RESISTANCE = new Allowed(0, 5, "m² K/W");
    private static final Allowed HOURS = new Allowed(0, 24, "h");

    /** A window without one. */
    public static final Shutter NONE = new Shutter(0, 0, 0);

    /**
     * Checks every part.
     *
     * @throws RefusedException with all faults, where a part is outside its range or not a number
     */
    public Shutter {
        new FaultList()
                .check("resistanceM2KPerW", resistanceM2KPerW, RESISTANCE)
                .check("shutFromH", shutFromH, HOURS)
                .check("shutForH", shutForH, HOURS)
                .refuseIfAny();
    }

    /**
     * Whether it is closed at an hour.
     *
     * @param hour clock hour, 0 to 24
     */
    public boolean isShutAt(double hour) {
        double since = (hour - shutFromH) % 24;
        return (since < 0 ? since + 24 : since) < shutForH;
    }
}

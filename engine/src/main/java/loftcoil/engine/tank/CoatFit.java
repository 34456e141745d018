package loftcoil.engine.tank;

/**
 * How a tank's coat sits. The forms of {@link TankLoss} are of a coat without a gap and a tank without a port; real stores lose
 * more, and how much is published: UK SAP 2012 (the same in 10.2), table 2 note 1 and table 2a note 2, gives the loss of stores in
 * factory foam, 0.005 + 0.55/(t + 4.0), and in a loose jacket, 0.005 + 1.76/(t + 12.8) kWh for each litre and day, t in mm,
 * times (120 L/V)^⅓. The part without t is that of ports and pipe stubs; {@link #times} is the rest over the forms, which is the same
 * within 5 % from 25 to 100 mm and from 110 to 210 litres.
 *
 * <p>What foam and wool the table's stores have it does not say. Foam is taken as 0.030 W/(m K) (polyurethane after years, from
 * memory) and the jacket as glass wool of 16 kg/m³ with 0.047 (BS 5422:1990 annex); as PIR foam of 0.023 and wool of 0.037 the
 * shares would be 1.7 and 3.0. A store of 3.07 m³ left to cool says 1.0 for foam. That the table is for 45 K (65 °C in a room at
 * 20 °C) is from memory.
 */
public enum CoatFit {
    /** Foamed on, or cut to the tank and taped without a gap. */
    CLOSE_FITTING(1.3),
    /** Mats or a jacket tied round by hand: gaps, squeezed corners, a thin base. */
    HAND_WRAPPED(2.4);

    /** What ports and their stubs lose on any lagged tank: 0.005 kWh/(L day) of 120 L over 45 K. */
    public static final double PORTS_W_PER_K = 0.005 * 120 * 1000 / 24 / 45;

    private final double times;

    CoatFit(double times) {
        this.times = times;
    }

    /** How many times the forms a coat lets through that sits so. */
    public double times() {
        return times;
    }
}

package loftcoil.engine.study;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * What things cost against each other, in any one unit of money.
 *
 * @param copperPerKg a kilogram of copper tube with its share of fittings
 * @param laggingPerL a litre of lagging, by its own volume
 * @param heightPerM a metre by which the tank is raised: timber, ladder, sweat
 */
public record Prices(double copperPerKg, double laggingPerL, double heightPerM) {

    private static final Allowed PRICE = new Allowed(0, 1_000_000, "");

    /** Invented prices, to start from: put your own in their place. */
    public static final Prices INVENTED = new Prices(12, 0.3, 40);

    /**
     * Checks the prices.
     *
     * @throws RefusedException where a price is outside its range or not a number; all faults at once
     */
    public Prices {
        List<Fault> faults = new ArrayList<>();
        PRICE.faultIn("copperPerKg", copperPerKg).ifPresent(faults::add);
        PRICE.faultIn("laggingPerL", laggingPerL).ifPresent(faults::add);
        PRICE.faultIn("heightPerM", heightPerM).ifPresent(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }
}

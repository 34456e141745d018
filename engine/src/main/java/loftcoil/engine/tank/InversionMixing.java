package loftcoil.engine.tank;

/**
 * Mixes out inversions: warmer water under colder turns over until no layer is colder than the one below. Neighbours that
 * are the wrong way round are pooled to their mean, and pools with pools (the pool-adjacent-violators method of isotonic
 * regression, weighted by mass), which moves the least water that settles the stack and conserves its heat.
 *
 * <p>Water below 4 °C grows lighter as it cools; this is left out, so a tank about to freeze is taken as coldest at its base.
 */
final class InversionMixing {

    private final double[] jPerKg;
    private final double[] kg;

    InversionMixing(double[] jPerKg, double[] kg) {
        this.jPerKg = jPerKg;
        this.kg = kg;
    }

    void settle(int wet) {
        for (int i = 1; i < wet; i++) {
            if (jPerKg[i] < jPerKg[i - 1]) {
                i = pool(i, wet);
            }
        }
    }

    /**
     * Pools a layer that is colder than the one below it with that one and with all that the pool then meets the wrong way round, above
     * and below; layers beyond it are in order already, or still to come. @return the top layer of the pool
     */
    private int pool(int colder, int wet) {
        int low = colder - 1;
        int top = colder;
        double mass = kg[low] + kg[top];
        double heat = kg[low] * jPerKg[low] + kg[top] * jPerKg[top];
        double mean = heat / mass;
        boolean grew = true;
        while (grew) {
            grew = false;
            while (top + 1 < wet && jPerKg[top + 1] < mean) {
                top++;
                mass += kg[top];
                heat += kg[top] * jPerKg[top];
                mean = heat / mass;
                grew = true;
            }
            while (low > 0 && jPerKg[low - 1] > mean) {
                low--;
                mass += kg[low];
                heat += kg[low] * jPerKg[low];
                mean = heat / mass;
                grew = true;
            }
        }
        for (int i = low; i <= top; i++) {
            jPerKg[i] = mean;
        }
        return top;
    }
}

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
    private final double[] poolJ;
    private final double[] poolKg;
    private final int[] poolTo;

    InversionMixing(double[] jPerKg, double[] kg) {
        this.jPerKg = jPerKg;
        this.kg = kg;
        poolJ = new double[kg.length];
        poolKg = new double[kg.length];
        poolTo = new int[kg.length];
    }

    void settle(int wet) {
        for (int i = 1; i < wet; i++) {
            if (jPerKg[i] < jPerKg[i - 1]) {
                pool(wet);
                return;
            }
        }
    }

    private void pool(int wet) {
        int pools = 0;
        for (int i = 0; i < wet; i++) {
            double j = kg[i] * jPerKg[i];
            double mass = kg[i];
            while (pools > 0 && poolJ[pools - 1] * mass >= j * poolKg[pools - 1]) {
                pools--;
                j += poolJ[pools];
                mass += poolKg[pools];
            }
            poolJ[pools] = j;
            poolKg[pools] = mass;
            poolTo[pools] = i;
            pools++;
        }
        int i = 0;
        for (int p = 0; p < pools; p++) {
            // Rounding may leave the mean of a pool a last digit under the pool below; the maximum keeps the order.
            double mean = poolJ[p] / poolKg[p];
            double value = p == 0 ? mean : Math.max(mean, jPerKg[i - 1]);
            for (; i <= poolTo[p]; i++) {
                jPerKg[i] = value;
            }
        }
    }
}

package loftcoil.engine.caution;

import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.FlowSearch;

/**
 * The loop with a coil that lime has narrowed and nobody has cleaned, on a hot tank with the usual fire: the lime of so many years
 * ({@link Limescale}) lies evenly on the bore, as smooth as the tube and as easily passed by heat.
 *
 * @param years the first of up to {@link #YEARS} years after which nothing flows without boiling
 * @param state the loop then; empty where hardly any bore is left
 */
record FurredCoil(int years, Optional<HarderCase> state) {

    /** Years that a coil is left alone: as long as such a coil lasts (common practice, no source). */
    static final int YEARS = 10;

    /** Share of the section from which on a coil counts as closed. */
    private static final double CLOSED = 0.03;

    private static final double HALF_BORE_TAKES = 0.75;

    /** Empty where the loop still runs after all the years, or does not run with a clean coil. */
    static Optional<FurredCoil> of(Design design, Limescale lime) {
        if (lime.kgPerYear() == 0
                || bad(design, lime, 0).isPresent()
                || bad(design, lime, YEARS).isEmpty()) {
            return Optional.empty();
        }
        int good = 0;
        FurredCoil first = bad(design, lime, YEARS).orElseThrow();
        while (first.years() - good > 1) {
            int middle = (good + first.years()) / 2;
            Optional<FurredCoil> then = bad(design, lime, middle);
            first = then.orElse(first);
            good = then.isEmpty() ? middle : good;
        }
        return Optional.of(first);
    }

    private static Optional<FurredCoil> bad(Design design, Limescale lime, int years) {
        double open = 1 - HALF_BORE_TAKES * years / lime.yearsToHalfBore();
        if (open < CLOSED) {
            return Optional.of(new FurredCoil(years, Optional.empty()));
        }
        Design then = years == 0 ? design : Limescale.narrowed(design, Math.sqrt(open));
        Circuit circuit = then.circuit(HarderCase.HOT_C);
        FlowSearch search = circuit.search();
        return search.circulates()
                ? Optional.empty()
                : Optional.of(new FurredCoil(years, Optional.of(HarderCase.tankAt(HarderCase.HOT_C, search))));
    }
}

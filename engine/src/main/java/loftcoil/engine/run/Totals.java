package loftcoil.engine.run;

/** Everything a march has counted up to some moment, heat in J. */
record Totals(
        double solarJ,
        double coilJ,
        double usedJ,
        Losses lossesJ,
        double heldJ,
        double shortJ,
        Litres litres,
        Times times) {

    static final double J_PER_KWH = 3.6e6;

    /** This and something else so many times. */
    Totals and(Totals other, double times) {
        return new Totals(
                solarJ + times * other.solarJ,
                coilJ + times * other.coilJ,
                usedJ + times * other.usedJ,
                lossesJ.and(other.lossesJ, times),
                heldJ + times * other.heldJ,
                shortJ + times * other.shortJ,
                litres.and(other.litres, times),
                this.times.and(other.times, times));
    }

    /** What was counted between an earlier moment and this one. */
    Totals since(Totals before) {
        return new Totals(
                solarJ - before.solarJ,
                coilJ - before.coilJ,
                usedJ - before.usedJ,
                lossesJ.since(before.lossesJ),
                heldJ - before.heldJ,
                shortJ - before.shortJ,
                litres.since(before.litres),
                times.since(before.times));
    }

    EnergyBook book() {
        return new EnergyBook(
                solarJ / J_PER_KWH, coilJ / J_PER_KWH, usedJ / J_PER_KWH, lossesJ.inKWh(), heldJ / J_PER_KWH);
    }
}

package loftcoil.engine.loop;

/** The flows a search walks over, kg/s, both ends more than 0. */
record FlowRange(double lowKgPerS, double highKgPerS) {

    /** Water from 0 to 110 °C takes up less than this, J/kg: a flow that must take up more cannot stay liquid. */
    private static final double MOST_JPERKG = 500_000;
    /** Least and greatest density of water in the range, kg/m³. */
    private static final double LIGHTEST = 950;

    private static final double HEAVIEST = 1000;
    /** Least viscosity of water in the range, Pa s. */
    private static final double THINNEST = 2.5e-4;

    private static final double MOST_KG_PER_S = 1e4;

    /**
     * From the flow below which a lit coil must boil (or the least told flow) to one whose resistance is beyond any
     * drive this height can give.
     */
    static FlowRange of(Segment[] segments, Firing firing) {
        double low = Math.max(FlowSearch.LEAST_KG_PER_S, firing.heatW() / MOST_JPERKG);
        double upM = 0;
        double downM = 0;
        for (Segment segment : segments) {
            upM += Math.max(0, segment.riseM);
            downM += Math.max(0, -segment.riseM);
        }
        // At best all that goes up is light and all that goes down is heavy; the tank's own column closes the loop.
        double mostDrivePa = March.GRAVITY * (HEAVIEST - LIGHTEST) * Math.max(upM, downM);
        double high = 2 * low;
        while (high < MOST_KG_PER_S && resistancePa(segments, high) <= mostDrivePa) {
            high *= high < 0.001 ? 10 : 1.5;
        }
        return new FlowRange(low, high);
    }

    int steps(int perDecade) {
        return Math.max(4, (int) Math.ceil(perDecade * Math.log10(highKgPerS / lowKgPerS)));
    }

    double at(int k, int steps) {
        return k == steps ? highKgPerS : lowKgPerS * Math.pow(highKgPerS / lowKgPerS, (double) k / steps);
    }

    private static double resistancePa(Segment[] segments, double flowKgPerS) {
        double sum = 0;
        for (Segment segment : segments) {
            double reynolds = flowKgPerS * segment.boreM / (segment.areaM2 * THINNEST);
            sum += segment.resistancePa(flowKgPerS, reynolds, HEAVIEST, Direction.FORWARD);
        }
        return sum;
    }
}

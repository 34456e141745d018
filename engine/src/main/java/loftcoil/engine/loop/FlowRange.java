package loftcoil.engine.loop;

import java.util.function.DoublePredicate;
import loftcoil.engine.constant.Constants;

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

    /** Ratios by which the upper end is looked for, in turn. */
    private static final double[] NEARER_AND_NEARER = {Math.pow(1.25, 16), Math.pow(1.25, 4), 1.25};
    /** Flow up to which it is looked for decade by decade. */
    private static final double SLOW = 0.001;

    /** More than any change of density per kelvin in the range, kg/(m³ K). */
    private static final double MOST_SWELLING = 0.8;
    /** Less than any specific heat of water, J/(kg K). */
    private static final double LEAST_HEAT = 4000;

    /**
     * From the flow below which a lit coil must boil (or the least told flow) to one whose resistance is beyond any
     * drive: all heat that can be exchanged on the way bounds how far the water can get from the tank's temperature,
     * the less the faster it flows.
     *
     * @param columnPa push of the tank's column where it is in layers, Pa, of either sign
     */
    static FlowRange of(Segment[] segments, Firing firing, double columnPa) {
        double low = Math.max(FlowSearch.LEAST_KG_PER_S, firing.heatW() / MOST_JPERKG);
        double upM = 0;
        double downM = 0;
        double exchangedW = firing.heatW();
        for (Segment segment : segments) {
            upM += Math.max(0, segment.riseM);
            downM += Math.max(0, -segment.riseM);
            exchangedW += segment.loss.mostW() * segment.lengthM;
        }
        // At best all that goes up is light and all that goes down is heavy; the tank's own column closes the loop.
        double heightM = Math.max(upM, downM);
        double mostW = exchangedW;
        DoublePredicate driven = flow -> flow < MOST_KG_PER_S
                && resistancePa(segments, flow)
                        <= mostDrivePa(heightM, mostW / (flow * LEAST_HEAT)) + Math.abs(columnPa);
        double high = 2 * low;
        while (high < SLOW && driven.test(high)) {
            high *= 10;
        }
        if (driven.test(high)) {
            for (double times : NEARER_AND_NEARER) {
                while (driven.test(high * times)) {
                    high *= times;
                }
            }
            high *= NEARER_AND_NEARER[NEARER_AND_NEARER.length - 1];
        }
        return new FlowRange(low, high);
    }

    private static double mostDrivePa(double heightM, double apartK) {
        return Constants.GRAVITY_M_PER_S2 * heightM * Math.min(HEAVIEST - LIGHTEST, MOST_SWELLING * 2 * apartK);
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

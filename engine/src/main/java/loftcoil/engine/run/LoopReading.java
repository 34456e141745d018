package loftcoil.engine.run;

/** Where a look into a {@link LoopGrid} leaves what it read; made once for a march. Not safe for use by several threads. */
final class LoopReading {

    /** Weights of the nodes, kept here so that a look allocates nothing. */
    final double[] warmWeights = new double[4];

    final double[] columnWeights = new double[4];

    private double flowKgPerS;
    private double lostW;
    private double boilMarginK;
    private double heatW;

    void set(double flow, double lost, double room, double heat) {
        flowKgPerS = Math.max(0, flow);
        lostW = lost;
        boilMarginK = room;
        heatW = heat;
    }

    /** What lies so far, 0 to 1, on the way from this to another reading. */
    void towards(LoopReading other, double share) {
        set(
                between(flowKgPerS, other.flowKgPerS, share),
                between(lostW, other.lostW, share),
                between(boilMarginK, other.boilMarginK, share),
                between(heatW, other.heatW, share));
    }

    static double between(double from, double to, double share) {
        return from + share * (to - from);
    }

    /** kg/s, 0 or more. */
    double flowKgPerS() {
        return flowKgPerS;
    }

    double lostW() {
        return lostW;
    }

    /** K; 0 or less where no steady flow without boiling exists. */
    double boilMarginK() {
        return boilMarginK;
    }

    double heatW() {
        return heatW;
    }
}

package loftcoil.engine.run;

/** Where a look into a {@link LoopGrid} leaves what it read; made once for a march. Not safe for use by several threads. */
final class LoopReading {

    final double[] figures = new double[LoopPoint.FIGURES];
    final double[] warmWeights = new double[4];
    final double[] columnWeights = new double[4];

    /** kg/s, 0 or more. */
    double flowKgPerS() {
        return Math.max(0, figures[0]);
    }

    double lostW() {
        return figures[1];
    }

    /** K; 0 or less where no steady flow without boiling exists. */
    double roomK() {
        return figures[2];
    }

    double heatW() {
        return figures[3];
    }
}

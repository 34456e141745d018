package loftcoil.engine.run;

/**
 * The two things a loop's flow hangs on in a march: temperature of the water that enters it, and how much denser the tank's
 * column between the ports is than that water.
 *
 * @param warmths number of temperatures, from 0 °C up
 * @param stepC spacing of temperatures, K
 * @param columns number of column densities
 * @param fromKgPerM3 first of them, as a difference to the water that enters, kg/m³
 * @param stepKgPerM3 their spacing, kg/m³
 */
record LoopAxes(int warmths, double stepC, int columns, double fromKgPerM3, double stepKgPerM3) {

    /**
     * How close the nodes stand.
     *
     * @param stepC spacing of temperatures, K
     * @param columns number of column densities, 2 or more
     */
    record Mesh(double stepC, int columns) {

        /** The one whose error is measured: flow within 1 % of the search. */
        static final Mesh USUAL = new Mesh(4, 13);

        /** For a search that only guesses: a third of the nodes, flow within some 5 %. */
        static final Mesh ROUGH = new Mesh(8, 9);
    }

    /** Water of 100 °C is 42 kg/m³ lighter than any colder. */
    private static final double MOST_KG_PER_M3 = 42;

    /** A hair below boiling, where a loop can still be searched. */
    private static final double BELOW_BOILING_K = 0.01;

    /** For water that leaves at the lower port: the column above it is lighter. */
    static LoopAxes forward(double boilC, Mesh mesh) {
        return of(boilC, -MOST_KG_PER_M3, mesh);
    }

    /** For water that leaves at the upper port: the column below it is heavier. */
    static LoopAxes backward(double boilC, Mesh mesh) {
        return of(boilC, 0, mesh);
    }

    private static LoopAxes of(double boilC, double fromKgPerM3, Mesh mesh) {
        double topC = boilC - BELOW_BOILING_K;
        int steps = (int) Math.ceil(topC / mesh.stepC());
        return new LoopAxes(
                steps + 1, topC / steps, mesh.columns(), fromKgPerM3, MOST_KG_PER_M3 / (mesh.columns() - 1));
    }

    double enteringC(int warmth) {
        return warmth * stepC;
    }

    double excessKgPerM3(int column) {
        return fromKgPerM3 + column * stepKgPerM3;
    }

    int nodes() {
        return warmths * columns;
    }
}

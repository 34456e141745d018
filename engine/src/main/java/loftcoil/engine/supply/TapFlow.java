package loftcoil.engine.supply;

/** What an open tap does. */
public sealed interface TapFlow {

    /** Name of the outlet. */
    String name();

    /** Flow in L/min; 0 where it does not run. */
    double flowLPerMin();

    /** Static pressure at the mouth, all taps shut, in kPa: negative where the waterline is below it. */
    double staticKPa();

    /**
     * It runs.
     *
     * @param name name of the outlet
     * @param flowLPerMin flow in L/min
     * @param staticKPa static pressure at the mouth, all taps shut, in kPa
     * @param dynamicKPa pressure in the pipe just before the outlet while it runs, over the air outside, in kPa
     * @param velocityMPerS mean velocity in the last pipe in m/s
     * @param reynolds Reynolds number in the last pipe
     */
    record Runs(
            String name, double flowLPerMin, double staticKPa, double dynamicKPa, double velocityMPerS, double reynolds)
            implements TapFlow {}

    /**
     * It does not run: its mouth is at or above the waterline.
     *
     * @param name name of the outlet
     * @param staticKPa static pressure at the mouth in kPa, 0 or less
     * @param aboveWaterlineM how far the mouth is above the waterline in m
     */
    record TooHigh(String name, double staticKPa, double aboveWaterlineM) implements TapFlow {
        @Override
        public double flowLPerMin() {
            return 0;
        }
    }

    /**
     * It does not run while others do: they draw the head in the shared pipe below its mouth, and it sucks air.
     *
     * @param name name of the outlet
     * @param staticKPa static pressure at the mouth, all taps shut, in kPa
     * @param lackingM how far the head in the shared pipe is below the mouth in m
     */
    record Robbed(String name, double staticKPa, double lackingM) implements TapFlow {
        @Override
        public double flowLPerMin() {
            return 0;
        }
    }
}

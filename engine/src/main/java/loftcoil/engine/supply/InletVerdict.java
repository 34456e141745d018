package loftcoil.engine.supply;

/** Whether an appliance's inlet has the pressure it needs. */
public sealed interface InletVerdict {

    /**
     * It has.
     *
     * @param spareKPa pressure to spare in kPa
     */
    record Enough(double spareKPa) implements InletVerdict {}

    /**
     * It has not: the valve may not open, not close tightly, or the machine gives up before it is full.
     *
     * @param shortKPa pressure lacking in kPa
     * @param raiseM how much higher the waterline would have to be in m
     */
    record TooLittle(double shortKPa, double raiseM) implements InletVerdict {}
}

package loftcoil.engine.start;

import java.util.OptionalDouble;

/**
 * One start that was tried, and what became of it. What comes after the first boiling is not to be believed: the push of the bubbles
 * is left out.
 *
 * @param gapH hours without fire before, the loop having run; empty where all of it, the tank too, was as cold as the supply
 * @param tankC temperature of the tank, °C
 * @param counterflow strength of the counterflow inside the tube
 * @param ends what it came to
 * @param forwardAfterMin minutes from lighting until the water flowed forward for good, faster than a twentieth of the steady flow;
 *     empty where it never did
 * @param firstBoilingMin minutes from lighting until water boiled somewhere; empty where it never did
 * @param boilingMin minutes in which water boiled somewhere
 * @param hottestC hottest water in the loop, °C
 * @param canFlow whether the loop has a steady forward flow on that tank in which nothing boils; where it has none, the tank is too hot for
 *     the coil however it is started
 * @param ofSteady mean flow at the end as a share of the steady forward flow, backward less than 0; 0 where there is no such flow
 */
public record Start(
        OptionalDouble gapH,
        double tankC,
        Counterflow counterflow,
        StartEnd ends,
        OptionalDouble forwardAfterMin,
        OptionalDouble firstBoilingMin,
        double boilingMin,
        double hottestC,
        boolean canFlow,
        double ofSteady) {

    /** Boiling that a start may come through, min. */
    static final double BRIEF_MIN = 2;

    /** A start slower than this is not sure, min. */
    static final double SLOW_MIN = 30;

    /** Backward flow that counts, as a share of the steady forward flow. */
    static final double BACKWARD_SHARE = 0.2;

    /** Flow that counts as none, as a share of the steady forward flow. */
    static final double STILL_SHARE = 0.05;

    /** Whether it boils for more than two minutes, or still boils or swings at the end. */
    public boolean bad() {
        return boilingMin > BRIEF_MIN || ends == StartEnd.SWINGS || ends == StartEnd.BOILS;
    }

    /** Whether it boils only because resting water carries no heat in a march without counterflow. */
    boolean stalls() {
        return counterflow == Counterflow.NONE && ends == StartEnd.BOILS && Math.abs(ofSteady) < STILL_SHARE;
    }

    /** Whether it is no danger and yet not as it should be. */
    boolean doubtful() {
        boolean backward = ends == StartEnd.BACKWARD && Math.abs(ofSteady) > BACKWARD_SHARE;
        boolean slow = gapH.isPresent()
                && counterflow != Counterflow.NONE
                && forwardAfterMin.isPresent()
                && forwardAfterMin.getAsDouble() > SLOW_MIN;
        return backward || slow;
    }
}

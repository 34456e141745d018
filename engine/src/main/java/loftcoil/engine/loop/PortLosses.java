package loftcoil.engine.loop;

/** Whether the losses where the loop leaves the tank and enters it again are counted. */
public enum PortLosses {
    /** As in any real loop: one entrance and one exit. */
    COUNTED,
    /** For comparison with published uniform loops, which have no tank in them. */
    LEFT_OUT
}

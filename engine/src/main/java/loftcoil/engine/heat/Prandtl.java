package loftcoil.engine.heat;

import loftcoil.engine.fault.Allowed;

/** The Prandtl numbers the correlations of this room accept: liquid metal to heavy oil. */
final class Prandtl {

    static final Allowed ALLOWED = new Allowed(1e-3, 1e4, "");

    private Prandtl() {}
}

package loftcoil.engine.sun;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * Parallel panes of one glass with air between. Light is followed through each pane (Duffie and Beckman equations 5.2.1 and
 * 5.3.1 to 5.3.3) and back and forth between the panes without end, each polarisation for itself; for panes that swallow
 * nothing this is the N-cover formula 5.1.8. Coated glass does not follow Fresnel's equations: it is the plain pane at each angle,
 * less by what its coat takes square on.
 *
 * @param panes number of panes, 1 to 6
 * @param glass what each is made of
 * @param coat the coating of the innermost pane; of no effect for a single pane
 */
public record PaneStack(int panes, Glass glass, GlassCoat coat) {

    /** Numbers of panes accepted. */
    public static final Allowed PANES = new Allowed(1, 6, "");

    private static final Allowed ANGLE = new Allowed(0, 90, "°");

    /** Light that grazes exactly never enters; a hair off keeps the ratios of vanishing numbers defined. */
    private static final double GRAZING_DEG = 89.999;

    /** Angle at which a beam is reflected as diffuse light is: Duffie and Beckman, sections 5.4 and 5.5. */
    private static final double DIFFUSE_DEG = 60;

    /**
     * Checks the number of panes.
     *
     * @throws RefusedException where it is outside {@link #PANES}
     */
    public PaneStack {
        if (!(panes >= PANES.low() && panes <= PANES.high())) {
            throw new RefusedException(List.of(new Fault("panes", Integer.toString(panes), PANES.toString(), "")));
        }
    }

    /** Panes without a coating. */
    public PaneStack(int panes, Glass glass) {
        this(panes, glass, GlassCoat.NONE);
    }

    /**
     * Follows a beam through the stack, nothing behind it throwing light back.
     *
     * @param incidenceDeg angle from the normal in degrees, 0 to 90
     * @return the shares, unpolarised light
     * @throws RefusedException where the angle is outside its range or not a number
     */
    public Passage at(double incidenceDeg) {
        return through(incidenceDeg, panes - 1);
    }

    /** Diffuse light that comes from the tank; what the panes keep of it stands innermost first. */
    Passage diffuseFromInside() {
        return through(DIFFUSE_DEG, 0);
    }

    /** A coating takes hold where there is a gap for it to lie in. */
    GlassCoat effectiveCoat() {
        return panes > 1 ? coat : GlassCoat.NONE;
    }

    private Passage through(double incidenceDeg, int coated) {
        double angle = Math.min(GRAZING_DEG, ANGLE.require("incidenceDeg", incidenceDeg));
        double inside = Math.toRadians(Fresnel.refractedDeg(angle, glass.refractiveIndex()));
        double survives = Math.exp(-glass.extinctionPerM() * glass.thicknessM() / Math.cos(inside));
        double[] one = new double[panes + 2];
        follow(Fresnel.perpendicular(angle, glass.refractiveIndex()), survives, coated, one);
        follow(Fresnel.parallel(angle, glass.refractiveIndex()), survives, coated, one);
        List<Double> absorbed = new ArrayList<>(panes);
        for (int pane = 0; pane < panes; pane++) {
            absorbed.add(one[pane]);
        }
        return new Passage(one[panes], one[panes + 1], absorbed);
    }

    /**
     * Diffuse light through the stack, as a beam at 60 degrees.
     *
     * @return the shares
     */
    public Passage diffuse() {
        return at(DIFFUSE_DEG);
    }

    /** Share of a beam square on to the panes that comes through. */
    public double transmittanceNormal() {
        return at(0).transmitted();
    }

    /** Share of a beam that survives one pane's glass, reflection left out: Duffie and Beckman equation 5.2.2. */
    double survivesOnePane(double incidenceDeg) {
        double inside = Math.toRadians(Fresnel.refractedDeg(incidenceDeg, glass.refractiveIndex()));
        return Math.exp(-glass.extinctionPerM() * glass.thicknessM() / Math.cos(inside));
    }

    /**
     * Adds half the shares of one polarisation: panes outermost first, then what passes, then what is thrown back. The
     * stack is built up from behind: {@code behind[i]} is what all panes from the i-th on throw back together.
     */
    private void follow(double surface, double survives, int coated, double[] shares) {
        double bounce = surface * survives;
        double plainPasses = survives * (1 - surface) * (1 - surface) / (1 - bounce * bounce);
        double plainThrown = surface * (1 + survives * plainPasses);
        double[] passes = new double[panes];
        double[] thrown = new double[panes];
        Arrays.fill(passes, plainPasses);
        Arrays.fill(thrown, plainThrown);
        passes[coated] = plainPasses * effectiveCoat().passes();
        thrown[coated] = effectiveCoat().thrown(plainThrown);
        double[] behind = new double[panes + 1];
        for (int pane = panes - 1; pane >= 0; pane--) {
            behind[pane] = thrown[pane]
                    + passes[pane] * passes[pane] * behind[pane + 1] / (1 - thrown[pane] * behind[pane + 1]);
        }
        double down = 1;
        for (int pane = 0; pane < panes; pane++) {
            double next = down * passes[pane] / (1 - thrown[pane] * behind[pane + 1]);
            double keeps = 1 - passes[pane] - thrown[pane];
            shares[pane] += 0.5 * keeps * (down + next * behind[pane + 1]);
            down = next;
        }
        shares[panes] += 0.5 * down;
        shares[panes + 1] += 0.5 * behind[0];
    }
}

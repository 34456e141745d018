package loftcoil.engine.tank;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * A tank in its coat as it is built, with what stands beside it to lose heat, and what it loses: the forms of {@link TankLoss} times what the coat's fit lets through, never
 * more than the bare face, and the ports. A bare tank loses by the forms alone.
 *
 * @param shape the inside of the tank
 * @param lagging lagging of its faces
 * @param fit how the lagging sits
 * @param bareWallM2 wall behind panes, which has no coat and whose loss is the panes', m²; 0 to 200
 * @param bareLidM2 the same of the lid, m²; 0 to 200
 * @param radiator a radiator joined to it
 */
public record CoatedTank(
        TankShape shape, TankLagging lagging, CoatFit fit, double bareWallM2, double bareLidM2, TankRadiator radiator) {

    private static final Allowed AREA = new Allowed(0, 200, "m²");

    /**
     * Checks the areas.
     *
     * @throws RefusedException where an area is outside its range or not a number; all faults at once
     */
    public CoatedTank {
        List<Fault> faults = new ArrayList<>();
        AREA.faultIn("bareWallM2", bareWallM2).ifPresent(faults::add);
        AREA.faultIn("bareLidM2", bareLidM2).ifPresent(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
    }

    /** A tank with no panes. */
    public static CoatedTank without(TankShape shape, TankLagging lagging, CoatFit fit) {
        return new CoatedTank(shape, lagging, fit, 0, 0, TankRadiator.NONE);
    }

    /**
     * The same tank with panes before it: what they look at has no coat.
     *
     * @param face what they look at
     * @param paneM2 their area in m², 0 to 50
     * @throws RefusedException where the area is outside its range or not a number
     */
    public CoatedTank behindPanes(SeenFace face, double paneM2) {
        double share = face.losingM2(paneM2) / face.surfaceM2();
        return new CoatedTank(shape, lagging, fit, share * face.wallM2(), share * face.lidM2(), radiator);
    }

    /** The same tank with a radiator joined to it. */
    public CoatedTank with(TankRadiator joined) {
        return new CoatedTank(shape, lagging, fit, bareWallM2, bareLidM2, joined);
    }

    /** What panes look at and has no coat, m². */
    public double bareM2() {
        return bareWallM2 + bareLidM2;
    }

    /**
     * What coat, ports and radiator lose, the radiator's share counted to the wall; what the panes lose is not in it.
     *
     * @param at temperatures of water and surroundings
     * @throws RefusedException where a lagging material is not in the table
     */
    public TankLoss lossAt(Standing at) {
        TankLoss forms = TankLoss.of(shape, lagging, at);
        TankLoss bare = TankLoss.of(shape, TankLagging.BARE, at);
        double ports = lagging.equals(TankLagging.BARE) ? 0 : CoatFit.PORTS_W_PER_K;
        return new TankLoss(
                coated(forms.sideWPerK(), bare.sideWPerK()) * left(bareWallM2, shape.sideM2())
                        + ports
                        + radiator.wPerK(at),
                coated(forms.topWPerK(), bare.topWPerK()) * left(bareLidM2, shape.lidM2()),
                coated(forms.bottomWPerK(), bare.bottomWPerK()));
    }

    private double coated(double formsWPerK, double bareWPerK) {
        return Math.min(fit.times() * formsWPerK, bareWPerK);
    }

    private static double left(double bareM2, double ofM2) {
        return ofM2 > 0 ? Math.max(0, 1 - bareM2 / ofM2) : 1;
    }
}

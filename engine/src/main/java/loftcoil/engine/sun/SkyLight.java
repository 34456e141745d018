package loftcoil.engine.sun;

import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Numeral;

/**
 * What falls on the open, level ground at one moment.
 *
 * @param globalWPerM2 beam and diffuse together on the horizontal in W/m², 0 to 2000
 * @param diffuseWPerM2 the part that comes from the sky and not straight from the sun in W/m², 0 to the global
 * @param outsideNormalWPerM2 square to the sun outside the air in W/m², see {@link Extraterrestrial#normalWPerM2}
 */
public record SkyLight(double globalWPerM2, double diffuseWPerM2, double outsideNormalWPerM2) {

    private static final Allowed IRRADIANCE = new Allowed(0, 2000, "W/m²");
    private static final Allowed OUTSIDE = new Allowed(1300, 1450, "W/m²");

    /**
     * Checks every part.
     *
     * @throws RefusedException where a part is outside its range or the diffuse exceeds the global
     */
    public SkyLight {
        FaultList faults = new FaultList()
                .check("globalWPerM2", globalWPerM2, IRRADIANCE)
                .check("diffuseWPerM2", diffuseWPerM2, IRRADIANCE)
                .check("outsideNormalWPerM2", outsideNormalWPerM2, OUTSIDE);
        // A rounding's worth more is no fault: the year scales diffuse and global apart.
        if (faults.isEmpty() && diffuseWPerM2 > globalWPerM2 * (1 + 1e-12)) {
            faults.add(new Fault(
                    "diffuseWPerM2",
                    Numeral.typed(diffuseWPerM2),
                    "0 to " + globalWPerM2 + " W/m²",
                    "the diffuse is a part of the global"));
        }
        faults.refuseIfAny();
    }

    /** The beam on the horizontal in W/m². */
    public double beamWPerM2() {
        return Math.max(0, globalWPerM2 - diffuseWPerM2);
    }
}

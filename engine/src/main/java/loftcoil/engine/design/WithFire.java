package loftcoil.engine.design;

import java.util.List;
import java.util.OptionalDouble;

/** The ways to change the fire of a design. */
public sealed interface WithFire permits Design {

    /** The coil's heat follows from fire and coil. */
    String WORKED_OUT = "worked out from the fire";

    /** The coil's heat is a number that somebody gave. */
    String STATED = "as stated";

    /** The fire; where there is none, the one it is started with: 1.5 kg/h of air-dry hardwood for four hours from 17:00. */
    static Fire orStarted(Design design) {
        return design.fire().orElse(new Fire("hardwood", 18, 1.5, 17, 4, List.of(1, 2, 3, 4, 10, 11, 12)));
    }

    /** The heat of the coil as stated, else as worked out at a usual flow with the water coming in at 40 °C, kW. */
    static double statedOrWorkedOutKW(Design design) {
        double usualKgPerS = 0.02;
        double usualInletC = 40;
        return design.coilHeating().heatW(usualKgPerS, usualInletC) / 1000;
    }

    private Design self() {
        return (Design) this;
    }

    /**
     * The same design with the coil's heat {@link #WORKED_OUT} or {@link #STATED}. Where it was worked out, the statement
     * begins with the present best estimate, to 0.1 kW.
     */
    default Design withCoilHeatFrom(String source) {
        if (source.equals(STATED)) {
            return self().coil().heatKW().isPresent()
                    ? self().checked()
                    : self().withCoilHeatKW(Math.rint(statedOrWorkedOutKW(self()) * 10) / 10);
        }
        Coil coil = self().coil().withHeat(OptionalDouble.empty());
        return self().withCoilAndFire(coil, orStarted(self()));
    }

    /** The same design burning this wood. */
    default Design withWood(String wood) {
        return self().withFire(orStarted(self()).withWood(wood));
    }

    /** The same design with this much water in the wood, percent of the whole weight. */
    default Design withMoisturePct(double moisturePct) {
        return self().withFire(orStarted(self()).withMoisturePct(moisturePct));
    }

    /** The same design burning this much wood, kg/h. */
    default Design withBurnKgPerH(double burnKgPerH) {
        return self().withFire(orStarted(self()).withBurnKgPerH(burnKgPerH));
    }

    /** The same design with the fire lit at this hour, h. */
    default Design withLitFromH(double litFromH) {
        return self().withFire(orStarted(self()).withLitFromH(litFromH));
    }

    /** The same design with the fire burning this long, h. */
    default Design withLitForH(double litForH) {
        return self().withFire(orStarted(self()).withLitForH(litForH));
    }

    /** The same design with the fire lit in the months of that name, one that the change {@code fire.months} offers. */
    default Design withFireMonths(String season) {
        return self().withFire(FireMonths.lit(orStarted(self()), season));
    }
}

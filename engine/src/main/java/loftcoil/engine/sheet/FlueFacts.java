package loftcoil.engine.sheet;

import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.caution.FireFacts;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Fire;
import loftcoil.engine.design.Flue;
import loftcoil.engine.design.Safety;
import loftcoil.engine.fire.Chimney;
import loftcoil.engine.fire.CoilInFire;
import loftcoil.engine.gas.Atmosphere;

/** What is left of the fire's heat for the flue, told to the rules of danger. */
final class FlueFacts {

    /** Heat lost for each m² and kelvin by a single wall and by an insulated flue; common practice, no source. */
    private static final double SINGLE_W_PER_M2K = 4;

    private static final double INSULATED_W_PER_M2K = 1.3;
    private static final double MM_PER_M = 1000;
    private static final double W_PER_KW = 1000;

    private FlueFacts() {}

    /**
     * The fire with the coil taking this heat; empty where no fire is described, or no heat is taken.
     *
     * @param coilW heat the water takes, W
     */
    static Optional<FireFacts> of(Design design, double coilW) {
        return coilW > 0 ? design.coilInFire().map(fire -> facts(design, fire, coilW)) : Optional.empty();
    }

    private static FireFacts facts(Design design, CoilInFire fire, double coilW) {
        return new FireFacts(
                fire.accountOf(coilW)
                        .match(
                                balance -> OptionalDouble.of(topC(design, fire, balance.flueC())),
                                overdrawn -> OptionalDouble.empty()),
                fire.burn().fuelW() / W_PER_KW);
    }

    private static double topC(Design design, CoilInFire fire, double leavesC) {
        return design.safety()
                .flatMap(Safety::flue)
                .filter(flue -> flue.heightM().isPresent())
                .map(flue -> topC(design, fire, flue, leavesC))
                .orElse(leavesC);
    }

    private static double topC(Design design, CoilInFire fire, Flue flue, double leavesC) {
        double loss = flue.insulated().orElse(false) ? INSULATED_W_PER_M2K : SINGLE_W_PER_M2K;
        double diameterM = flue.diameterMm().orElseThrow() / MM_PER_M;
        Chimney chimney = new Chimney(flue.heightM().orElseThrow(), diameterM, loss, coldestLitC(design));
        return chimney.top(
                        fire.burn(),
                        leavesC,
                        Atmosphere.pressurePa(design.site().altitudeM()))
                .tempC();
    }

    /** Coldest monthly mean of the months in which the fire is lit, °C. */
    private static double coldestLitC(Design design) {
        return design.fire().map(Fire::months).orElseThrow().stream()
                .mapToDouble(month -> design.site().monthly().meanAirC().get(month - 1))
                .min()
                .orElse(design.site().roomC());
    }
}

package loftcoil.engine.sheet;

import java.util.Optional;
import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Fire;
import loftcoil.engine.design.Flue;
import loftcoil.engine.design.Safety;
import loftcoil.engine.fire.Chimney;
import loftcoil.engine.fire.CoilInFire;
import loftcoil.engine.fire.FireSpread;
import loftcoil.engine.fire.LowMidHigh;
import loftcoil.engine.fire.WaterFlow;
import loftcoil.engine.gas.Atmosphere;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.FlowSearch;
import loftcoil.engine.loop.SteadyFlow;

/**
 * The flue gas that a coil leaves behind it, in the same state as the figures of the loop.
 *
 * @param gasC temperature of the gas as it leaves the heater, as best known, °C
 * @param gasTopC temperature of the coolest gas in the flue, at its top where the flue is described, as best known, °C
 * @param gasLowC the same at the low end of what is not known of the fire, °C; the verdict on creosote goes by it. Each doubt counts
 *     alone and their effects add as the root of the sum of squares: not all are at their worst at once. A stated heat may be asked for
 *     and not measured, so it is no evidence on the fire
 * @param dewC temperature below which water condenses out of the gas, on a cold coil or in the flue, °C
 * @param fuelKW net heat in the wood burnt, kW
 */
public record FireFigures(double gasC, double gasTopC, double gasLowC, double dewC, double fuelKW) {

    /** Heat lost for each m² and kelvin by a single wall and by an insulated flue; common practice, no source. */
    private static final double SINGLE_W_PER_M2K = 4;

    private static final double INSULATED_W_PER_M2K = 1.3;
    private static final double MM_PER_M = 1000;
    private static final double W_PER_KW = 1000;

    /**
     * The flue gas with the coil taking the heat of a lit loop; empty where no fire is described or no heat is
     * taken. A fire that does not set free what the coil is said to take leaves gas as cold as the room.
     */
    static Optional<FireFigures> of(Design design, Circuit circuit, FlowSearch lit) {
        double coilW = circuit.setting().firing().heatW();
        return coilW > 0
                ? design.coilInFire().flatMap(fire -> of(design, fire, coilW, water(circuit, lit)))
                : Optional.empty();
    }

    /** The water in the coil: of the loop's flow, or of a usual one from the tank where nothing flows. */
    static WaterFlow water(Circuit circuit, FlowSearch lit) {
        Optional<SteadyFlow> flow = lit.forward();
        return WaterFlow.within(
                flow.map(SteadyFlow::flowKgPerS).orElse(CoilHeating.USUAL_FLOW_KG_PER_S),
                flow.map(found -> found.coil().startC())
                        .orElse(circuit.setting().tankC()));
    }

    private static Optional<FireFigures> of(Design design, CoilInFire fire, double coilW, WaterFlow water) {
        boolean stated = design.coil().heatKW().isPresent();
        LowMidHigh gas = stated ? FireSpread.flueC(fire, coilW, water) : FireSpread.flueC(fire, water);
        double pressurePa = Atmosphere.pressurePa(design.site().altitudeM());
        return Optional.of(new FireFigures(
                gas.mid(),
                topC(design, fire, gas.mid()),
                topC(design, fire, gas.low()),
                fire.burn().flueGas().dewPointC(pressurePa),
                fire.burn().fuelW() / W_PER_KW));
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

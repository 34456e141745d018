package loftcoil.engine.sheet;

import java.util.Optional;
import loftcoil.engine.caution.HarderCase;
import loftcoil.engine.design.Design;
import loftcoil.engine.fire.CoilWall;
import loftcoil.engine.gas.Atmosphere;
import loftcoil.engine.heat.PoolBurnout;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.FlowSearch;

/**
 * The metal of the coil where it touches the water, in the same state as the figures of the loop.
 *
 * @param wallC its mean temperature, °C
 * @param wallHottestC its temperature on the side and in the turn where the fire is fiercest ({@link CoilWall}), °C
 * @param boilingC temperature at which water boils at the coil's upper end, °C
 * @param singsFromTankC temperature of the whole tank from which bubbles form on that side and the coil sings, °C: where the line
 *     through this state and one other tank meets the boiling point; 0 where it sings on a cold tank. Bubbles need 2 to 5 K more than
 *     the boiling point (Davis and Anderson, AIChE J. 12 (1966) 774, from memory), but dissolved air makes some sooner: the two
 *     are taken to cancel
 * @param wallColdestC mean temperature of the metal where the water enters, °C
 * @param dryFromTankC temperature of the whole tank from which no water of the flue gas condenses there, °C, the metal being as much
 *     warmer than the tank as in this state; 0 where it stays dry from the start, NaN where no fire is described
 * @param burnoutShare heat that passes into the water there, as a share of what still, boiling water takes before the metal burns
 *     out ({@link PoolBurnout})
 */
public record CoilFigures(
        double wallC,
        double wallHottestC,
        double boilingC,
        double singsFromTankC,
        double wallColdestC,
        double dryFromTankC,
        double burnoutShare) {

    /** Above this share of burnout the scatter of its law and of the peak factor may use up what is left. */
    static final double BURNOUT_NO_RISK = 0.5;

    private static final double OTHER_TANK_C = HarderCase.HOT_C;
    private static final double NEAR_OTHER_C = 55;

    /** The coil of a lit loop; empty where it takes no heat or no water flows through it. */
    static Optional<CoilFigures> of(Design design, Circuit circuit, FlowSearch lit) {
        if (circuit.setting().firing().heatW() == 0 || lit.forward().isEmpty()) {
            return Optional.empty();
        }
        CoilWall wall = wall(design, circuit, lit);
        double boilingC =
                circuit.boilingC(Math.max(design.coil().inletM(), design.coil().outletM()));
        double burnout = PoolBurnout.wPerM2(Atmosphere.pressurePa(design.site().altitudeM()));
        return Optional.of(new CoilFigures(
                wall.meanC(),
                wall.hottestC(),
                boilingC,
                singsFromC(design, circuit, wall.hottestC(), boilingC),
                wall.coldestC(),
                dryFromC(design, wall.coldestC() - circuit.setting().tankC()),
                wall.hottestWPerM2() / burnout));
    }

    /** Whether the metal is far from burning out as long as there is water in the coil. */
    public boolean burnoutNoRisk() {
        return burnoutShare < BURNOUT_NO_RISK;
    }

    private static double dryFromC(Design design, double warmerK) {
        double pressurePa = Atmosphere.pressurePa(design.site().altitudeM());
        return design.coilInFire()
                .map(fire -> Math.max(0, fire.burn().flueGas().dewPointC(pressurePa) - warmerK))
                .orElse(Double.NaN);
    }

    private static CoilWall wall(Design design, Circuit circuit, FlowSearch lit) {
        return CoilWall.of(
                design.fireCoil(),
                FireFigures.water(circuit, lit),
                circuit.setting().firing().heatW());
    }

    private static double singsFromC(Design design, Circuit circuit, double hottestC, double boilingC) {
        double tankC = circuit.setting().tankC();
        double otherC = tankC < NEAR_OTHER_C ? OTHER_TANK_C : JudgedStates.COOL_C;
        Circuit other = design.circuit(otherC);
        FlowSearch search = other.search();
        if (search.forward().isEmpty()) {
            return hottestC >= boilingC ? 0 : tankC;
        }
        double perK = (wall(design, other, search).hottestC() - hottestC) / (otherC - tankC);
        return Math.min(Math.max(tankC + (boilingC - hottestC) / perK, 0), boilingC);
    }
}

package loftcoil.engine.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.caution.HarderCase;
import loftcoil.engine.design.Design;

/** The steady states in which every design is judged. One that is added here is judged on every face. */
final class JudgedStates {

    /** A tank in the afternoon, °C. */
    static final double COOL_C = Sheet.USUAL_TANK_C;

    /** A tank late in a good evening, when a loop is nearest to boiling, °C. */
    static final double HOT_C = 70;

    private JudgedStates() {}

    /**
     * The states beside the one that the figures are of.
     *
     * @param tankC temperature of the tank of the figures, °C
     * @param spread the loop with the most heat, where the heat is worked out from the fire
     */
    static List<HarderCase> beside(Design design, double tankC, Optional<HeatSpread> spread) {
        List<HarderCase> cases = new ArrayList<>();
        for (double otherC : new double[] {COOL_C, HOT_C}) {
            if (otherC != tankC) {
                cases.add(HarderCase.tankAt(otherC, design.circuit(otherC).search()));
            }
        }
        spread.map(HeatSpread::high).ifPresent(high -> cases.add(HarderCase.coilTaking(high.heatKW(), high.search())));
        return cases;
    }
}

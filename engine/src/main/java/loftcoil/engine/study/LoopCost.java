package loftcoil.engine.study;

import java.util.stream.Stream;
import loftcoil.engine.design.Coil;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.LaggingChoice;
import loftcoil.engine.design.Leg;
import loftcoil.engine.pipe.TubeTable;

/** What the loop of a design costs: copper by weight, lagging by volume, height of the tank above the lowest allowed. */
final class LoopCost {

    private static final double L_PER_M3 = 1000;
    private static final double M_PER_MM = 0.001;

    private LoopCost() {}

    static double of(Design design, Wanted wanted) {
        Prices prices = wanted.prices();
        Coil coil = design.coil();
        double copperKg = copperKg(coil.tube(), coil.lengthM())
                + legs(design)
                        .mapToDouble(leg -> copperKg(leg.tube(), leg.lengthM()))
                        .sum();
        double laggingL = legs(design).mapToDouble(LoopCost::laggingL).sum();
        double raisedM = design.tank().baseM() - wanted.choices().lowestBaseM();
        return prices.copperPerKg() * copperKg + prices.laggingPerL() * laggingL + prices.heightPerM() * raisedM;
    }

    private static Stream<Leg> legs(Design design) {
        return Stream.concat(design.coldLegs().stream(), design.hotLegs().stream());
    }

    static double copperKg(String name, double lengthM) {
        return TubeTable.require("tube", name).copperKgPerM() * lengthM;
    }

    private static double laggingL(Leg leg) {
        double thickM = leg.lagging().map(LaggingChoice::thicknessMm).orElse(0.0) * M_PER_MM;
        double outerM = TubeTable.require("tube", leg.tube()).outerM();
        return L_PER_M3 * Math.PI * (outerM + thickM) * thickM * leg.lengthM();
    }
}

package loftcoil.engine.caution;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.design.Tap;
import loftcoil.engine.supply.InletNeed;
import loftcoil.engine.water.Water;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/** An appliance that has less pressure than its inlet valve needs. */
final class InletHead implements CautionRule {

    private static final double PA_PER_KPA = 1000;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        double density = Water.densityKgPerM3(facts.design().site().coldSupplyC());
        for (Tap tap : facts.design().taps()) {
            double headM = facts.design().tank().waterlineLevelM() - tap.levelM();
            double kPa = density * Constants.GRAVITY_M_PER_S2 * headM / PA_PER_KPA;
            tap.appliance()
                    .flatMap(InletNeed::find)
                    .filter(need -> kPa < need.leastKPa())
                    .ifPresent(need -> findings.caution(
                            CautionKind.INLET,
                            "tap",
                            tap.name(),
                            "head",
                            Measure.metres(headM),
                            "pressure",
                            new Measure(kPa, MeasureKind.PRESSURE_KPA),
                            "machine",
                            need.name(),
                            "least",
                            new Measure(need.leastKPa(), MeasureKind.PRESSURE_KPA)));
        }
    }
}

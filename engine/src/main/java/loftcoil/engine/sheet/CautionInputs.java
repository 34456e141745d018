package loftcoil.engine.sheet;

import java.util.Optional;
import loftcoil.engine.caution.CautionFacts;
import loftcoil.engine.caution.FireFacts;
import loftcoil.engine.caution.YearFacts;
import loftcoil.engine.design.Design;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.FlowSearch;
import loftcoil.engine.run.Extremes;
import loftcoil.engine.run.YearSpread;
import loftcoil.engine.start.Starts;

/** What the figures tell the rules of danger; where a figure has a spread, the dangerous end of it. */
final class CautionInputs {

    private CautionInputs() {}

    static CautionFacts of(Design design, Circuit circuit, FlowSearch lit, Optional<HeatSpread> spread) {
        CautionFacts steady = CautionFacts.steady(design, circuit, lit);
        CautionFacts facts = FireFigures.of(design, circuit, lit)
                .map(fire -> steady.withFire(new FireFacts(fire.gasTopC(), fire.gasLowC(), fire.fuelKW())))
                .orElse(steady);
        return facts.withHarder(JudgedStates.beside(design, circuit.setting().tankC(), spread));
    }

    static CautionFacts withYear(CautionFacts facts, Optional<YearSpread> years) {
        return years.map(spread -> facts.withYear(year(spread)).withWeeks(spread.weeks()))
                .orElse(facts);
    }

    static CautionFacts withStarts(CautionFacts facts, Optional<Starts> starts) {
        return starts.map(facts::withStarts).orElse(facts);
    }

    /** Hottest water in the tank in the course of the year, with the most heat that the fire may give, °C. */
    static double hottestTankC(YearSpread years) {
        return years.high().orElse(years.mid()).extremes().hottestTankC();
    }

    private static YearFacts year(YearSpread years) {
        Extremes hot = years.high().orElse(years.mid()).extremes();
        Extremes cool = years.low().orElse(years.mid()).extremes();
        return new YearFacts(
                hot.hottestTankC(),
                cool.coldestTankC(),
                hot.hottestDrawC(),
                cool.leastAirC(),
                Math.max(cool.longestWarmDays(), hot.longestWarmDays()));
    }
}

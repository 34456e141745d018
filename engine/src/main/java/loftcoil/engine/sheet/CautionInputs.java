package loftcoil.engine.sheet;

import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.caution.CautionFacts;
import loftcoil.engine.caution.FireFacts;
import loftcoil.engine.caution.YearFacts;
import loftcoil.engine.design.Design;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.FlowSearch;
import loftcoil.engine.run.Extremes;
import loftcoil.engine.run.YearRun;
import loftcoil.engine.run.YearSpread;
import loftcoil.engine.start.Starts;

/** What the figures tell the rules of danger; where a figure has a spread, the dangerous end of it. */
final class CautionInputs {

    private static final double MIN_PER_H = 60;

    private CautionInputs() {}

    static CautionFacts of(Design design, Circuit circuit, FlowSearch lit, JudgedStates states) {
        CautionFacts steady = CautionFacts.steady(design, circuit, lit);
        CautionFacts facts = FireFigures.of(design, circuit, lit)
                .map(fire -> steady.withFire(new FireFacts(fire.gasTopC(), fire.gasLowC(), fire.fuelKW())))
                .orElse(steady);
        return facts.withHarder(states.cases()).withSinging(singsFromC(design, circuit, lit));
    }

    private static OptionalDouble singsFromC(Design design, Circuit circuit, FlowSearch lit) {
        return CoilFigures.of(design, circuit, lit)
                .map(coil -> OptionalDouble.of(coil.singsFromTankC()))
                .orElse(OptionalDouble.empty());
    }

    static CautionFacts withYear(CautionFacts facts, Optional<YearSpread> years) {
        return years.map(spread -> facts.withYear(year(spread)).withWeeks(spread.weeks()))
                .orElse(facts);
    }

    static CautionFacts withStarts(CautionFacts facts, Optional<Starts> starts) {
        return starts.map(facts::withStarts).orElse(facts);
    }

    /** Hottest tank of a year that may not be known, °C. */
    static OptionalDouble hottestTankC(Optional<YearSpread> years) {
        return years.map(CautionInputs::hottestTankC).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    /** Hottest water in the tank in the course of the year, with the most heat that the fire may give, °C. */
    private static double hottestTankC(YearSpread years) {
        return years.high().orElse(years.mid()).extremes().hottestTankC();
    }

    private static YearFacts year(YearSpread years) {
        YearRun hotYear = years.high().orElse(years.mid());
        Extremes hot = hotYear.extremes();
        Extremes cool = years.low().orElse(years.mid()).extremes();
        return new YearFacts(
                hot.hottestTankC(),
                cool.coldestTankC(),
                hot.hottestDrawC(),
                cool.leastAirC(),
                Math.max(cool.longestWarmDays(), hot.longestWarmDays()),
                hotYear.whole().boilingMin() / MIN_PER_H,
                hotYear.whole().steamL());
    }
}

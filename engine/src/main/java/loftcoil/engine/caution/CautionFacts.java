package loftcoil.engine.caution;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Safety;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.FlowSearch;
import loftcoil.engine.run.ClearSpell;
import loftcoil.engine.run.Weeks;
import loftcoil.engine.start.Starts;

/**
 * Everything the rules look at. Year and fire are there only where they were computed; the rules that need them stay silent
 * otherwise, or use the steady figures.
 *
 * @param design a checked design
 * @param circuit its loop with the fire lit
 * @param lit what the search of that loop found
 * @param harder the loop under harder conditions, worst last
 * @param year figures of the year; empty where it was not computed
 * @param fire figures of the fire; empty where it was not computed
 * @param starts fires lit after rests; empty where they were not tried
 * @param singsFromC whole tank from which bubbles form on the hottest side of the coil, °C; empty where it was not computed
 * @param weeks clear and dull weeks; none where they were not tried
 */
public record CautionFacts(
        Design design,
        Circuit circuit,
        FlowSearch lit,
        List<HarderCase> harder,
        Optional<YearFacts> year,
        Optional<FireFacts> fire,
        Optional<Starts> starts,
        OptionalDouble singsFromC,
        Weeks weeks) {

    /** Keeps a copy of the cases. */
    public CautionFacts {
        harder = List.copyOf(harder);
    }

    /** The facts of a loop in one steady state. */
    public static CautionFacts steady(Design design, Circuit circuit, FlowSearch lit) {
        return new CautionFacts(
                design,
                circuit,
                lit,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Weeks.NONE);
    }

    /** The same with the loop under harder conditions. */
    public CautionFacts withHarder(List<HarderCase> cases) {
        return new CautionFacts(design, circuit, lit, cases, year, fire, starts, singsFromC, weeks);
    }

    /** The same with figures of the year. */
    public CautionFacts withYear(YearFacts figures) {
        return new CautionFacts(design, circuit, lit, harder, Optional.of(figures), fire, starts, singsFromC, weeks);
    }

    /** The same with figures of the fire. */
    public CautionFacts withFire(FireFacts figures) {
        return new CautionFacts(design, circuit, lit, harder, year, Optional.of(figures), starts, singsFromC, weeks);
    }

    /** The same with fires lit after rests. */
    public CautionFacts withStarts(Starts tried) {
        return new CautionFacts(design, circuit, lit, harder, year, fire, Optional.of(tried), singsFromC, weeks);
    }

    /** The same with the tank from which the coil sings, °C. */
    public CautionFacts withSinging(OptionalDouble fromC) {
        return new CautionFacts(design, circuit, lit, harder, year, fire, starts, fromC, weeks);
    }

    /** The same with clear and dull weeks. */
    public CautionFacts withWeeks(Weeks tried) {
        return new CautionFacts(design, circuit, lit, harder, year, fire, starts, singsFromC, tried);
    }

    /** What the design says on safety. */
    Safety safety() {
        return design.safety().orElse(Safety.UNSAID);
    }

    /** Hottest water the taps can be given: of the year and its clear week, or the tank of the steady state, °C. */
    double hottestDrawC() {
        double meanC =
                year.map(YearFacts::hottestDrawC).orElse(circuit.setting().tankC());
        return weeks.clear().map(week -> Math.max(meanC, week.hottestDrawC())).orElse(meanC);
    }

    /** Hottest water in the tank in the year and its clear week, °C; empty where the year was not computed. */
    OptionalDouble hottestTankC() {
        return Stream.concat(
                        year.map(YearFacts::hottestTankC).stream(),
                        weeks.clear().map(ClearSpell::hottestTankC).stream())
                .mapToDouble(Double::doubleValue)
                .max();
    }

    /** The same, as hot as it may be for all that layers blur: what verdicts go by. */
    OptionalDouble hottestTankAtMostC() {
        OptionalDouble toldC = hottestTankC();
        return toldC.isPresent() ? OptionalDouble.of(toldC.getAsDouble() + YearFacts.BLUR_K) : toldC;
    }

    /** The clear week, where the tank is hotter in it than on any mean day. */
    Optional<ClearSpell> hotterClear() {
        double meanC = year.map(YearFacts::hottestTankC).orElse(Double.POSITIVE_INFINITY);
        return weeks.clear().filter(week -> week.hottestTankC() > meanC + YearFacts.BLUR_K);
    }

    /** Name of a month, 1 to 12. */
    static String monthName(int month) {
        return Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    /** Whether the coil takes heat at all. */
    boolean heated() {
        return circuit.setting().firing().heatW() > 0;
    }

    /** Whether the coil stands as high as the port its hot water should rise to. */
    boolean tankBelowCoil() {
        return design.tank().returnPortLevelM() <= design.coil().outletM();
    }
}

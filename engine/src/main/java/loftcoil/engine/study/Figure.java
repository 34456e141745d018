package loftcoil.engine.study;

import java.util.OptionalDouble;
import java.util.function.Function;
import loftcoil.engine.design.Design;
import loftcoil.engine.loop.SteadyFlow;
import loftcoil.engine.run.YearRun;

/**
 * A figure of a design that a change may better.
 *
 * @param words what it is
 * @param unit its unit
 * @param moreIsBetter whether more of it is better
 * @param reckoned reckons it; empty where the design has none, as a loop that boils has no flow
 */
public record Figure(String words, String unit, boolean moreIsBetter, Function<Design, OptionalDouble> reckoned) {

    /** Flow of the lit loop with the whole tank at a temperature, °C. */
    public static Figure flow(double tankC) {
        return lit("flow of the loop", "kg/s", tankC, SteadyFlow::flowKgPerS);
    }

    /** Least distance from boiling of the lit loop, with the whole tank at a temperature, °C. */
    public static Figure boilMargin(double tankC) {
        return lit(
                "distance from boiling", "K", tankC, flow -> flow.boilMargin().marginK());
    }

    /** Heat the lit loop brings into the tank, with the whole of it at a temperature, °C. */
    public static Figure heatToTank(double tankC) {
        return lit("heat into the tank", "W", tankC, flow -> flow.heat().tankW());
    }

    /** Heat the loop takes from the tank with the fire out, with the whole tank at a temperature, °C. */
    public static Figure nightLoss(double tankC) {
        return new Figure(
                "heat lost through the loop by night",
                "W",
                false,
                design -> OptionalDouble.of(NightLoss.watts(design, tankC)));
    }

    /** Heat missing at the taps over the year. */
    public static Figure yearShortfall() {
        return new Figure(
                "heat missing at the taps in the year",
                "kWh",
                false,
                design -> OptionalDouble.of(YearRun.of(design).shortfallKWh()));
    }

    /** The figure of a design. */
    public OptionalDouble of(Design design) {
        return reckoned.apply(design);
    }

    private static Figure lit(String words, String unit, double tankC, Function<SteadyFlow, Double> part) {
        return new Figure(words, unit, true, design -> design.circuit(tankC)
                .search()
                .forward()
                .map(flow -> OptionalDouble.of(part.apply(flow)))
                .orElse(OptionalDouble.empty()));
    }
}

package loftcoil.engine.study;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.LaggingChoice;
import loftcoil.engine.design.Leg;

/**
 * One change that a builder can make in an afternoon.
 *
 * @param words what is done
 * @param done the design after it; empty where it cannot be done to this design
 */
public record PracticalStep(String words, Function<Design, Optional<Design>> done) {

    private static final double RAISE_M = 0.25;
    private static final double LOWER_M = 0.10;
    private static final double LAGGING_MM = 10;
    private static final double TANK_LAGGING_MM = 20;
    private static final double COIL_M = 0.5;
    private static final double HEAT_KW = 0.5;
    private static final double MOST_LAGGING_MM = 300;

    /** The steps tried, in no order of merit. */
    public static List<PracticalStep> all() {
        return List.of(
                always(
                        "tank 0.25 m higher",
                        design -> design.withTankBaseM(design.tank().baseM() + RAISE_M)),
                always(
                        "coil 0.10 m lower",
                        design -> design.withCoilInletM(design.coil().inletM() - LOWER_M)),
                new PracticalStep("every pipe one size larger", design -> TubeSizes.nextLarger(
                                design.coil().tube())
                        .map(tube -> design.withLoopTube(tube.name()))),
                new PracticalStep("10 mm more lagging on every leg", PracticalStep::lagged),
                new PracticalStep("20 mm more lagging on the tank", PracticalStep::laggedTank),
                new PracticalStep("one more pane", design -> design.window()
                        .map(window -> design.withWindow(window.withPanes(window.panes() + 1)))),
                new PracticalStep("swept bends for every sharp elbow", PracticalStep::swept),
                always(
                        "0.5 m more tube in the coil",
                        design -> design.withCoilLengthM(design.coil().lengthM() + COIL_M)),
                new PracticalStep("0.5 kW less heat in the coil", design -> design.coil().heatKW().stream()
                        .boxed()
                        .filter(heatKW -> heatKW > HEAT_KW)
                        .map(heatKW -> design.withCoilHeatKW(heatKW - HEAT_KW))
                        .findFirst()));
    }

    private static PracticalStep always(String words, Function<Design, Design> done) {
        return new PracticalStep(words, design -> Optional.of(done.apply(design)));
    }

    private static Optional<Design> lagged(Design design) {
        List<Leg> cold = design.coldLegs().stream().map(PracticalStep::lagged).toList();
        List<Leg> hot = design.hotLegs().stream().map(PracticalStep::lagged).toList();
        return Optional.of(design.withLegs(cold, hot));
    }

    private static Optional<Design> laggedTank(Design design) {
        LaggingChoice more = design.tank()
                .lagging()
                .map(lagging ->
                        lagging.withThicknessMm(Math.min(MOST_LAGGING_MM, lagging.thicknessMm() + TANK_LAGGING_MM)))
                .orElse(LaggingChoice.stoneWool(TANK_LAGGING_MM));
        return Optional.of(design.withTank(design.tank().withLagging(more)));
    }

    private static Leg lagged(Leg leg) {
        return leg.withLagging(Optional.of(leg.lagging()
                .map(lagging -> lagging.withThicknessMm(Math.min(MOST_LAGGING_MM, lagging.thicknessMm() + LAGGING_MM)))
                .orElse(LaggingChoice.stoneWool(LAGGING_MM))));
    }

    private static Optional<Design> swept(Design design) {
        List<Leg> cold = design.coldLegs().stream().map(PracticalStep::swept).toList();
        List<Leg> hot = design.hotLegs().stream().map(PracticalStep::swept).toList();
        return cold.equals(design.coldLegs()) && hot.equals(design.hotLegs())
                ? Optional.empty()
                : Optional.of(design.withLegs(cold, hot));
    }

    private static Leg swept(Leg leg) {
        int sharp = leg.fittings().getOrDefault("elbow90", 0);
        int bends = leg.fittings().getOrDefault("bend90", 0);
        return sharp == 0 ? leg : leg.withFittings("elbow90", 0).withFittings("bend90", bends + sharp);
    }
}

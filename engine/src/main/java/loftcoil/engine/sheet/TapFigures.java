package loftcoil.engine.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Tap;
import loftcoil.engine.supply.FillTime;
import loftcoil.engine.supply.TapFlow;

/**
 * A tap alone open and with all others, the tank full to the waterline.
 *
 * @param name the tap
 * @param flowLPerMin flow, L/min; 0 where the mouth is not below the waterline
 * @param headKPa pressure at the mouth with all taps shut, kPa; below 0 where the mouth is above the waterline
 * @param fillMin60L minutes to fill 60 L, the tank kept full; empty where nothing runs
 * @param allOpen flow with every tap of the design open; empty where there is but one
 * @param shares whether its pipe leaves a trunk
 */
public record TapFigures(
        String name,
        double flowLPerMin,
        double headKPa,
        OptionalDouble fillMin60L,
        Optional<TapFlow> allOpen,
        boolean shares) {

    private static final double FILLED_L = 60;

    static List<TapFigures> of(Design design, double waterC) {
        List<TapFlow> together = design.taps().size() > 1 ? design.allTapsOpen(waterC) : List.of();
        List<TapFigures> all = new ArrayList<>();
        for (Tap tap : design.taps()) {
            all.add(of(
                    design,
                    tap,
                    design.supply(tap, waterC).alone(tap.name()),
                    together.stream()
                            .filter(flow -> flow.name().equals(tap.name()))
                            .findFirst()));
        }
        return List.copyOf(all);
    }

    private static TapFigures of(Design design, Tap tap, TapFlow alone, Optional<TapFlow> allOpen) {
        OptionalDouble minutes = FillTime.atFullTank(alone, FILLED_L) instanceof FillTime.Fills fills
                ? OptionalDouble.of(fills.minutes())
                : OptionalDouble.empty();
        return new TapFigures(
                tap.name(), alone.flowLPerMin(), alone.staticKPa(), minutes, allOpen, design.onTrunk(tap));
    }

    /** Flow with every tap open, L/min; not a number where there is but one tap. */
    public double allOpenLPerMin() {
        return allOpen.map(TapFlow::flowLPerMin).orElse(Double.NaN);
    }

    /** What is to be said of the flow with every tap open; may be empty. */
    String allOpenNote() {
        if (allOpen.filter(TapFlow.Robbed.class::isInstance).isPresent()) {
            return "the others empty the trunk, and it sucks air";
        }
        return shares ? "it shares a trunk" : "on a pipe of its own";
    }
}

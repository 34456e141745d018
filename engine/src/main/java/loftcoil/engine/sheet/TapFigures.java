package loftcoil.engine.sheet;

import java.util.List;
import java.util.OptionalDouble;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Tap;
import loftcoil.engine.supply.FillTime;
import loftcoil.engine.supply.TapFlow;

/**
 * A tap alone open, the tank full to the waterline.
 *
 * @param name the tap
 * @param flowLPerMin flow, L/min; 0 where the mouth is not below the waterline
 * @param headKPa pressure at the mouth with all taps shut, kPa; below 0 where the mouth is above the waterline
 * @param fillMin60L minutes to fill 60 L, the tank kept full; empty where nothing runs
 */
public record TapFigures(String name, double flowLPerMin, double headKPa, OptionalDouble fillMin60L) {

    private static final double FILLED_L = 60;

    static List<TapFigures> of(Design design, double waterC) {
        return design.taps().stream().map(tap -> of(design, tap, waterC)).toList();
    }

    private static TapFigures of(Design design, Tap tap, double waterC) {
        TapFlow flow = design.supply(tap, waterC).alone(tap.name());
        OptionalDouble minutes = FillTime.atFullTank(flow, FILLED_L) instanceof FillTime.Fills fills
                ? OptionalDouble.of(fills.minutes())
                : OptionalDouble.empty();
        return new TapFigures(tap.name(), flow.flowLPerMin(), flow.staticKPa(), minutes);
    }
}

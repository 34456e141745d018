package loftcoil.engine.design;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** The ways to change every tap of a design at once. */
public sealed interface WithTaps permits Design {

    /** What a mixing valve before the taps may be set to; 41 to 48 °C are the settings that health codes name. */
    List<String> MIXERS =
            List.of("none", "set to 38 °C", "set to 41 °C", "set to 43 °C", "set to 45 °C", "set to 48 °C");

    /** The taps; where there are none, the one they are started with: a sink on 4 m of 22 mm tube with five elbows. */
    static List<Tap> orStarted(Design design) {
        Tap sink = new Tap(
                "kitchen sink",
                1.05,
                "EN1057 22x0.9",
                4,
                Map.of("elbow90", 5),
                6,
                OptionalDouble.empty(),
                Optional.empty());
        return design.taps().isEmpty() ? List.of(sink) : design.taps();
    }

    /** The setting of {@link #MIXERS} at the first tap; a valve set otherwise counts as the nearest one. */
    static String mixer(Design design) {
        OptionalDouble set = orStarted(design).get(0).mixerC();
        if (set.isEmpty()) {
            return MIXERS.get(0);
        }
        String nearest = MIXERS.get(1);
        for (String option : MIXERS.subList(1, MIXERS.size())) {
            if (Math.abs(degrees(option) - set.getAsDouble()) < Math.abs(degrees(nearest) - set.getAsDouble())) {
                nearest = option;
            }
        }
        return nearest;
    }

    private static double degrees(String option) {
        return Double.parseDouble(option.replaceAll("[^0-9]", ""));
    }

    private Design self() {
        return (Design) this;
    }

    private Design each(UnaryOperator<Tap> change) {
        return self().withTaps(orStarted(self()).stream().map(change).toList());
    }

    /** The same design with the pipe to every tap of this tube. */
    default Design withTapTube(String tube) {
        return each(tap -> tap.withTube(tube));
    }

    /** The same design with this many sharp 90° elbows on the way to every tap. */
    default Design withTapElbows(int elbows) {
        return each(tap -> tap.withFittings("elbow90", elbows));
    }

    /** The same design with every tap behind a mixing valve as one of {@link #MIXERS} says. */
    default Design withTapMixer(String setting) {
        OptionalDouble setC =
                setting.equals(MIXERS.get(0)) ? OptionalDouble.empty() : OptionalDouble.of(degrees(setting));
        return each(tap -> tap.withMixerC(setC));
    }
}

package loftcoil.engine.build;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import loftcoil.engine.build.FirstHour.Row;
import loftcoil.engine.build.FirstHour.Sign;
import loftcoil.engine.build.FirstHour.State;
import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.design.Design;
import loftcoil.engine.fire.LowMidHigh;
import loftcoil.engine.run.FirstFire;
import loftcoil.engine.run.FirstFire.Moment;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;

/** Marches the first hour with the least, the likeliest and the most heat, and puts it into words. */
final class FirstHourMaker {

    private static final List<Integer> MINUTES = List.of(0, 1, 2, 5, 10, 15, 20, 30, 45, 60);
    private static final double EARLY_MIN = 10;
    private static final double CLEARLY_K = 5;
    private static final double HOUR_MIN = 60;

    private final FirstFire low;
    private final FirstFire mid;
    private final FirstFire high;
    private final double startC;
    private final boolean spread;
    private final List<Sign> signs = new ArrayList<>();

    private FirstHourMaker(Design design) {
        startC = design.site().coldSupplyC();
        LowMidHigh heat = design.coilHeatW(CoilHeating.USUAL_FLOW_KG_PER_S, startC);
        spread = heat.mid() > 0 && heat.low() < heat.high();
        mid = FirstFire.of(design);
        low = spread ? FirstFire.of(design, heat.low() / heat.mid()) : mid;
        high = spread ? FirstFire.of(design, heat.high() / heat.mid()) : mid;
    }

    static FirstHour of(Design design) {
        FirstHourMaker maker = new FirstHourMaker(design);
        maker.signs();
        return new FirstHour(
                maker.rows(),
                maker.signs,
                WrongPictures.of(maker.mid.at(EARLY_MIN), maker.low.at(EARLY_MIN), maker.high.at(EARLY_MIN)),
                maker.notes(design));
    }

    private List<Row> rows() {
        return MINUTES.stream()
                .map(minute -> new Row(
                        Measure.minutes(minute), state(low.at(minute)), state(mid.at(minute)), state(high.at(minute))))
                .toList();
    }

    private static State state(Moment moment) {
        return new State(
                Measure.celsius(moment.coilOutC()),
                Measure.celsius(moment.returnC()),
                Measure.celsius(moment.coilInC()),
                Measure.celsius(moment.topC()),
                Measure.celsius(moment.middleC()),
                Measure.celsius(moment.bottomC()),
                Measure.litresPerMin(moment.flowLPerMin()));
    }

    private void signs() {
        sign("coil outlet, on the bare tube just outside the heater", FirstFire::coilOutC);
        sign("top of the hot leg, at the return port", FirstFire::returnC);
        sign("top of the tank", FirstFire::topC);
        sign("middle of the tank", FirstFire::middleC);
        sign("foot of the cold leg, before the coil", FirstFire::coilInC);
        Moment late = mid.at(HOUR_MIN);
        signs.add(new Sign(
                "the loop as a whole",
                MeasuredText.of(
                        "The water goes round at ",
                        between(FirstHourMaker::flow),
                        " once it has settled; you cannot see that, but you can read it: coil outlet less coil inlet is then ",
                        between(moment -> Measure.kelvins(moment.coilOutC() - moment.coilInC())),
                        ". It makes no sound beyond a faint tick of warming metal.")));
        if (late.bottomC() - startC < CLEARLY_K) {
            signs.add(new Sign(
                    "bottom of the tank",
                    MeasuredText.of(
                            "Still at ",
                            Measure.celsius(late.bottomC()),
                            " after the hour: warm water lies on top and works its way down. That is right.")));
        }
    }

    private static Measure flow(Moment moment) {
        return Measure.litresPerMin(moment.flowLPerMin());
    }

    /** What is read at the end of the hour, with its ends where they differ. */
    private MeasuredText between(Function<Moment, Measure> figure) {
        Measure middle = figure.apply(mid.at(HOUR_MIN));
        if (!spread) {
            return MeasuredText.of(middle);
        }
        return MeasuredText.of(
                middle, " (", figure.apply(low.at(HOUR_MIN)), " to ", figure.apply(high.at(HOUR_MIN)), ")");
    }

    private void sign(String where, Function<FirstFire, double[]> curve) {
        double[] temps = curve.apply(mid);
        double endC = temps[temps.length - 1];
        List<Object> words = new ArrayList<>();
        OptionalDouble warm = firstAbove(temps, HandWarmth.WARM_C);
        if (max(temps) - startC < CLEARLY_K) {
            words.add("Stays as cold as it was, ");
            words.add(Measure.celsius(endC));
            words.add(" at the end of the hour.");
        } else {
            if (warm.isPresent()) {
                words.add("First warm to the hand after about ");
                words.add(minutes(warm.getAsDouble()));
                words.add(ends(curve));
                words.add(". ");
            } else {
                words.add("Does not get warm to the hand in this hour: go by the thermometer. ");
            }
            slug(words, temps);
            words.add("After ten minutes ");
            words.add(Measure.celsius(temps[index(EARLY_MIN)]));
            words.add(", after the hour ");
            words.add(Measure.celsius(endC));
            words.add(range(curve));
            words.add(": " + HandWarmth.words(endC) + ".");
        }
        signs.add(new Sign(where, MeasuredText.of(words.toArray())));
    }

    /** The water that stood in the coil until the loop moved comes as one hot slug. */
    private void slug(List<Object> words, double[] temps) {
        int peak = 0;
        for (int i = 0; i <= index(EARLY_MIN); i++) {
            peak = temps[i] > temps[peak] ? i : peak;
        }
        if (temps[peak] - temps[index(EARLY_MIN)] > CLEARLY_K) {
            words.add(
                    "A first slug, the water that stood in the coil until the loop began to move, comes by at up to ");
            words.add(Measure.celsius(temps[peak]));
            words.add(" after about ");
            words.add(minutes(mid.minutes()[peak]));
            words.add(" (" + HandWarmth.words(temps[peak])
                    + "); then it settles. With a fire that grows slowly the slug is milder. ");
        }
    }

    private MeasuredText ends(Function<FirstFire, double[]> curve) {
        OptionalDouble soon = firstAbove(curve.apply(high), HandWarmth.WARM_C);
        OptionalDouble late = firstAbove(curve.apply(low), HandWarmth.WARM_C);
        if (!spread || soon.isEmpty()) {
            return MeasuredText.of("");
        }
        return late.isPresent()
                ? MeasuredText.of(" (", minutes(soon.getAsDouble()), " to ", minutes(late.getAsDouble()), ")")
                : MeasuredText.of(
                        " (", minutes(soon.getAsDouble()), " with the most heat; with the least not in this hour)");
    }

    private MeasuredText range(Function<FirstFire, double[]> curve) {
        if (!spread) {
            return MeasuredText.of("");
        }
        double[] one = curve.apply(low);
        double[] other = curve.apply(high);
        double first = one[one.length - 1];
        double last = other[other.length - 1];
        return MeasuredText.of(
                " (", Measure.celsius(Math.min(first, last)), " to ", Measure.celsius(Math.max(first, last)), ")");
    }

    private List<MeasuredText> notes(Design design) {
        List<MeasuredText> notes = new ArrayList<>();
        notes.add(MeasuredText.of(
                "Minute 0 is when the fire burns at its full rate, not when the match is struck: add ten to twenty minutes for"
                        + " kindling (common practice, no source). Tank, loop and copper start at ",
                Measure.celsius(startC),
                ", at rest; nobody draws, no sun shines."));
        notes.add(MeasuredText.of(
                "Reckoned: water and copper of the whole loop in pieces of a tenth of a metre, the tank in "
                        + mid.at(0).layersC().size()
                        + " layers, weight against friction and inertia. Left out: the mass of the heater itself, lagging that warms up, panes; all"
                        + " of them make it later. The order of things does not change."));
        if (spread) {
            notes.add(MeasuredText.of(
                    "In brackets: with the least and the most heat that the coil may take from this fire."));
        } else {
            notes.add(MeasuredText.of(
                    "The heat of the coil is taken as stated in the design. If that was a guess, times and rises may be off"
                            + " by four tenths."));
        }
        boiling(notes);
        notes.add(MeasuredText.of(
                "Do not feel your way up: start with the back of the hand near the pipe, then a short touch. Metal that burns"
                        + " within a second does not look hot."));
        if (design.fire().isEmpty()) {
            notes.add(MeasuredText.of("The design does not describe the fire; only its heat counts here."));
        }
        return notes;
    }

    private void boiling(List<MeasuredText> notes) {
        if (mid.energy().steamJ() > 0) {
            notes.add(MeasuredText.of(
                    "**In this reckoning some water boils in the first hour, before the flow is there to carry the heat off. Begin with"
                            + " a small fire and let it grow only when the top of the hot leg is warm.**"));
        } else if (high.energy().steamJ() > 0) {
            notes.add(MeasuredText.of(
                    "**With the most heat the fire may give, some water boils before the flow is there. Begin with a small"
                            + " fire.**"));
        }
    }

    private OptionalDouble firstAbove(double[] temps, double limitC) {
        double[] minutes = mid.minutes();
        for (int i = 0; i < temps.length; i++) {
            if (temps[i] >= limitC) {
                return OptionalDouble.of(minutes[i]);
            }
        }
        return OptionalDouble.empty();
    }

    private static Measure minutes(double minutes) {
        return Measure.minutes(Math.ceil(minutes));
    }

    private static double max(double[] values) {
        return java.util.Arrays.stream(values).max().orElseThrow();
    }

    private int index(double minute) {
        return (int) Math.rint(minute / HOUR_MIN * (mid.moments().size() - 1));
    }
}

package loftcoil.engine.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import loftcoil.engine.words.Sentences;

/** Marches the first hour with the least, the likeliest and the most heat, and puts it into words. */
final class FirstHourMaker {

    private static final Sentences SENTENCES = Sentences.read(FirstHourMaker.class, "first-hour.properties");
    /** When the system is looked at, min: in the table and in the form to fill in. */
    static final List<Integer> MINUTES = List.of(0, 1, 2, 5, 10, 15, 20, 30, 45, 60);

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
        sign("sign.coil-outlet", FirstFire::coilOutC);
        sign("sign.hot-leg-top", FirstFire::returnC);
        sign("sign.tank-top", FirstFire::topC);
        sign("sign.tank-middle", FirstFire::middleC);
        sign("sign.cold-leg-foot", FirstFire::coilInC);
        signs.add(new Sign(SENTENCES.say("sign.loop"), goesRound()));
        Measure bottom = Measure.celsius(mid.at(HOUR_MIN).bottomC());
        if (bottom.value() - startC < CLEARLY_K) {
            signs.add(new Sign(SENTENCES.say("sign.tank-bottom"), SENTENCES.say("sign.cold-bottom", "end", bottom)));
        }
    }

    private MeasuredText goesRound() {
        Moment end = mid.at(HOUR_MIN);
        Moment least = low.at(HOUR_MIN);
        Moment most = high.at(HOUR_MIN);
        if (!spread) {
            return SENTENCES.say("sign.goes-round", "flow", flow(end), "rise", rise(end));
        }
        return SENTENCES.say(
                "sign.goes-round-between",
                "flow",
                flow(end),
                "lowFlow",
                flow(least),
                "highFlow",
                flow(most),
                "rise",
                rise(end),
                "lowRise",
                rise(least),
                "highRise",
                rise(most));
    }

    private static Measure flow(Moment moment) {
        return Measure.litresPerMin(moment.flowLPerMin());
    }

    private static Measure rise(Moment moment) {
        return Measure.kelvins(moment.coilOutC() - moment.coilInC());
    }

    private void sign(String where, Function<FirstFire, double[]> curve) {
        double[] temps = curve.apply(mid);
        List<MeasuredText> said = new ArrayList<>();
        if (max(temps) - startC < CLEARLY_K) {
            said.add(SENTENCES.say("sign.stays-cold", "end", Measure.celsius(end(temps))));
        } else {
            said.add(firstWarm(curve));
            slug(temps).ifPresent(said::add);
            said.add(settles(curve));
        }
        List<Object> spaced = new ArrayList<>();
        said.forEach(sentence -> spaced.addAll(spaced.isEmpty() ? List.of(sentence) : List.of(" ", sentence)));
        signs.add(new Sign(SENTENCES.say(where), MeasuredText.of(spaced.toArray())));
    }

    private MeasuredText firstWarm(Function<FirstFire, double[]> curve) {
        OptionalDouble after = firstAbove(curve.apply(mid), HandWarmth.WARM_C);
        OptionalDouble soon = firstAbove(curve.apply(high), HandWarmth.WARM_C);
        OptionalDouble late = firstAbove(curve.apply(low), HandWarmth.WARM_C);
        if (after.isEmpty()) {
            return SENTENCES.say("sign.never-warm");
        }
        Measure likely = minutes(after.getAsDouble());
        if (!spread || soon.isEmpty()) {
            return SENTENCES.say("sign.first-warm", "after", likely);
        }
        Measure first = minutes(soon.getAsDouble());
        return late.isPresent()
                ? SENTENCES.say(
                        "sign.first-warm-between", "after", likely, "soon", first, "late", minutes(late.getAsDouble()))
                : SENTENCES.say("sign.first-warm-perhaps", "after", likely, "soon", first);
    }

    /** The water that stood in the coil until the loop moved comes as one hot slug. */
    private Optional<MeasuredText> slug(double[] temps) {
        int peak = 0;
        for (int i = 0; i <= index(EARLY_MIN); i++) {
            peak = temps[i] > temps[peak] ? i : peak;
        }
        if (!(temps[peak] - temps[index(EARLY_MIN)] > CLEARLY_K)) {
            return Optional.empty();
        }
        return Optional.of(SENTENCES.say(
                "sign.slug",
                "peak",
                Measure.celsius(temps[peak]),
                "after",
                minutes(mid.minutes()[peak]),
                "feels",
                HandWarmth.words(temps[peak])));
    }

    private MeasuredText settles(Function<FirstFire, double[]> curve) {
        double[] temps = curve.apply(mid);
        Measure early = Measure.celsius(temps[index(EARLY_MIN)]);
        Measure end = Measure.celsius(end(temps));
        String feels = HandWarmth.words(end.value());
        if (!spread) {
            return SENTENCES.say("sign.settles", "early", early, "end", end, "feels", feels);
        }
        double one = end(curve.apply(low));
        double other = end(curve.apply(high));
        return SENTENCES.say(
                "sign.settles-between",
                "early",
                early,
                "end",
                end,
                "low",
                Measure.celsius(Math.min(one, other)),
                "high",
                Measure.celsius(Math.max(one, other)),
                "feels",
                feels);
    }

    private static double end(double[] temps) {
        return temps[temps.length - 1];
    }

    private List<MeasuredText> notes(Design design) {
        List<MeasuredText> notes = new ArrayList<>();
        notes.add(SENTENCES.say("note.start", "start", Measure.celsius(startC)));
        notes.add(SENTENCES.say(
                "note.reckoned", "layers", Measure.count(mid.at(0).layersC().size())));
        notes.add(SENTENCES.say(spread ? "note.brackets" : "note.stated"));
        if (mid.energy().steamJ() > 0) {
            notes.add(SENTENCES.say("note.boils"));
        } else if (high.energy().steamJ() > 0) {
            notes.add(SENTENCES.say("note.may-boil"));
        }
        notes.add(SENTENCES.say("note.hand"));
        if (design.fire().isEmpty()) {
            notes.add(SENTENCES.say("note.no-fire-described"));
        }
        return notes;
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

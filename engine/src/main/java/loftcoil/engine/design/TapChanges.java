package loftcoil.engine.design;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.supply.RatedFlow;
import loftcoil.engine.supply.TapClass;

/** The named changes of every tap at once, and of the site. */
final class TapChanges {

    /** A valve as wide as the pipe has no rated flow. */
    private static final String BY_LOSS = "full-way valve, by its loss in the design";

    private static final String ELBOW = "elbow90";

    /** A mixing valve before the taps; 41 to 48 °C are the settings that health codes name. */
    private enum Mixer implements Coded {
        NONE("none", OptionalDouble.empty()),
        AT_38("set to 38 °C", OptionalDouble.of(38)),
        AT_41("set to 41 °C", OptionalDouble.of(41)),
        AT_43("set to 43 °C", OptionalDouble.of(43)),
        AT_45("set to 45 °C", OptionalDouble.of(45)),
        AT_48("set to 48 °C", OptionalDouble.of(48));

        private final String code;
        private final OptionalDouble setC;

        Mixer(String code, OptionalDouble setC) {
            this.code = code;
            this.setC = setC;
        }

        @Override
        public String code() {
            return code;
        }

        /** The setting at the first tap; a valve set otherwise counts as the nearest one. */
        static Mixer of(Design design) {
            OptionalDouble set = TapFields.orStarted(design).get(0).mixerC();
            return set.isEmpty()
                    ? NONE
                    : Stream.of(values())
                            .filter(mixer -> mixer != NONE)
                            .min(Comparator.comparingDouble(
                                    mixer -> Math.abs(mixer.setC.orElseThrow() - set.getAsDouble())))
                            .orElse(NONE);
        }
    }

    private TapChanges() {}

    static void into(ChangeTable table) {
        table.tube("taps.tube", "Tube of the pipe to every tap", "taps[].tube")
                .as(
                        design -> TapFields.orStarted(design).get(0).tube(),
                        (design, tube) -> each(design, tap -> tap.onTube(tube)));
        table.whole(
                        "taps.elbows",
                        "Sharp 90° elbows on the way to every tap",
                        new Allowed(0, CoilFields.MOST_FITTINGS, ""),
                        "taps[].fittings.*")
                .as(
                        design -> TapFields.orStarted(design).get(0).fittings().getOrDefault(ELBOW, 0),
                        (design, elbows) -> each(
                                design,
                                tap -> TapFields.TABLE.with(
                                        tap, TapFields.FITTINGS, Counts.with(tap.fittings(), ELBOW, elbows))));
        table.named("taps.kind", "Kind of every tap", kinds(), "taps[].ratedLPerMin", "taps[].ratedKPa")
                .as(TapChanges::kind, (design, kind) -> each(design, tap -> rated(tap, TapClass.find(kind))));
        table.choice("taps.mixer", "Mixing valve before every tap", Mixer.class, "taps[].mixerC")
                .as(
                        Mixer::of,
                        (design, mixer) -> each(design, tap -> TapFields.TABLE.with(tap, TapFields.MIXER, mixer.setC)));
        table.fields("site.altitudeM", "site.hardnessMgPerL");
    }

    private static List<String> kinds() {
        return Stream.concat(Stream.of(BY_LOSS), TapClass.all().stream().map(TapClass::name))
                .toList();
    }

    /** That of the first tap; one rated otherwise counts as the nearest. */
    private static String kind(Design design) {
        return TapFields.orStarted(design)
                .get(0)
                .rated()
                .flatMap(rated -> TapClass.all().stream()
                        .min(Comparator.comparingDouble(one -> Math.abs(Math.log(width(one.rated()) / width(rated))))))
                .map(TapClass::name)
                .orElse(BY_LOSS);
    }

    private static double width(RatedFlow rated) {
        return rated.lPerMin() / Math.sqrt(rated.kPa());
    }

    private static Tap rated(Tap tap, Optional<TapClass> kind) {
        OptionalDouble flow =
                kind.map(one -> OptionalDouble.of(one.rated().lPerMin())).orElse(OptionalDouble.empty());
        OptionalDouble pressure =
                kind.map(one -> OptionalDouble.of(one.rated().kPa())).orElse(OptionalDouble.empty());
        return TapFields.TABLE.with(
                TapFields.TABLE.with(tap, TapFields.RATED_FLOW, flow), TapFields.RATED_PRESSURE, pressure);
    }

    private static Design each(Design design, UnaryOperator<Tap> change) {
        List<Tap> taps = TapFields.orStarted(design).stream().map(change).toList();
        return design.with(DesignTable.TAPS, taps);
    }
}

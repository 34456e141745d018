package loftcoil.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import loftcoil.engine.fault.Allowed;

/** The named changes of what can hurt somebody: vent, cold feed, frost. */
final class SafetyChanges {

    /** What may stand in an open vent. */
    private enum VentValve implements Coded {
        NONE("none"),
        VALVE("a valve");

        private final String code;

        VentValve(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    /** What the cold feed is joined to. */
    private enum Supply implements Coded {
        NOT_SAID(Form.NOT_SAID),
        DRUNK("water that somebody drinks"),
        APART("water that nobody drinks");

        private final String code;

        Supply(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }

        static Supply of(Design design) {
            return SafetyFields.said(design)
                    .coldFeed()
                    .filter(feed -> design.origin("safety.coldFeed.drinkingWater") != Origin.ASSUMED)
                    .map(feed -> feed.drinkingWater() ? DRUNK : APART)
                    .orElse(NOT_SAID);
        }
    }

    /** How the dwelling is left in winter. */
    private enum Left implements Coded {
        NOT_SAID(Form.NOT_SAID),
        NEVER("never left"),
        FULL("left full"),
        DRAINED("drained");

        private final String code;

        Left(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }

        static Left of(Design design) {
            return SafetyFields.said(design)
                    .absence()
                    .map(absence -> {
                        Left empty = absence.drained() ? DRAINED : FULL;
                        return absence.months().isEmpty() ? NEVER : empty;
                    })
                    .orElse(NOT_SAID);
        }
    }

    private SafetyChanges() {}

    static void into(ChangeTable table) {
        table.named("vent.kind", "How the tank is open to the air", unsaidOr(Vent.Kind.class), "safety.vent.kind")
                .as(
                        design -> SafetyFields.said(design)
                                .vent()
                                .map(vent -> vent.kind().code())
                                .orElse(Form.NOT_SAID),
                        SafetyChanges::ventOf);
        table.tube("vent.tube", "Tube of the open vent", "safety.vent.tube")
                .as(
                        design -> SafetyFields.openPipe(design).tube().orElseThrow(),
                        (design, tube) -> openPipe(design, SafetyFields.VENT_TUBE, Optional.of(tube)));
        table.number(
                        "vent.aboveWaterlineM",
                        "Open end of the vent above the waterline",
                        range("safety.vent.aboveWaterlineM"),
                        "safety.vent.aboveWaterlineM")
                .as(
                        design ->
                                SafetyFields.openPipe(design).aboveWaterlineM().orElseThrow(),
                        (design, aboveM) -> openPipe(design, SafetyFields.VENT_ABOVE, OptionalDouble.of(aboveM)));
        table.choice("vent.valve", "Valve in the open vent", VentValve.class, "safety.vent.valve")
                .as(
                        design ->
                                SafetyFields.openPipe(design).valve().orElseThrow() ? VentValve.VALVE : VentValve.NONE,
                        (design, valve) ->
                                openPipe(design, SafetyFields.VENT_VALVE, Optional.of(valve == VentValve.VALVE)));
        table.named(
                        "coldFeed.kind",
                        "How cold water comes into the tank",
                        unsaidOr(ColdFeed.Kind.class),
                        "safety.coldFeed.kind")
                .as(
                        design -> SafetyFields.said(design)
                                .coldFeed()
                                .map(feed -> feed.kind().code())
                                .orElse(Form.NOT_SAID),
                        SafetyChanges::fedBy);
        table.number(
                        "coldFeed.airGapMm",
                        "Free fall of the cold water into the tank",
                        range("safety.coldFeed.airGapMm"),
                        "safety.coldFeed.airGapMm")
                .as(
                        design -> SafetyFields.feed(design).airGapMm().orElseThrow(),
                        (design, gapMm) -> with(
                                design,
                                SafetyFields.FEED_PART,
                                Optional.of(SafetyFields.FEED.with(
                                        SafetyFields.feed(design), SafetyFields.AIR_GAP, OptionalDouble.of(gapMm)))));
        table.fields("safety.coldFeed.overflowBoreMm");
        table.choice(
                        "coldFeed.supply",
                        "What the cold feed is joined to",
                        Supply.class,
                        "safety.coldFeed.drinkingWater")
                .as(Supply::of, SafetyChanges::supplied);
        table.choice(
                        "absence.drained",
                        "The dwelling left in winter",
                        Left.class,
                        "safety.absence.months",
                        "safety.absence.drained")
                .as(Left::of, SafetyChanges::left);
    }

    private static Allowed range(String path) {
        return DesignFields.at(path).flatMap(DesignField::range).orElseThrow();
    }

    private static <E extends Enum<E> & Coded> List<String> unsaidOr(Class<E> type) {
        return Stream.concat(Stream.of(Form.NOT_SAID), Coded.codes(type).stream())
                .toList();
    }

    private static <V> Design with(Design design, Field<Safety, V> field, V value) {
        return design.with(
                DesignTable.SAFETY, Optional.of(SafetyFields.TABLE.with(SafetyFields.said(design), field, value)));
    }

    /** A vent that was not described is started as an open pipe. */
    private static Design ventOf(Design design, String code) {
        return with(
                design,
                SafetyFields.VENT_PART,
                Coded.find(Vent.Kind.class, code)
                        .map(kind ->
                                SafetyFields.VENT.with(SafetyFields.openPipe(design), SafetyFields.VENT_KIND, kind)));
    }

    private static <V> Design openPipe(Design design, Field<Vent, V> field, V value) {
        return with(
                design,
                SafetyFields.VENT_PART,
                Optional.of(SafetyFields.VENT.with(SafetyFields.openPipe(design), field, value)));
    }

    /** What was not said of a cold feed is started from usual values. */
    private static Design fedBy(Design design, String code) {
        return with(
                design,
                SafetyFields.FEED_PART,
                Coded.find(ColdFeed.Kind.class, code)
                        .map(kind -> SafetyFields.FEED.with(SafetyFields.feed(design), SafetyFields.FEED_KIND, kind)));
    }

    /** A feed of which nothing was said is started. */
    private static Design supplied(Design design, Supply supply) {
        return supply == Supply.NOT_SAID
                ? design.checked()
                : with(
                        design,
                        SafetyFields.FEED_PART,
                        Optional.of(SafetyFields.FEED.with(
                                SafetyFields.feed(design), SafetyFields.DRINKING, supply == Supply.DRUNK)));
    }

    /** The months, where none are known, are the coldest of the place and the one after it. */
    private static Design left(Design design, Left left) {
        if (left == Left.of(design)) {
            return design.checked();
        }
        List<Integer> known =
                SafetyFields.said(design).absence().map(Absence::months).orElse(List.of());
        List<Integer> months = known.isEmpty() ? design.site().heartOfWinter() : known;
        return with(
                design,
                SafetyFields.ABSENCE,
                switch (left) {
                    case NOT_SAID -> Optional.empty();
                    case NEVER -> Optional.of(new Absence(List.of(), false));
                    case FULL -> Optional.of(new Absence(months, false));
                    case DRAINED -> Optional.of(new Absence(months, true));
                });
    }
}

package loftcoil.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The ways to change what a design says about vent, cold feed and frost. */
public sealed interface WithSafety permits Design {

    /** Nothing said. */
    String NOT_SAID = "not said";

    /** A vent that nothing can shut. */
    String NO_VALVE = "none";

    /** A vent that can be shut. */
    String VALVE = "a valve";

    /** Lived in the year round. */
    String NEVER = "never left";

    /** Empty in winter, full of water. */
    String LEFT_FULL = "left full";

    /** Empty in winter, drained. */
    String DRAINED = "drained";

    /** What may be said on it. */
    List<String> ABSENCES = List.of(NOT_SAID, NEVER, LEFT_FULL, DRAINED);

    /** What is said, if only nothing. */
    static Safety said(Design design) {
        return design.safety().orElse(Safety.UNSAID);
    }

    /** The vent as an open pipe; where nothing is said of one: 22 mm copper, its end 0.30 m above the waterline, no valve. */
    static Vent openPipe(Design design) {
        Optional<Vent> vent = said(design).vent();
        return new Vent(
                Vent.OPEN_PIPE,
                Optional.of(vent.flatMap(Vent::tube).orElse("EN1057 22x0.9")),
                OptionalDouble.of(vent.map(Vent::aboveWaterlineM)
                        .orElse(OptionalDouble.empty())
                        .orElse(0.30)),
                Optional.of(vent.flatMap(Vent::valve).orElse(false)));
    }

    /** The cold feed with every part said; where nothing is: a float valve of 15 mm bore, falling 30 mm, not drunk from. */
    static ColdFeed feed(Design design) {
        Optional<ColdFeed> feed = said(design).coldFeed();
        return new ColdFeed(
                feed.map(ColdFeed::kind).orElse(ColdFeed.FLOAT_VALVE),
                feed.map(ColdFeed::drinkingWater).orElse(false),
                OptionalDouble.of(feed.map(ColdFeed::boreMm)
                        .orElse(OptionalDouble.empty())
                        .orElse(15)),
                OptionalDouble.of(feed.map(ColdFeed::airGapMm)
                        .orElse(OptionalDouble.empty())
                        .orElse(30)),
                Optional.of(feed.flatMap(ColdFeed::valve).orElse(false)));
    }

    /** Which of {@link #ABSENCES} a design says. */
    static String absence(Design design) {
        return said(design)
                .absence()
                .map(absence -> {
                    String empty = absence.drained() ? DRAINED : LEFT_FULL;
                    return absence.months().isEmpty() ? NEVER : empty;
                })
                .orElse(NOT_SAID);
    }

    private Design self() {
        return (Design) this;
    }

    /** The same design with this kind of vent; an open pipe that was not described is started as {@link #openPipe} says. */
    default Design withVentKind(String kind) {
        if (kind.equals(NOT_SAID)) {
            return self().withSafety(said(self()).withVent(Optional.empty()));
        }
        Vent open = openPipe(self());
        return withVent(new Vent(kind, open.tube(), open.aboveWaterlineM(), open.valve()));
    }

    /** The same design with an open vent of this tube. */
    default Design withVentTube(String tube) {
        Vent open = openPipe(self());
        return withVent(new Vent(open.kind(), Optional.of(tube), open.aboveWaterlineM(), open.valve()));
    }

    /** The same design with an open vent that ends this far above the waterline, m. */
    default Design withVentAboveWaterlineM(double aboveM) {
        Vent open = openPipe(self());
        return withVent(new Vent(open.kind(), open.tube(), OptionalDouble.of(aboveM), open.valve()));
    }

    /** The same design with an open vent that has {@link #NO_VALVE} or {@link #VALVE} in it. */
    default Design withVentValve(String valve) {
        Vent open = openPipe(self());
        return withVent(new Vent(open.kind(), open.tube(), open.aboveWaterlineM(), Optional.of(valve.equals(VALVE))));
    }

    private Design withVent(Vent vent) {
        return self().withSafety(said(self()).withVent(Optional.of(vent)));
    }

    /** The same design with this kind of cold feed; what was not said of it is started as {@link #feed} says. */
    default Design withColdFeedKind(String kind) {
        if (kind.equals(NOT_SAID)) {
            return self().withSafety(said(self()).withColdFeed(Optional.empty()));
        }
        ColdFeed feed = feed(self());
        return withColdFeed(new ColdFeed(kind, feed.drinkingWater(), feed.boreMm(), feed.airGapMm(), feed.valve()));
    }

    /** The same design with its cold water falling freely this far into the tank, mm. */
    default Design withColdFeedAirGapMm(double airGapMm) {
        ColdFeed feed = feed(self());
        return withColdFeed(new ColdFeed(
                feed.kind(), feed.drinkingWater(), feed.boreMm(), OptionalDouble.of(airGapMm), feed.valve()));
    }

    private Design withColdFeed(ColdFeed feed) {
        return self().withSafety(said(self()).withColdFeed(Optional.of(feed)));
    }

    /** The same design left in winter as one of {@link #ABSENCES} says; the months, where none are known, are January and February. */
    default Design withAbsence(String absence) {
        if (absence.equals(absence(self()))) {
            return self().checked();
        }
        if (absence.equals(NOT_SAID)) {
            return self().withSafety(said(self()).withAbsence(Optional.empty()));
        }
        List<Integer> known = said(self()).absence().map(Absence::months).orElse(List.of());
        List<Integer> months = known.isEmpty() ? List.of(1, 2) : known;
        Absence changed =
                absence.equals(NEVER) ? new Absence(List.of(), false) : new Absence(months, absence.equals(DRAINED));
        return self().withSafety(said(self()).withAbsence(Optional.of(changed)));
    }
}

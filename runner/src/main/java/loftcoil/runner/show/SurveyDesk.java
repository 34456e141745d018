package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Coded;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignField;
import loftcoil.engine.design.DesignFields;
import loftcoil.engine.design.Differences;
import loftcoil.engine.design.Dwelling;
import loftcoil.engine.design.Grounds;
import loftcoil.engine.design.LaggingChoice;
import loftcoil.engine.design.Origin;
import loftcoil.engine.design.Tap;
import loftcoil.engine.design.Trunk;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.survey.ClimateEstimate;
import loftcoil.engine.survey.ClimateFile;
import loftcoil.engine.survey.Closing;
import loftcoil.engine.survey.FaultWords;
import loftcoil.engine.survey.FittingCounts;
import loftcoil.engine.survey.HabitAsked;
import loftcoil.engine.survey.Habits;
import loftcoil.engine.survey.Sky;
import loftcoil.engine.survey.Station;
import loftcoil.engine.survey.Survey;
import loftcoil.engine.survey.WalkedPipe;
import loftcoil.engine.survey.Way;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.progress.Trail;

/** The survey of a house over a learner's folder. */
final class SurveyDesk implements SurveyApp {

    private static final String HEAT = "coil.heatKW";
    private static final String NONE = "none";
    private static final String SHARED = "shared pipe";
    private static final String OUTDOORS = "outdoors";

    private static final String GUESSED = "guessed";
    private static final String MEASURED = "measured";
    private static final int DIGITS = 5;
    private static final Pattern NUMBER = Pattern.compile("[-−]?\\d+(?:\\.\\d+)?");

    /** Changes that are told when the house becomes the design, but for what was the learner's own: that is told whole. */
    private static final int MOST_TOLD = 5;

    /** More than these are typed, not chosen. */
    private static final int MOST_OPTIONS = 12;

    /** Velocity heads lost in a full-way tap as wide as its pipe; common practice, no source. */
    private static final double FULL_WAY_K = 6;

    private final LearnerStore store;

    SurveyDesk(LearnerStore store) {
        this.store = store;
    }

    @Override
    public SurveyView.House house() {
        return inUnits().house(view(store.survey()));
    }

    @Override
    public SurveyView.House tell(Map<String, String> typed, boolean guessed) {
        List<Fault> faults = new ArrayList<>();
        Map<String, String> texts = new LinkedHashMap<>();
        inUnits().told(typed).forEach((path, text) -> {
            try {
                DesignField field = DesignFields.at(path)
                        .orElseThrow(() -> RefusedException.of(path, "no such field", "a field of a design"));
                texts.put(path, aroundTank(path, text).orElseGet(() -> Typed.text(field, path, text)));
            } catch (RefusedException refused) {
                faults.addAll(refused.faults());
            }
        });
        refuse(faults);
        return keep(survey -> survey.with(texts, guessed ? Origin.ASSUMED : Origin.YOURS));
    }

    /** A tank that stands in a room has the air of it. */
    private Optional<String> aroundTank(String path, String text) {
        return path.equals("tank.aroundC") && PieceReader.place(text).equals("room")
                ? Optional.of(
                        Numeral.typed(store.survey().sketch().told().site().roomC()))
                : Optional.empty();
    }

    @Override
    public SurveyView.House walk(String code, List<Map<String, String>> pieces) {
        Closing.Run run = run(code);
        List<Fault> faults = new ArrayList<>();
        List<WalkedPipe> walked = new ArrayList<>();
        List<Map<String, String>> before =
                store.survey().run(run).stream().map(SurveyDesk::row).toList();
        for (Map<String, String> piece : inUnits().lines(pieces, before)) {
            String at = run.path() + "[" + walked.size() + "]";
            PieceReader reader = new PieceReader(store.survey(), run, at, piece, walked, faults);
            walked.add(reader.read());
        }
        Survey.PIECES.faultIn(run.path(), walked.size()).ifPresent(faults::add);
        refuse(faults);
        return keep(survey -> survey.withRun(run, walked));
    }

    private static Closing.Run run(String code) {
        for (Closing.Run run : Closing.Run.values()) {
            if (run.code().equals(code)) {
                return run;
            }
        }
        throw RefusedException.of("run", code, "hot, cold");
    }

    @Override
    public SurveyView.House taps(Map<String, String> shared, List<Map<String, String>> lines) {
        List<Fault> faults = new ArrayList<>();
        Optional<Trunk> trunk = trunk(typedTrunk(shared), faults);
        List<Tap> taps = new ArrayList<>();
        Design told = store.survey().sketch().told();
        List<Map<String, String>> before =
                told.taps().stream().map(tap -> row(told, tap)).toList();
        for (Map<String, String> line : inUnits().lines(lines, before)) {
            tap(line, "taps[" + taps.size() + "]", trunk.isPresent(), faults).ifPresent(taps::add);
        }
        refuse(faults);
        return keep(survey -> survey.withTaps(taps, trunk));
    }

    private Map<String, String> typedTrunk(Map<String, String> shared) {
        Map<String, String> before = store.survey()
                .sketch()
                .told()
                .trunk()
                .map(now -> Map.of("length", trunk(now).length()))
                .orElse(Map.of());
        return inUnits().lines(List.of(shared), List.of(before)).get(0);
    }

    private static Optional<Trunk> trunk(Map<String, String> shared, List<Fault> faults) {
        String length = shared.getOrDefault("length", "").strip();
        if (length.isEmpty() || length.equals(NONE)) {
            return Optional.empty();
        }
        try {
            String elbows = shared.getOrDefault("elbows90", "").strip();
            return Optional.of(new Trunk(
                    WalkedPipe.tubeNamed("trunk.tube", Typed.tube(shared.getOrDefault("tube", ""))),
                    Typed.number(length, "m", "trunk.lengthM"),
                    elbows.isEmpty()
                            ? Map.of()
                            : Map.of("elbow90", (int) Typed.number(elbows, "", "trunk.fittings.elbow90"))));
        } catch (RefusedException refused) {
            faults.addAll(refused.faults());
            return Optional.empty();
        }
    }

    private Optional<Tap> tap(Map<String, String> line, String at, boolean shared, List<Fault> faults) {
        try {
            String name = line.getOrDefault("name", "").strip();
            String mixer = mixer(line, at);
            String elbows = line.getOrDefault("elbows90", "").strip();
            Tap known = store.survey().sketch().told().taps().stream()
                    .filter(tap -> tap.name().equals(name))
                    .findFirst()
                    .orElse(new Tap(name, 1, "EN1057 22x0.9", 4, Map.of(), FULL_WAY_K));
            return Optional.of(new Tap(
                    name,
                    Typed.number(line.getOrDefault("level", ""), "m", at + ".levelM"),
                    WalkedPipe.tubeNamed(at + ".tube", Typed.tube(line.getOrDefault("tube", ""))),
                    Typed.number(line.getOrDefault("length", ""), "m", at + ".lengthM"),
                    elbows.isEmpty()
                            ? known.fittings()
                            : Map.of("elbow90", (int) Typed.number(elbows, "", at + ".fittings.elbow90")),
                    known.outletK(),
                    known.ratedLPerMin(),
                    known.ratedKPa(),
                    mixer.isEmpty() || mixer.equals(NONE)
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(Typed.number(mixer, "°C", at + ".mixerC")),
                    known.mixerLPerMin().isPresent() && !mixer.isEmpty() && !mixer.equals(NONE)
                            ? known.mixerLPerMin()
                            : OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    shared ? Optional.of(line.getOrDefault("from", "").equals(SHARED)) : Optional.empty(),
                    known.appliance()));
        } catch (RefusedException refused) {
            faults.addAll(refused.faults());
            return Optional.empty();
        }
    }

    /** What was said of a mixing valve: how hot it lets the water through, or none. */
    private static String mixer(Map<String, String> line, String at) {
        String said = line.getOrDefault("mixer", "").strip();
        if (said.equalsIgnoreCase("yes")) {
            throw RefusedException.of(
                    at + ".mixerC",
                    "“" + said + "”",
                    "the temperature it is set to, such as 45 °C, or none where there is no valve");
        }
        return said.equalsIgnoreCase("no") || said.equalsIgnoreCase(NONE) ? NONE : said;
    }

    @Override
    public List<String> told(RefusedException refused) {
        return FaultWords.lines(refused);
    }

    @Override
    public SurveyView.House habits(Map<String, String> typed) {
        List<Fault> faults = new ArrayList<>();
        Map<String, Double> numbers = new HashMap<>();
        KnownNames taps = new KnownNames(
                "tap",
                store.survey().sketch().told().taps().stream().map(Tap::name).toList());
        for (HabitAsked asked : HabitAsked.values()) {
            String text = typed.getOrDefault(asked.code(), "");
            if (asked.isTap()) {
                if (!taps.names().contains(text)) {
                    faults.add(taps.unknown(asked.code(), text));
                }
            } else {
                try {
                    numbers.put(
                            asked.code(),
                            asked.days() > 0
                                    ? Typed.howOften(text, asked.days(), asked.code())
                                    : Typed.people(text, asked.code()));
                } catch (RefusedException refused) {
                    faults.addAll(refused.faults());
                }
            }
        }
        refuse(faults);
        return keep(survey -> survey.withHabits(new Habits(
                (int) Math.rint(numbers.getOrDefault(HabitAsked.PEOPLE.code(), 0.0)),
                numbers.getOrDefault(HabitAsked.WASHES.code(), 0.0),
                numbers.getOrDefault(HabitAsked.BATHS.code(), 0.0),
                numbers.getOrDefault(HabitAsked.DISHES.code(), 0.0),
                numbers.getOrDefault(HabitAsked.LOADS.code(), 0.0),
                typed.getOrDefault(HabitAsked.SINK.code(), ""),
                typed.getOrDefault(HabitAsked.TUB.code(), ""),
                typed.getOrDefault(HabitAsked.MACHINE.code(), ""))));
    }

    @Override
    public SurveyView.House climateFile(String text) {
        return keep(until -> {
            ClimateFile file = ClimateFile.read(text);
            Survey survey = until.withClimate(file.monthly(), Origin.YOURS);
            return file.place().map(spot -> placed(survey, spot)).orElse(survey);
        });
    }

    private static Survey placed(Survey survey, ClimateFile.Spot spot) {
        return survey.with(
                Map.of(
                        "site.latitudeDeg", Numeral.typed(spot.latitudeDeg()),
                        "site.longitudeDeg", Numeral.typed(spot.longitudeDeg()),
                        "site.utcOffsetH", Numeral.typed(spot.utcOffsetH()),
                        "site.altitudeM", Numeral.typed(spot.altitudeM())),
                Origin.YOURS);
    }

    @Override
    public SurveyView.House climateEstimate(Map<String, String> remembered) {
        Map<String, String> typed = inUnits().temperatures(remembered, List.of("warmest", "coldest"));
        List<Fault> faults = new ArrayList<>();
        double warmestC = number(typed, "warmest", faults);
        double coldestC = number(typed, "coldest", faults);
        Map<String, Sky> skies = new HashMap<>();
        for (String season : List.of("winter", "spring", "summer", "autumn")) {
            String code = typed.getOrDefault(season, "");
            Coded.find(Sky.class, code)
                    .ifPresentOrElse(
                            sky -> skies.put(season, sky),
                            () -> faults.add(new KnownNames("sky", Coded.codes(Sky.class)).unknown(season, code)));
        }
        refuse(faults);
        ClimateEstimate estimate = new ClimateEstimate(
                store.survey().sketch().told().site().latitudeDeg(),
                skies.getOrDefault("winter", Sky.MIXED),
                skies.getOrDefault("spring", Sky.MIXED),
                skies.getOrDefault("summer", Sky.MIXED),
                skies.getOrDefault("autumn", Sky.MIXED),
                warmestC,
                coldestC);
        return keep(survey -> survey.withClimate(estimate.monthly(), Origin.ASSUMED));
    }

    private static double number(Map<String, String> typed, String name, List<Fault> faults) {
        try {
            return Typed.number(typed.getOrDefault(name, ""), "°C", name);
        } catch (RefusedException refused) {
            faults.addAll(refused.faults());
            return Double.NaN;
        }
    }

    @Override
    public SurveyView.House noPanes() {
        return keep(Survey::withoutPanes);
    }

    @Override
    public SurveyView.House afresh(String from) {
        if (from.isBlank()) {
            return begun(Survey.of(store.design()));
        }
        KnownNames dwellings = new KnownNames("dwelling", Coded.codes(Dwelling.class));
        return begun(Survey.from(Coded.find(Dwelling.class, from)
                .orElseThrow(() -> new RefusedException(List.of(dwellings.unknown("from", from))))
                .design()));
    }

    @Override
    public SurveyView.House follow() {
        return keep(survey -> survey.upon(store.design()));
    }

    @Override
    public RebuildView.Taken take() {
        List<Fault> open = store.survey().open();
        refuse(open);
        Design before = store.design();
        Design measured = store.survey().design();
        List<Differences.Said> own = store.survey().otherwise(before);
        String kept = store.replace(measured, Trail.How.MEASURED);
        return new RebuildView.Taken(
                "It is your design now. " + changed(before, measured, own)
                        + " The one from before is kept in your folder as " + kept + ".",
                kept);
    }

    /** What was decided in a lesson since the house was measured is undone by this: nobody should find that out later. */
    private String changed(Design before, Design measured, List<Differences.Said> own) {
        List<Differences.Said> all = Differences.between(before, measured);
        Stream<Differences.Said> others = all.stream().filter(said -> !own.contains(said));
        List<String> told = Stream.concat(own.stream(), others)
                .map(said -> store.units().words(said.words()))
                .toList();
        int shown = Math.min(told.size(), Math.max(MOST_TOLD, own.size()));
        if (told.isEmpty()) {
            return "Nothing in it changed but where its values are from.";
        }
        String more = told.size() > shown ? "; and " + (told.size() - shown) + " more" : "";
        return "Changed: " + String.join("; ", told.subList(0, shown)) + more + ". Its history under Designs has all.";
    }

    private SurveyView.House begun(Survey survey) {
        store.afresh(survey);
        return house();
    }

    /** Keeps the house as it becomes; what it cannot take is refused in the learner's units. */
    private SurveyView.House keep(UnaryOperator<Survey> change) {
        Survey survey = shown().telling(() -> change.apply(store.survey()));
        store.keep(survey);
        return inUnits().house(view(survey));
    }

    private void refuse(List<Fault> faults) {
        if (!faults.isEmpty()) {
            throw shown().said(new RefusedException(faults));
        }
    }

    private Shown shown() {
        return new Shown(store.units());
    }

    private SurveyUnits inUnits() {
        return new SurveyUnits(shown());
    }

    private SurveyView.House view(Survey survey) {
        Design told = survey.sketch().told();
        Map<String, DesignFields.Value> values = new TreeMap<>();
        DesignFields.of(told).forEach(value -> values.put(value.path(), value));
        Map<Station, Grounds> grounds = Station.grounds(survey.whole().told());
        List<SurveyView.Station> stations = new ArrayList<>();
        for (Station station : Station.values()) {
            Grounds own = grounds.getOrDefault(station, new Grounds(0, 0, 0));
            SurveyView.Run run =
                    switch (station) {
                        case HOT_RUN -> run(survey, Closing.Run.HOT);
                        case COLD_RUN -> run(survey, Closing.Run.COLD);
                        default -> SurveyView.Run.NONE;
                    };
            stations.add(new SurveyView.Station(
                    station.code(),
                    station.label(),
                    station.help().metric(),
                    counts(station, told),
                    station.paths().stream()
                            .map(path -> question(survey, path, values))
                            .toList(),
                    run,
                    station == Station.TAPS
                            ? told.taps().stream().map(tap -> tap(told, tap)).toList()
                            : List.of(),
                    station == Station.TAPS
                            ? told.trunk().map(SurveyDesk::trunk).orElse(SurveyView.TrunkLine.NONE)
                            : SurveyView.TrunkLine.NONE,
                    standing(own, run),
                    own.own() && run.closes()));
        }
        List<SurveyView.Dwelling> dwellings = Stream.of(Dwelling.values())
                .map(dwelling -> new SurveyView.Dwelling(dwelling.code(), dwelling.label()))
                .toList();
        return new SurveyView.House(
                told.name(),
                store.design().name(),
                stations,
                standing(survey, stations),
                habits(survey),
                dwellings,
                SurveyView.Such.in(store.units()));
    }

    private static List<SurveyView.Habit> habits(Survey survey) {
        List<String> taps =
                survey.sketch().told().taps().stream().map(Tap::name).toList();
        return taps.isEmpty()
                ? List.of()
                : Stream.of(HabitAsked.values())
                        .map(asked -> new SurveyView.Habit(
                                asked.code(),
                                asked.label(),
                                survey.habits()
                                        .map(asked::told)
                                        .orElseGet(() -> asked.isTap()
                                                ? taps.get(Math.min(asked.likeliestTap(), taps.size() - 1))
                                                : asked.usual()),
                                asked.isTap() ? taps : List.of()))
                        .toList();
    }

    /** How far a station is, in a few words. */
    private static String standing(Grounds own, SurveyView.Run run) {
        if (!run.closes()) {
            return "does not end where it has to";
        }
        List<String> parts = new ArrayList<>();
        if (own.yours() > 0) {
            parts.add(own.yours() + " yours");
        }
        if (own.assumed() > 0) {
            parts.add(own.assumed() + " assumed");
        }
        if (own.borrowed() > 0) {
            parts.add(own.borrowed() + " borrowed");
        }
        return parts.isEmpty() ? "nothing told" : String.join(", ", parts);
    }

    /** Where fittings are told: what each counts, in the learner's units. */
    private List<String> counts(Station station, Design told) {
        List<MeasuredText> counts =
                switch (station) {
                    case COIL, HOT_RUN, COLD_RUN -> FittingCounts.inLoop(told);
                    case TAPS -> FittingCounts.toTaps(told);
                    default -> List.of();
                };
        return counts.stream().map(store.units()::words).toList();
    }

    private static SurveyView.Question question(Survey survey, String path, Map<String, DesignFields.Value> values) {
        Design told = survey.sketch().told();
        DesignField field = DesignFields.at(path).orElseThrow();
        Optional<DesignFields.Value> value = Optional.ofNullable(values.get(path));
        String now = now(told, path);
        return new SurveyView.Question(
                path,
                Station.asked(path),
                field.help(),
                field.unit(),
                field.options().size() > MOST_OPTIONS ? List.of() : field.options(),
                field.allowed(),
                now,
                origin(value, now),
                field.leftOut().isPresent(),
                otherwise(survey, path, field));
    }

    /** What stands there; a heat that nobody told stands nowhere, though a decision on it would begin with what the fire gives. */
    private static String now(Design told, String path) {
        return path.equals(HEAT) && told.coil().heatKW().isEmpty() ? Changes.NOT_SAID : Changes.current(told, path);
    }

    /** What is taken as long as nobody tells it: of the coil's heat what that comes to. */
    private static String otherwise(Survey survey, String path, DesignField field) {
        Optional<String> heat = path.equals(HEAT) ? survey.heat().map(MeasuredText::metric) : Optional.empty();
        boolean left = now(survey.sketch().told(), path).equals(Changes.NOT_SAID);
        return heat.or(() -> field.leftOut()
                        .filter(any -> left)
                        .map(taken -> "As long as you do not tell it: " + taken + "."))
                .orElse("");
    }

    /** What may be left out and is has no origin to speak of. */
    private static String origin(Optional<DesignFields.Value> value, String now) {
        return now.equals(Changes.NOT_SAID)
                ? Changes.NOT_SAID
                : value.map(DesignFields.Value::origin).orElse(Origin.ASSUMED).code();
    }

    private SurveyView.Run run(Survey survey, Closing.Run run) {
        Optional<Closing> closing = survey.closing(run);
        return new SurveyView.Run(
                run.code(),
                survey.run(run).stream().map(SurveyDesk::piece).toList(),
                closing.map(found -> store.units().words(found.words()))
                        .orElse("Not walked yet; its pipes are borrowed."),
                closing.map(Closing::closes).orElse(true),
                closing.map(found -> found.moved().stream()
                                .map(moved -> store.units().words(moved.words()))
                                .toList())
                        .orElse(List.of()),
                closing.map(found -> found.mends().stream()
                                .map(mend -> store.units().words(mend.words()))
                                .toList())
                        .orElse(List.of()));
    }

    private static SurveyView.Piece piece(WalkedPipe pipe) {
        return new SurveyView.Piece(
                pipe.name(),
                pipe.way().code(),
                shown(pipe.lengthM(), "m"),
                pipe.way() == Way.ALONG ? shown(pipe.slopeMmPerM(), "mm/m") : "",
                pipe.headingDeg().isPresent() ? shown(pipe.headingDeg().getAsDouble(), "") : "",
                Integer.toString(pipe.elbows90()),
                Integer.toString(pipe.elbows45()),
                pipe.tube(),
                pipe.lagging().map(LaggingChoice::material).orElse(NONE),
                pipe.lagging()
                        .map(lagging -> shown(lagging.thicknessMm(), "mm"))
                        .orElse(""),
                pipe.outdoors() ? OUTDOORS : shown(pipe.aroundC(), "°C"),
                pipe.measured() ? MEASURED : GUESSED);
    }

    private static SurveyView.TrunkLine trunk(Trunk trunk) {
        return new SurveyView.TrunkLine(
                trunk.tube(),
                shown(trunk.lengthM(), "m"),
                Integer.toString(trunk.fittings().getOrDefault("elbow90", 0)));
    }

    /** A piece as its line is typed, in metric units. */
    private static Map<String, String> row(WalkedPipe pipe) {
        SurveyView.Piece piece = piece(pipe);
        return Map.of(
                "length", piece.length(),
                "slope", piece.slope(),
                "laggingThickness", piece.laggingThickness(),
                "around", piece.around());
    }

    /** A tap as its line is typed, in metric units. */
    private static Map<String, String> row(Design told, Tap tap) {
        SurveyView.TapLine line = tap(told, tap);
        return Map.of("level", line.level(), "length", line.length(), "mixer", line.mixer());
    }

    private static SurveyView.TapLine tap(Design told, Tap tap) {
        return new SurveyView.TapLine(
                tap.name(),
                shown(tap.levelM(), "m"),
                tap.tube(),
                shown(tap.lengthM(), "m"),
                Integer.toString(tap.fittings().getOrDefault("elbow90", 0)),
                tap.mixerC().isPresent() ? shown(tap.mixerC().getAsDouble(), "°C") : NONE,
                told.onTrunk(tap) ? SHARED : "tank");
    }

    private static String shown(double value, String unit) {
        return Numeral.withUnit(Numeral.typed(value, DIGITS), unit);
    }

    /** Whether the design has own values in the place of what is only borrowed here. */
    private static boolean follows(Survey survey, Design design) {
        try {
            Design here = survey.whole().told();
            Design upon = survey.upon(design).whole().told();
            return !DesignFields.compare(here, upon).isEmpty()
                    || !Grounds.of(here).equals(Grounds.of(upon));
        } catch (RefusedException noPlace) {
            return false;
        }
    }

    private SurveyView.Standing standing(Survey survey, List<SurveyView.Station> stations) {
        Design design = store.design();
        Grounds counted = Grounds.of(design);
        Survey.Standing standing = survey.standing();
        List<String> open = standing.open().stream().map(SurveyDesk::line).toList();
        Grounds grounds = standing.grounds();
        List<String> otherwise = survey.otherwise(design).stream()
                .map(said -> store.units().words(said.words()))
                .toList();
        String sketch = " It is a sketch, not for cutting: ";
        String words = grounds.words()
                + (open.isEmpty()
                        ? grounds.own() ? " All fits together." : sketch + "all fits together, but on another's values."
                        : sketch + "something does not fit together yet.");
        List<String> doubts =
                standing.doubts().stream().map(store.units()::words).toList();
        return new SurveyView.Standing(
                grounds.yours(),
                grounds.assumed(),
                grounds.borrowed(),
                !open.isEmpty(),
                words,
                next(stations, open),
                survey.plan().map(plan -> store.units().words(plan.words())).orElse(""),
                open,
                doubts,
                counted.equals(grounds)
                        ? ""
                        : "Your design counts " + counted.yours() + " yours, " + counted.assumed() + " assumed and "
                                + counted.borrowed() + " borrowed, until you make this house your design.",
                otherwise,
                !otherwise.isEmpty() && follows(survey, design));
    }

    /** What does not fit is mended first; then what is borrowed is measured, in walking order. */
    private static String next(List<SurveyView.Station> stations, List<String> open) {
        for (int i = 0; i < stations.size(); i++) {
            SurveyView.Station station = stations.get(i);
            if (!station.done()) {
                return "Next: " + (i + 1) + ", " + station.label() + " (" + station.standing() + ").";
            }
        }
        return open.isEmpty()
                ? "Nothing is borrowed any more: make it your design."
                : "Everything is told; mend what does not fit.";
    }

    /** A pipe of another house between one's own coil and tank. */
    private static String notWalked(Fault fault) {
        String pipe = Station.of(fault.path()).map(Station::label).orElse(fault.path());
        return pipe + ": not walked yet, and the borrowed one does not reach. It has " + fault.given() + " where "
                + fault.allowed().replaceFirst(", within.*", "") + " are wanted.";
    }

    /** What does not fit, as the person who measured it would say it. */
    private static String line(Fault fault) {
        boolean run = Stream.of(Closing.Run.values()).anyMatch(one -> one.path().equals(fault.path()));
        if (run) {
            return fault.given().startsWith("rises") ? notWalked(fault) : fault.given();
        }
        String place =
                Station.of(fault.path()).map(station -> station.label() + ": ").orElse("");
        Optional<DesignField> field = DesignFields.at(fault.path());
        String given = field.filter(any -> NUMBER.matcher(fault.given()).matches())
                .map(any -> Numeral.withUnit(fault.given(), any.unit()))
                .orElse(fault.given());
        return place
                + new Fault(field.map(DesignField::label).orElse(fault.path()), given, fault.allowed(), fault.why())
                        .line();
    }
}

package loftcoil.engine.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loftcoil.engine.design.BorrowedHeat;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignFields;
import loftcoil.engine.design.Differences;
import loftcoil.engine.design.Grounds;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.Monthly;
import loftcoil.engine.design.Origin;
import loftcoil.engine.design.Sketch;
import loftcoil.engine.design.Tank;
import loftcoil.engine.design.Tap;
import loftcoil.engine.design.Trunk;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.fire.LowMidHigh;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Numeral;

/**
 * A house as far as it has been measured. It begins as an example dwelling, every value of which is borrowed, and becomes the house of
 * whoever walks through it. Nothing is refused for not fitting what else stands: until both runs of pipe close and all values fit
 * together it is a sketch.
 *
 * @param sketch all values told by their fields; its pipes are those of the example as long as a run is not walked
 * @param hot the pieces from coil to tank as they were walked; none where that run is still borrowed
 * @param cold the pieces from tank to coil as they were walked; none where that run is still borrowed
 * @param habits what people do with hot water; empty where the draws are borrowed or told by hand
 */
public record Survey(Sketch sketch, List<WalkedPipe> hot, List<WalkedPipe> cold, Optional<Habits> habits) {

    /** Pieces that a run may have; a design takes no more legs. */
    public static final Allowed PIECES = new Allowed(0, 20, "pieces");

    /** Parts that are told whole. */
    private static final Set<String> LISTS = Set.of("taps", "trunk", "use", "hotLegs", "coldLegs");

    /** A flow as such loops have it, at which the heat of a coil is told. */
    private static final double USUAL_KG_PER_S = 0.02;

    private static final double USUAL_INLET_C = 40;
    private static final double W_PER_KW = 1000;

    /** Keeps copies of the lists. */
    public Survey {
        hot = List.copyOf(hot);
        cold = List.copyOf(cold);
    }

    /** A survey in which nothing is measured yet. */
    public static Survey from(Design example) {
        return new Survey(Sketch.from(example), List.of(), List.of(), Optional.empty());
    }

    /** A survey that goes on from a design; where its values are from stays as it is said there. */
    public static Survey of(Design design) {
        return new Survey(Sketch.of(design), List.of(), List.of(), Optional.empty());
    }

    /**
     * The same with more values told.
     *
     * @param texts as for {@link Sketch#with}
     * @param origin where they are from
     * @throws loftcoil.engine.fault.RefusedException where a text does not fit its field
     */
    public Survey with(Map<String, String> texts, Origin origin) {
        return new Survey(sketch.with(texts, origin), hot, cold, habits);
    }

    /** The same with a run of pipe as it was walked, from its beginning; none to borrow it again. */
    public Survey withRun(Closing.Run run, List<WalkedPipe> pipes) {
        return run == Closing.Run.HOT
                ? new Survey(sketch, pipes, cold, habits)
                : new Survey(sketch, hot, pipes, habits);
    }

    /** The same with the draws that habits come to, each from a tap that is there. */
    public Survey withHabits(Habits told) {
        return new Survey(sketch.withUse(told.uses(), Origin.YOURS), hot, cold, Optional.of(told));
    }

    /**
     * The same with other taps; draws from a tap that is no longer there are dropped.
     *
     * @param trunk the pipe that several share; empty where each has its own from the tank
     */
    public Survey withTaps(List<Tap> taps, Optional<Trunk> trunk) {
        return new Survey(sketch.withTaps(taps, trunk, Origin.YOURS), hot, cold, keptHabits(taps));
    }

    /** Habits whose taps are all there still. */
    private Optional<Habits> keptHabits(List<Tap> taps) {
        List<String> names = taps.stream().map(Tap::name).toList();
        return habits.filter(told -> names.containsAll(List.of(told.sink(), told.tub(), told.machine())));
    }

    /**
     * The same after a decision changed the design of this house: what stood here as it did there follows, with where it is from; what was
     * told otherwise here stays. Pieces that were walked follow as far as the design took them as they were walked.
     *
     * @param before the design before the decision
     * @param after the design now
     */
    public Survey following(Design before, Design after) {
        Sketch followed = sketch.following(before, after);
        return new Survey(
                followed,
                following(Closing.Run.HOT, before, after),
                following(Closing.Run.COLD, before, after),
                new Survey(followed, hot, cold, habits)
                        .keptHabits(followed.told().taps()));
    }

    private List<WalkedPipe> following(Closing.Run run, Design before, Design after) {
        List<WalkedPipe> walked = closing(run).map(Closing::pipes).orElse(List.of());
        List<Leg> was = legs(run, before);
        List<Leg> is = legs(run, after);
        boolean asTaken = walked.size() == was.size()
                && IntStream.range(0, was.size()).allMatch(at -> walked.get(at).isAs(was.get(at)));
        if (!asTaken
                || was.equals(is)
                || was.size() != is.size()
                || !is.stream().allMatch(WalkedPipe::canBe)) {
            return run(run);
        }
        return IntStream.range(0, is.size())
                .mapToObj(at -> walked.get(at).as(is.get(at)))
                .toList();
    }

    private static List<Leg> legs(Closing.Run run, Design design) {
        return run == Closing.Run.HOT ? design.hotLegs() : design.coldLegs();
    }

    /**
     * In what the house differs from what was decided, measured or guessed in a design of it, so that it would go if the house were made
     * the design; what only the house says, or what is borrowed in the design, is none of it.
     */
    public List<Differences.Said> otherwise(Design design) {
        List<String> own = DesignFields.of(design).stream()
                .filter(value -> value.text().isPresent() && value.origin() == Origin.YOURS)
                .map(DesignFields.Value::path)
                .filter(path -> !path.endsWith("name"))
                .toList();
        return Differences.between(design, whole().told()).stream()
                .filter(said -> !said.before().metric().equals(said.after().metric()))
                .filter(said -> own.stream().anyMatch(path -> path.equals(said.path()) || isOfItem(path, said)))
                .toList();
    }

    /** Whether a path leads into the list of which a whole item is new or gone. */
    private static boolean isOfItem(String path, Differences.Said said) {
        return said.label().isEmpty() && path.startsWith(said.path().replaceFirst("\\[.*", "["));
    }

    /**
     * The house as a design of it has it, but for what was told here: that stays, measured or guessed.
     *
     * @throws RefusedException where what was told has no place in that design
     */
    public Survey upon(Design design) {
        Survey upon = new Survey(Sketch.of(design), hot, cold, habits);
        for (Origin origin : List.of(Origin.YOURS, Origin.ASSUMED)) {
            Map<String, String> texts = new TreeMap<>();
            DesignFields.of(sketch.told()).stream()
                    .filter(value -> value.origin() == origin && value.text().isPresent())
                    .filter(value -> !value.path().contains("[") && !LISTS.contains(part(value.path())))
                    .forEach(value -> texts.put(value.path(), value.text().orElseThrow()));
            upon = upon.with(texts, origin);
        }
        Sketch listed = upon.sketch;
        if (origin("taps") != Origin.BORROWED) {
            listed = listed.withTaps(sketch.told().taps(), sketch.told().trunk(), origin("taps"));
        }
        if (origin("use") != Origin.BORROWED) {
            listed = listed.withUse(sketch.told().use(), origin("use"));
        }
        upon = new Survey(listed, hot, cold, habits);
        if (sketch.told().window().isEmpty()) {
            upon = upon.withoutPanes();
        }
        return new Survey(upon.sketch, hot, cold, keptHabits(upon.sketch.told().taps()));
    }

    /** Where the values of a list that is told whole are from; borrowed where there is none. */
    private Origin origin(String list) {
        return DesignFields.of(sketch.told()).stream()
                .filter(value ->
                        value.path().startsWith(list + "[") && value.text().isPresent())
                .map(DesignFields.Value::origin)
                .findFirst()
                .orElse(Origin.BORROWED);
    }

    private static String part(String path) {
        return path.replaceFirst("[.\\[].*", "");
    }

    /** The same without panes. */
    public Survey withoutPanes() {
        return new Survey(sketch.withoutWindow(), hot, cold, habits);
    }

    /** The pieces of a run as they were walked. */
    public List<WalkedPipe> run(Closing.Run run) {
        return run == Closing.Run.HOT ? hot : cold;
    }

    /** How a run closes between coil and tank as these are told; empty where it is not walked. */
    public Optional<Closing> closing(Closing.Run run) {
        Tank tank = sketch.told().tank();
        double wantedM = run == Closing.Run.HOT
                ? tank.returnPortLevelM() - sketch.told().coil().outletM()
                : sketch.told().coil().inletM() - tank.coldPortLevelM();
        return run(run).isEmpty() ? Optional.empty() : Optional.of(Closing.of(run, run(run), wantedM));
    }

    /** How the pipes close seen from above; empty where a run is not walked, or a piece that leads along has no direction. */
    public Optional<PlanClosing> plan() {
        return PlanClosing.of(hot, cold, sketch.told().tank());
    }

    /** The sketch with the runs that were walked in the place of the borrowed ones, closed where they close. */
    public Sketch whole() {
        List<Leg> coldLegs = legs(Closing.Run.COLD, sketch.told().coldLegs());
        List<Leg> hotLegs = legs(Closing.Run.HOT, sketch.told().hotLegs());
        Map<String, Origin> origins = new TreeMap<>();
        origins(Closing.Run.COLD, origins);
        origins(Closing.Run.HOT, origins);
        return sketch.withLegs(coldLegs, hotLegs, origins);
    }

    private List<Leg> legs(Closing.Run run, List<Leg> borrowed) {
        return closing(run)
                .map(closing -> closing.pipes().stream().map(WalkedPipe::leg).toList())
                .orElse(borrowed);
    }

    private void origins(Closing.Run run, Map<String, Origin> origins) {
        List<WalkedPipe> walked = run(run);
        if (walked.isEmpty()) {
            sketch.told().origins().forEach((path, origin) -> {
                if (path.startsWith(run.path())) {
                    origins.put(path, origin);
                }
            });
        }
        for (int i = 0; i < walked.size(); i++) {
            if (!walked.get(i).measured()) {
                origins.put(run.path() + "[" + i + "].lengthM", Origin.ASSUMED);
                origins.put(run.path() + "[" + i + "].riseM", Origin.ASSUMED);
            }
        }
    }

    /** The same with sun and air of a year, told or estimated. */
    public Survey withClimate(Monthly monthly, Origin origin) {
        return with(
                Map.of(
                        "site.monthly.globalKWhPerM2Day", listed(monthly.globalKWhPerM2Day()),
                        "site.monthly.meanAirC", listed(monthly.meanAirC())),
                origin);
    }

    private static String listed(List<Double> values) {
        return values.stream().map(Numeral::typed).collect(Collectors.joining(", "));
    }

    /**
     * What the heat of the coil is taken from as long as nobody tells it: from the fire as it stands, or the example's; empty where it is
     * told, and where fire and coil cannot be worked out yet.
     */
    public Optional<MeasuredText> heat() {
        Design told = sketch.told();
        if (told.coil().heatKW().isPresent()) {
            return told.origin("coil.heatKW") == Origin.BORROWED
                    ? Optional.of(SurveyWords.say("heat.borrowed"))
                    : Optional.empty();
        }
        try {
            LowMidHigh heatW = told.coilHeatW(USUAL_KG_PER_S, USUAL_INLET_C);
            return Optional.of(SurveyWords.say(
                    "heat.workedOut", "mid", kW(heatW.mid()), "low", kW(heatW.low()), "high", kW(heatW.high())));
        } catch (RefusedException doesNotBurn) {
            return Optional.empty();
        }
    }

    /**
     * Whose heat two designs side by side rest on, where it is not the learner's; empty where no heat is borrowed, or none is any more.
     *
     * @param before a design as it stands
     * @param after the same rebuilt
     */
    public static Optional<MeasuredText> borrowedHeat(Design before, Design after) {
        OptionalDouble now = BorrowedHeat.of(after);
        OptionalDouble then = BorrowedHeat.of(before);
        if (now.isEmpty() && then.isEmpty()) {
            return Optional.empty();
        }
        boolean stated = after.coil().heatKW().isPresent();
        String kind = now.isPresent() ? "borrowed" : stated ? "stated" : "workedOut";
        double heatW = (now.isPresent() ? now : then).getAsDouble() * W_PER_KW;
        return Optional.of(SurveyWords.say("heat.rebuilt." + kind, "heat", kW(heatW)));
    }

    private static Measure kW(double heatW) {
        return new Measure(heatW / W_PER_KW, MeasureKind.POWER_KW);
    }

    /**
     * How far a house is measured.
     *
     * @param grounds how many values are of each origin
     * @param open as {@link #open}
     * @param doubts what looks like a slip and is asked about; nothing there is refused
     */
    public record Standing(Grounds grounds, List<Fault> open, List<MeasuredText> doubts) {}

    /** How far it is. */
    public Standing standing() {
        Sketch whole = whole();
        return new Standing(whole.grounds(), open(whole), Doubts.of(whole.told()));
    }

    /** What keeps it a sketch, not for cutting: runs that do not close, and values that do not fit together; empty where nothing does. */
    public List<Fault> open() {
        return open(whole());
    }

    private List<Fault> open(Sketch whole) {
        List<Fault> open = new ArrayList<>();
        for (Closing.Run run : Closing.Run.values()) {
            closing(run)
                    .filter(closing -> !closing.closes())
                    .ifPresent(closing -> open.add(new Fault(
                            run.path(),
                            closing.words().metric(),
                            "a run that ends where it has to",
                            "measure it again")));
        }
        whole.faults().stream()
                .filter(fault -> open.stream().noneMatch(known -> fault.path().startsWith(known.path())))
                .forEach(open::add);
        return List.copyOf(open);
    }

    /**
     * The house as a design.
     *
     * @throws loftcoil.engine.fault.RefusedException where it is a sketch still; see {@link #open}
     */
    public Design design() {
        return whole().design();
    }
}

package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import loftcoil.engine.design.Coded;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.LaggingChoice;
import loftcoil.engine.design.Outdoors;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.survey.Closing;
import loftcoil.engine.survey.Survey;
import loftcoil.engine.survey.WalkedPipe;
import loftcoil.engine.survey.Way;
import loftcoil.engine.words.Numeral;

/** One piece as typed; what is blank is as in the piece before it, or as usual for the first. */
final class PieceReader {

    /** Air beside a flue pipe while the fire burns, °C; common practice, no source. */
    private static final double BESIDE_FLUE_C = 60;

    private static final String NONE = "none";
    private static final String OUTDOORS = "outdoors";
    private static final Map<Pattern, String> PLACES = places();

    private static Map<Pattern, String> places() {
        Map<Pattern, String> places = new LinkedHashMap<>();
        places.put(Pattern.compile("(?i)\\b(?:outdoors|outside|open air)\\b"), OUTDOORS);
        places.put(Pattern.compile("(?i)\\b(?:flue|chimney|stove ?pipe)\\b"), "flue");
        places.put(Pattern.compile("(?i)\\b(?:loft|attic|roof)\\b"), "loft");
        places.put(Pattern.compile("(?i)\\b(?:room|inside|indoors)\\b"), "room");
        return places;
    }

    private static final String GUESSED = "guessed";
    private static final int DIGITS = 5;

    private static final double QUARTER_DEG = 90;

    private static final String DEG = "\\s*(?:°|deg(?:rees)?)?";
    private static final Pattern TURN =
            Pattern.compile("(?i)(?:it )?(?:turns? |bends? )?(?:straight(?: on| ahead)?|ahead|back"
                    + "|(?:(?<half>half)[ -]|(?<before>\\d{1,3})" + DEG
                    + "\\s+)?(?:to the )?(?<way>left|right)(?:\\s+(?<behind>\\d{1,3})" + DEG + ")?)");

    private final Survey survey;
    private final Design told;
    private final Closing.Run run;
    private final String at;
    private final Map<String, String> typed;
    private final Optional<WalkedPipe> before;
    private final List<WalkedPipe> walked;
    private final List<Fault> faults;
    private final int number;

    PieceReader(
            Survey survey,
            Closing.Run run,
            String at,
            Map<String, String> typed,
            List<WalkedPipe> walked,
            List<Fault> faults) {
        this.survey = survey;
        told = survey.sketch().told();
        this.run = run;
        this.walked = walked;
        this.at = at;
        this.typed = typed;
        this.before = walked.isEmpty() ? Optional.empty() : Optional.of(walked.get(walked.size() - 1));
        this.faults = faults;
        this.number = walked.size() + 1;
    }

    WalkedPipe read() {
        int before = faults.size();
        Way way = way();
        double lengthM = length();
        boolean along = way == Way.ALONG;
        WalkedPipe pipe = new WalkedPipe(
                said("name").orElse(run.code() + " pipe " + number),
                way,
                lengthM,
                along ? slope(lengthM) : 0,
                along ? heading() : OptionalDouble.empty(),
                whole("elbows90"),
                whole("elbows45"),
                tube(),
                lagging(),
                around(),
                OptionalDouble.empty(),
                outdoors(),
                !said("measured").filter(GUESSED::equals).isPresent());
        // What could not be read would be told again for what stands in for it.
        if (faults.size() == before) {
            faults.addAll(pipe.faults(name -> at + "." + name));
        }
        return pipe;
    }

    private Optional<String> said(String name) {
        return Optional.ofNullable(typed.get(name)).map(String::strip).filter(text -> !text.isEmpty());
    }

    private Way way() {
        String code = said("way").orElse("");
        Optional<Way> way = Coded.find(Way.class, code);
        if (way.isEmpty()) {
            faults.add(new KnownNames("way", Coded.codes(Way.class)).unknown(at + ".way", code));
        }
        return way.orElse(Way.UP);
    }

    private double length() {
        Optional<String> text = said("length");
        if (text.isEmpty()) {
            faults.add(new Fault(at + ".lengthM", "nothing", "a length", ""));
        }
        return text.map(typed -> caught(0, () -> Typed.number(typed, "m", at + ".lengthM")))
                .orElse(0.0);
    }

    /** A slope, or how much higher the far end is. */
    private double slope(double lengthM) {
        return said("slope")
                .map(text -> caught(0, () -> Typed.slopeMmPerM(text, lengthM, at + ".slopeMmPerM")))
                .orElse(0.0);
    }

    /** A direction of the compass in degrees or letters, or a turn from the piece before; the first piece of all leads north. */
    private OptionalDouble heading() {
        Optional<String> text = said("heading");
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        double aheadDeg = ahead();
        double turnedDeg = turn(text.get())
                .map(turn -> aheadDeg + turn)
                .orElseGet(() -> caught(
                        0,
                        () -> otherwise(
                                () -> BearingText.degrees(text.get(), at + ".heading"),
                                "left, right, back, straight, half left, or a compass direction such as SE or 135")));
        return OptionalDouble.of((turnedDeg % 360 + 360) % 360);
    }

    /** A turn from the way the piece before leads, clockwise; empty where the text is none. */
    private static Optional<Double> turn(String text) {
        Matcher turn = TURN.matcher(text);
        if (!turn.matches()) {
            return Optional.empty();
        }
        if (turn.group("way") == null) {
            return Optional.of(text.toLowerCase(Locale.ROOT).contains("back") ? 2 * QUARTER_DEG : 0);
        }
        double sizeDeg = turn.group("half") != null
                ? QUARTER_DEG / 2
                : Stream.of("before", "behind")
                        .map(turn::group)
                        .filter(Objects::nonNull)
                        .findFirst()
                        .map(Double::parseDouble)
                        .orElse(QUARTER_DEG);
        return Optional.of(turn.group("way").equalsIgnoreCase("right") ? sizeDeg : -sizeDeg);
    }

    /** Direction of the last piece along before this one; the cold pipe goes on from the hot one. */
    private double ahead() {
        List<WalkedPipe> earlier = new ArrayList<>(run == Closing.Run.COLD ? survey.hot() : List.of());
        earlier.addAll(walked);
        double aheadDeg = 0;
        for (WalkedPipe pipe : earlier) {
            aheadDeg = pipe.headingDeg().orElse(aheadDeg);
        }
        return aheadDeg;
    }

    private int whole(String name) {
        double value = said(name)
                .map(text -> caught(0, () -> Typed.number(text, "", at + "." + name)))
                .orElse(0.0);
        if (value != Math.rint(value)) {
            faults.add(new Fault(at + "." + name, Numeral.typed(value, DIGITS), "a whole number", ""));
        }
        return (int) value;
    }

    private String tube() {
        String tube = said("tube").map(Typed::tube).orElseGet(() -> before.map(WalkedPipe::tube)
                .orElse(
                        run == Closing.Run.HOT
                                ? told.hotLegs().get(0).tube()
                                : told.coldLegs().get(0).tube()));
        try {
            return WalkedPipe.tubeNamed(at + ".tube", tube);
        } catch (RefusedException refused) {
            faults.addAll(refused.faults());
            return tube;
        }
    }

    private Optional<LaggingChoice> lagging() {
        Optional<String> material = said("lagging").map(Typed::lagging);
        if (material.isEmpty()) {
            return before.flatMap(WalkedPipe::lagging);
        }
        if (material.get().equals(NONE)) {
            return Optional.empty();
        }
        double thicknessMm = said("laggingThickness")
                .map(text -> caught(0, () -> Typed.number(text, "mm", at + ".lagging.thicknessMm")))
                .orElse(before.flatMap(WalkedPipe::lagging)
                        .map(LaggingChoice::thicknessMm)
                        .orElse(0.0));
        return Optional.of(new LaggingChoice(material.get(), thicknessMm));
    }

    /** Room, loft and flue as words, or a temperature. */
    private double around() {
        double before = this.before.map(WalkedPipe::aroundC).orElse(told.site().roomC());
        return said("around")
                .map(text -> switch (place(text)) {
                    case "room" -> told.site().roomC();
                    case "loft" -> told.tank().aroundC();
                    case "flue" -> BESIDE_FLUE_C;
                    case OUTDOORS -> Outdoors.usualC(told);
                    default ->
                        caught(
                                before,
                                () -> otherwise(
                                        () -> Typed.number(text, "°C", at + ".aroundC"),
                                        "room, loft, flue, outdoors, or a temperature"));
                })
                .orElse(before);
    }

    /** The place that is meant by "along the chimney" and the like; what is none stays as it was typed. */
    static String place(String typed) {
        return PLACES.entrySet().stream()
                .filter(known -> known.getKey().matcher(typed).find())
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(typed);
    }

    /** What is read; where it is refused, with what may be told there besides. */
    private static double otherwise(DoubleSupplier read, String allowed) {
        try {
            return read.getAsDouble();
        } catch (RefusedException refused) {
            throw new RefusedException(refused.faults().stream()
                    .map(fault -> new Fault(fault.path(), fault.given(), allowed, ""))
                    .toList());
        }
    }

    private boolean outdoors() {
        return said("around")
                .map(PieceReader::place)
                .map(OUTDOORS::equals)
                .orElse(before.filter(WalkedPipe::outdoors).isPresent());
    }

    private double caught(double otherwise, DoubleSupplier read) {
        try {
            return read.getAsDouble();
        } catch (RefusedException refused) {
            faults.addAll(refused.faults());
            return otherwise;
        }
    }
}

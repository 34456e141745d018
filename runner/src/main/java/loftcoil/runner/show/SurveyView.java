package loftcoil.runner.show;

import java.util.List;
import loftcoil.engine.words.Units;

/** What a face shows of a house that is being measured. */
public final class SurveyView {

    private SurveyView() {}

    /**
     * The house.
     *
     * @param name what it is called
     * @param design name of the design it belongs to; each has a survey of its own
     * @param stations where one stops on the way round it, in order
     * @param standing how far it is
     * @param habits what is asked about what people do with hot water
     * @param dwellings what it can be begun from besides the learner's design
     * @param such what an answer looks like in the learner's units
     */
    public record House(
            String name,
            String design,
            List<Station> stations,
            Standing standing,
            List<Habit> habits,
            List<Dwelling> dwellings,
            Such such) {}

    /**
     * What an answer looks like: those of the learner's own units first, since those of the other are understood too.
     *
     * @param lengths some lengths and a slope
     * @param slopes some slopes
     * @param tube a tube
     * @param wideTube a wider one
     * @param guess a guessed length, with its sign
     * @param warm mean of a warm month
     */
    public record Such(String lengths, String slopes, String tube, String wideTube, String guess, String warm) {

        private static final Such METRIC = new Such(
                "2.2 m, 7 ft 4, 1 in 50",
                "1 in 50, 20 mm/m, falls 1 in 40, 12 cm",
                "22 mm × 1 mm",
                "28 mm × 1 mm",
                "~ 2.1 m",
                "19 °C");
        private static final Such US = new Such(
                "7 ft 4, 2.2 m, 1 in 50",
                "1 in 50, 1/4 in per ft, falls 1 in 40, 5 in",
                "B88 L 3/4",
                "B88 L 1",
                "~ 6 ft 11",
                "66 °F");

        /** Those of these units. */
        public static Such in(Units units) {
            return units == Units.US ? US : METRIC;
        }
    }

    /**
     * A question about what people do with hot water.
     *
     * @param name its name, to be sent back with the answer
     * @param label what is asked for
     * @param now what was told, or what is usual
     * @param taps names of the taps to choose from; empty where a number is asked for
     */
    public record Habit(String name, String label, String now, List<String> taps) {}

    /**
     * An example dwelling.
     *
     * @param code its code
     * @param label what it is
     */
    public record Dwelling(String code, String label) {}

    /**
     * How far a house is measured.
     *
     * @param yours how many values were measured or chosen
     * @param assumed how many were guessed or are stated defaults
     * @param borrowed how many are copied from the example still
     * @param sketch true while something does not fit, so that nothing may be cut by it
     * @param words all that in a sentence
     * @param next what to do next, in a sentence
     * @param plan how the pipes close seen from above; empty where that cannot be told
     * @param open what does not fit, a line each
     * @param doubts what looks like a slip, a question each
     * @param ahead what the design counts as long as the house is not made the design; empty where both count the same
     * @param otherwise what is the learner's own in the design and stands otherwise here, a line each
     * @param follows whether some of that is only borrowed here, so that the house could take it from the design
     */
    public record Standing(
            int yours,
            int assumed,
            int borrowed,
            boolean sketch,
            String words,
            String next,
            String plan,
            List<String> open,
            List<String> doubts,
            String ahead,
            List<String> otherwise,
            boolean follows) {}

    /**
     * A stop on the way.
     *
     * @param code its code
     * @param label what it is called
     * @param help what to take there and how
     * @param counts what each fitting counts, where fittings are told: a heading first; empty elsewhere
     * @param questions what is asked there; none where pipes or taps are walked instead
     * @param run the run of pipe that is walked there; its code is empty where none is
     * @param taps the taps; none at other stations
     * @param trunk the pipe that several taps share; its texts are blank where none is
     * @param standing how far it is, in a few words
     * @param done whether nothing is left to be told there
     */
    public record Station(
            String code,
            String label,
            String help,
            List<String> counts,
            List<Question> questions,
            Run run,
            List<TapLine> taps,
            TrunkLine trunk,
            String standing,
            boolean done) {}

    /**
     * One question.
     *
     * @param path of the field it is about
     * @param label what is asked for
     * @param help one line on how to take it
     * @param unit unit it is kept in; empty for none
     * @param options what can be chosen; empty where something is typed
     * @param allowed what is allowed, in words
     * @param now what stands there now
     * @param origin code of where that is from
     * @param optional whether it may be left out
     * @param otherwise what is taken as long as nothing is told; empty where something is
     */
    public record Question(
            String path,
            String label,
            String help,
            String unit,
            List<String> options,
            String allowed,
            String now,
            String origin,
            boolean optional,
            String otherwise) {}

    /**
     * A run of pipe.
     *
     * @param code {@code hot}, {@code cold}, or empty where the station has none
     * @param pieces as walked; none where the run is borrowed
     * @param words whether it ends where it has to
     * @param closes whether it does
     * @param moved which guessed pieces were moved to close it, and by how much, a sentence each
     * @param mends what may be wrong where it does not
     */
    public record Run(
            String code, List<Piece> pieces, String words, boolean closes, List<String> moved, List<String> mends) {

        static final Run NONE = new Run("", List.of(), "", true, List.of(), List.of());
    }

    /**
     * A straight piece of pipe, each value as it may be typed back.
     *
     * @param name what it is called
     * @param way {@code up}, {@code down} or {@code along}
     * @param length length from fitting to fitting
     * @param slope how much its far end is higher, of a piece along
     * @param heading compass direction, of a piece along; blank where nobody took it
     * @param elbows90 elbows of 90° at its near end
     * @param elbows45 elbows of 45° at its near end
     * @param tube its tube
     * @param lagging material of its lagging, {@code none} for a bare tube
     * @param laggingThickness how thick that is
     * @param around temperature around it while the fire burns, or {@code outdoors}
     * @param measured {@code measured} or {@code guessed}
     */
    public record Piece(
            String name,
            String way,
            String length,
            String slope,
            String heading,
            String elbows90,
            String elbows45,
            String tube,
            String lagging,
            String laggingThickness,
            String around,
            String measured) {}

    /**
     * A tap, each value as it may be typed back.
     *
     * @param name what it is called
     * @param level its mouth above the floor
     * @param tube tube of its pipe
     * @param length length of its pipe
     * @param elbows90 elbows of 90° on the way
     * @param mixer hottest water past its mixing valve; {@code none} where it has none
     * @param from {@code tank} for a pipe of its own, {@code shared pipe} for one that leaves the trunk
     */
    public record TapLine(
            String name, String level, String tube, String length, String elbows90, String mixer, String from) {}

    /**
     * The pipe from the tank that several taps share, each value as it may be typed back; all blank where there is none.
     *
     * @param tube its tube
     * @param length its length
     * @param elbows90 elbows of 90° on the way
     */
    public record TrunkLine(String tube, String length, String elbows90) {

        static final TrunkLine NONE = new TrunkLine("", "", "");
    }
}

package loftcoil.engine.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;

/**
 * Whether a run of pipe, as it was walked, ends where it has to, and what may be wrong where it does not. A run that misses by less than
 * a tape over so many pieces is closed on the pieces that were guessed, by their lengths; a piece that was measured is never moved.
 *
 * @param run which run
 * @param pipes its pieces, the guessed ones moved where that closes it; as walked where it stays open
 * @param missM by how much its end, as walked, lies below where it has to be, m; less than 0 where it lies above
 * @param allowedM what a tape may miss by, m: 1 cm and 0.5 % of the length
 * @param moved which pieces were moved
 * @param mends what to choose from where it stays open
 */
public record Closing(
        Run run, List<WalkedPipe> pipes, double missM, double allowedM, List<Moved> moved, List<Mend> mends) {

    /** What a tape misses by on any run, m; common practice, no source. */
    private static final double TAPE_M = 0.01;

    /** What it misses by for each metre; common practice, no source. */
    private static final double TAPE_SHARE = 0.005;

    /** A design takes rises that lead to within 5 mm of a port; what rounds to less than half of that is closed as it is. */
    private static final double CLOSED_M = 0.002;

    /** The shortest piece that is left when one is moved, m. */
    private static final double LEAST_M = 0.05;

    /** Steeper than this a piece leads up, not along, mm/m. */
    private static final double STEEPEST_MM_PER_M = 700;

    /** What rounds to no slope, mm/m. */
    private static final double LEVEL_MM_PER_M = 0.5;

    /** A miss below this is lost in lengths to a centimetre, m. */
    private static final double FINE_M = 0.02;

    private static final double MM_PER_M = 1000;

    /** Keeps copies of the lists. */
    public Closing {
        pipes = List.copyOf(pipes);
        moved = List.copyOf(moved);
        mends = List.copyOf(mends);
    }

    /** Which run of pipe. */
    public enum Run {
        /** From the coil up to the tank. */
        HOT("hotLegs", "hot"),
        /** From the tank back to the coil. */
        COLD("coldLegs", "cold");

        private final String path;
        private final String code;

        Run(String path, String code) {
            this.path = path;
            this.code = code;
        }

        /** Path of its legs in a design. */
        public String path() {
            return path;
        }

        /** Its code in a survey. */
        public String code() {
            return code;
        }
    }

    /**
     * A guessed piece that was moved so that the run closes.
     *
     * @param name of the piece
     * @param fromM its rise as guessed, m
     * @param toM its rise now, m
     */
    public record Moved(String name, double fromM, double toM) {

        /** Which piece was moved, which way and by how much. */
        public MeasuredText words() {
            boolean falls = fromM < 0 && toM < 0;
            return SurveyWords.say(
                    (toM > fromM ? "moved.up" : "moved.down") + (falls ? ".falling" : ""),
                    "piece",
                    name,
                    "by",
                    Measure.taped(Math.abs(toM - fromM)),
                    "from",
                    Measure.millimetres((falls ? -fromM : fromM) * MM_PER_M),
                    "to",
                    Measure.millimetres((falls ? -toM : toM) * MM_PER_M));
        }
    }

    /**
     * One thing that may be wrong.
     *
     * @param kind what it is
     * @param piece number of the piece it is about, from 0; empty where it is about none
     * @param words what to do
     */
    public record Mend(Kind kind, Optional<Integer> piece, MeasuredText words) {
        /** What may be wrong with a run that does not close. */
        public enum Kind {
            /** No more than a tape may miss, but every piece was measured: one has to be marked as guessed to take it up. */
            GUESSED,
            /** A piece was forgotten. */
            FORGOTTEN,
            /** An upright piece has another length. */
            LENGTH,
            /** A piece along has another slope. */
            SLOPE,
            /** The tank stands elsewhere. */
            TANK,
            /** Somebody has to go again with the tape. */
            AGAIN
        }
    }

    /**
     * Closes a run, if it can be.
     *
     * @param run which run
     * @param walked its pieces, at least one
     * @param wantedM level of its end above that of its beginning, by what it joins, m
     */
    public static Closing of(Run run, List<WalkedPipe> walked, double wantedM) {
        double missM = wantedM - walked.stream().mapToDouble(WalkedPipe::riseM).sum();
        double lengthM = walked.stream().mapToDouble(WalkedPipe::lengthM).sum();
        double allowedM = tapeM(lengthM);
        if (Math.abs(missM) <= CLOSED_M) {
            return new Closing(run, walked, missM, allowedM, List.of(), List.of());
        }
        double guessedM = walked.stream()
                .filter(pipe -> !pipe.measured())
                .mapToDouble(WalkedPipe::lengthM)
                .sum();
        if (Math.abs(missM) <= allowedM && guessedM > 0) {
            return closed(run, walked, missM, allowedM, guessedM);
        }
        return new Closing(run, walked, missM, allowedM, List.of(), mends(run, walked, missM, allowedM));
    }

    /** What a tape may miss by over pipes so long, m. */
    static double tapeM(double lengthM) {
        return TAPE_M + TAPE_SHARE * lengthM;
    }

    private static Closing closed(Run run, List<WalkedPipe> walked, double missM, double allowedM, double guessedM) {
        List<WalkedPipe> pipes = new ArrayList<>();
        List<Moved> moved = new ArrayList<>();
        for (WalkedPipe pipe : walked) {
            if (pipe.measured()) {
                pipes.add(pipe);
            } else {
                WalkedPipe raised = pipe.raisedM(missM * pipe.lengthM() / guessedM);
                pipes.add(raised);
                moved.add(new Moved(pipe.name(), pipe.riseM(), raised.riseM()));
            }
        }
        return new Closing(run, pipes, missM, allowedM, moved, List.of());
    }

    /** Whether the run ends where it has to, once the guessed pieces are moved. */
    public boolean closes() {
        return mends.isEmpty();
    }

    /** What was found, in a sentence. */
    public MeasuredText words() {
        if (!closes()) {
            return SurveyWords.say(
                    "closing." + run.code() + (missM > 0 ? ".below" : ".above"), "gap", Measure.taped(Math.abs(missM)));
        }
        if (moved.isEmpty()) {
            return SurveyWords.say("closing." + run.code() + ".closes");
        }
        return SurveyWords.say("closing." + run.code() + ".moved", "gap", Measure.taped(Math.abs(missM)));
    }

    private static List<Mend> mends(Run run, List<WalkedPipe> walked, double missM, double allowedM) {
        List<Mend> mends = new ArrayList<>();
        if (Math.abs(missM) <= allowedM) {
            mends.add(new Mend(Mend.Kind.GUESSED, Optional.empty(), SurveyWords.say("mend.guessed")));
        }
        mends.add(new Mend(
                Mend.Kind.FORGOTTEN,
                Optional.empty(),
                SurveyWords.say(
                        missM > 0 ? "mend.forgotten.up" : "mend.forgotten.down",
                        "gap",
                        Measure.taped(Math.abs(missM)))));
        longest(walked, true).ifPresent(at -> length(walked, at, missM).ifPresent(mends::add));
        longest(walked, false).ifPresent(at -> slope(walked, at, missM).ifPresent(mends::add));
        mends.add(new Mend(
                Mend.Kind.TANK,
                Optional.empty(),
                SurveyWords.say(
                        (run == Run.HOT) == (missM > 0) ? "mend.tank.lower" : "mend.tank.higher",
                        "gap",
                        Measure.taped(Math.abs(missM)))));
        mends.add(new Mend(Mend.Kind.AGAIN, Optional.empty(), SurveyWords.say("mend.again")));
        return mends;
    }

    /** The longest upright piece, or the longest that leads along; a guessed one before a measured one. */
    private static Optional<Integer> longest(List<WalkedPipe> walked, boolean upright) {
        Comparator<Integer> guessedFirst =
                Comparator.comparing(at -> !walked.get(at).measured());
        return IntStream.range(0, walked.size())
                .boxed()
                .filter(at -> (walked.get(at).way() != Way.ALONG) == upright)
                .max(guessedFirst.thenComparingDouble(at -> walked.get(at).lengthM()));
    }

    private static Optional<Mend> length(List<WalkedPipe> walked, int at, double missM) {
        WalkedPipe pipe = walked.get(at);
        WalkedPipe other = pipe.raisedM(missM);
        return other.lengthM() < LEAST_M
                ? Optional.empty()
                : Optional.of(new Mend(
                        Mend.Kind.LENGTH,
                        Optional.of(at),
                        SurveyWords.say(
                                "mend.length",
                                "piece",
                                pipe.name(),
                                "from",
                                told(pipe, missM),
                                "to",
                                told(other, missM))));
    }

    /** A length; where it is a matter of some millimetres, to one of them. */
    private static Measure told(WalkedPipe pipe, double missM) {
        return Measure.taped(pipe.lengthM()).finer(Math.abs(missM) < FINE_M ? 1 : 0);
    }

    private static Optional<Mend> slope(List<WalkedPipe> walked, int at, double missM) {
        WalkedPipe pipe = walked.get(at);
        WalkedPipe other = pipe.raisedM(missM);
        return Math.abs(other.slopeMmPerM()) > STEEPEST_MM_PER_M
                ? Optional.empty()
                : Optional.of(new Mend(
                        Mend.Kind.SLOPE,
                        Optional.of(at),
                        SurveyWords.say("mend.slope", "piece", pipe.name(), "from", slope(pipe), "to", slope(other))));
    }

    private static MeasuredText slope(WalkedPipe pipe) {
        if (Math.abs(pipe.slopeMmPerM()) < LEVEL_MM_PER_M) {
            return SurveyWords.say("slope.level");
        }
        return SurveyWords.say(
                pipe.slopeMmPerM() < 0 ? "slope.falls" : "slope.climbs",
                "by",
                new Measure(Math.abs(pipe.slopeMmPerM()), MeasureKind.SLOPE_MM_PER_M));
    }
}

package loftcoil.engine.survey;

import loftcoil.engine.design.Coded;
import loftcoil.engine.words.Numeral;

/** A question about what people do with hot water, in the order in which it is asked; every face asks these. */
public enum HabitAsked implements Coded {
    /** How many live there. */
    PEOPLE("people", "2", 0),
    /** Washes of each person. */
    WASHES("washesAWeek", "7", 7),
    /** Baths of each person. */
    BATHS("bathsAWeek", "0", 7),
    /** Dishes of the house. */
    DISHES("dishesADay", "2", 1),
    /** Machine loads of the house. */
    LOADS("loadsAWeek", "0", 7),
    /** The tap for hands and dishes. */
    SINK("sink", 0),
    /** The tap for washes and baths. */
    TUB("tub", 1),
    /** The tap the machine hangs on. */
    MACHINE("machine", 2);

    private final String code;
    private final String usual;
    private final int days;
    private final int tap;

    HabitAsked(String code, String usual, int days) {
        this(code, usual, days, -1);
    }

    HabitAsked(String code, int tap) {
        this(code, "", 0, tap);
    }

    HabitAsked(String code, String usual, int days, int tap) {
        this.code = code;
        this.usual = usual;
        this.days = days;
        this.tap = tap;
    }

    /** Its name in a survey. */
    @Override
    public String code() {
        return code;
    }

    @Override
    public String label() {
        return SurveyWords.say("habit." + code).metric();
    }

    /** Whether a tap is asked for by its name; a number else. */
    public boolean isTap() {
        return tap >= 0;
    }

    /** In how many days it is counted; 0 where nothing is done, but there is so much of it. */
    public int days() {
        return days;
    }

    /** The number that stands there before somebody says another; empty where a tap is asked for. */
    public String usual() {
        return usual;
    }

    /** Which of the taps, from 0, is likeliest. */
    public int likeliestTap() {
        return Math.max(0, tap);
    }

    /** What was told of it, as it may be typed back. */
    public String told(Habits habits) {
        return switch (this) {
            case PEOPLE -> Integer.toString(habits.people());
            case WASHES -> plain(habits.washesAWeek());
            case BATHS -> plain(habits.bathsAWeek());
            case DISHES -> plain(habits.dishesADay());
            case LOADS -> plain(habits.loadsAWeek());
            case SINK -> habits.sink();
            case TUB -> habits.tub();
            case MACHINE -> habits.machine();
        };
    }

    private static String plain(double value) {
        return Numeral.typed(value);
    }
}

package loftcoil.engine.caution;

import java.util.Locale;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Sentences;

/**
 * The one table of conduct: what to do in the hour in which people get hurt, and before a fire. Its sentences stand in
 * {@code conduct.properties}; lessons, exercises, build sheet, page and terminal say them word for word, so that nobody has to choose
 * between two rules. They hold no figures. Common practice, no source.
 */
public enum Conduct {
    /** Fumes or fire in the room. */
    FUMES,
    /** A coil that boils, or may be dry. */
    STEAM,
    /** A loop that runs under a tank that is too hot: calm. */
    HOT_TANK,
    /** The first fire, and the first after work. */
    FIRST_FIRE,
    /** Going back in, and lighting again. */
    BACK_IN;

    private static final Sentences SENTENCES = Sentences.read(Conduct.class, "conduct.properties");

    /** Its code, such as {@code hot-tank}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Its name, by which a caution refers to it, without a full stop. */
    public MeasuredText title() {
        return SENTENCES.say("conduct." + code() + ".title");
    }

    /** What stands under a caution that it applies to. */
    MeasuredText happens() {
        return SENTENCES.say("conduct.happens", "rule", title());
    }

    /** When it holds, without a full stop. */
    public MeasuredText when() {
        return SENTENCES.say("conduct." + code() + ".when");
    }

    /** What to do. */
    public MeasuredText act() {
        String code = "conduct." + code() + ".act";
        return this == BACK_IN ? SENTENCES.say(code, "frost", afterFrost()) : SENTENCES.say(code);
    }

    /** Both in one, as the lessons tell it. */
    public MeasuredText rule() {
        return SENTENCES.say("conduct.rule", "when", when(), "act", act());
    }

    /** The last sentence of {@link #BACK_IN}, for the places that are about frost alone. */
    public static MeasuredText afterFrost() {
        return SENTENCES.say("conduct.frost");
    }

    /** What the table is worth, and what comes before it. */
    public static MeasuredText worth() {
        return SENTENCES.say("conduct.worth");
    }
}

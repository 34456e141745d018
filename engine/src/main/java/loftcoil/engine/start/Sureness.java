package loftcoil.engine.start;

import java.util.Locale;

/** What the starts of a design come to, the best first. */
public enum Sureness {
    /** Every start that was tried went forward, or did no harm. */
    SURE,
    /** Some start may go wrong. */
    UNSURE,
    /** Some start goes wrong with some counterflow and with full. */
    FAILS;

    /** Its code: {@code sure}, {@code unsure} or {@code fails}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}

package loftcoil.engine.caution;

import java.util.Locale;

/**
 * How bad it can get, the gravest first: by what has to happen until somebody is hurt. What the design itself has wrong counts as
 * none of it. Stored and sent to other programs as its code, shown to people as its label.
 */
public enum Severity {
    /** One foreseeable event injures: a fire, a draw, a frost, a hand on a valve. */
    DANGER("Danger"),
    /** It takes a second fault: metal worn through, a main that bursts, somebody who cannot draw a hand back. */
    WARNING("Caution"),
    /** It will not work as meant. */
    NOTE("Note");

    private final String label;

    Severity(String label) {
        this.label = label;
    }

    /** Its code: {@code danger}, {@code warning} or {@code note}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The one word that every face has for it. */
    public String label() {
        return label;
    }
}

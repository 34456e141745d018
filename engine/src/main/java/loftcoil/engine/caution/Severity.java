package loftcoil.engine.caution;

import java.util.Locale;

/** How bad it can get, the gravest first. Stored and sent to other programs as its code, shown to people as its label. */
public enum Severity {
    /** Somebody can be killed or badly hurt. */
    DANGER("Danger"),
    /** Something can break or flood, or somebody be hurt less badly. */
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

package loftcoil.engine.caution;

/** How bad it can get. */
public enum Severity {
    /** Somebody can be killed or badly hurt. */
    DANGER,
    /** Something can break or flood, or somebody be hurt less badly. */
    WARNING,
    /** It will not work as meant. */
    NOTE
}

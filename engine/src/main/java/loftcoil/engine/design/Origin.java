package loftcoil.engine.design;

/** Where the value of a field is from. */
public enum Origin implements Coded {
    /** The builder measured, chose or decided it. */
    YOURS("yours", "yours"),
    /** Nobody said it: a stated default stands in, with a range of which verdicts use the dangerous end. */
    ASSUMED("assumed", "assumed until you say it"),
    /** Copied from an example dwelling and not looked at since. */
    BORROWED("borrowed", "borrowed from the example");

    private final String code;
    private final String label;

    Origin(String code, String label) {
        this.code = code;
        this.label = label;
    }

    @Override
    public String code() {
        return code;
    }

    @Override
    public String label() {
        return label;
    }
}

package loftcoil.engine.design;

/** The shape of a roof, seen from the side on which the loop runs from heater to tank. */
public enum Roof implements Coded {
    /** Two slopes that meet in a ridge. */
    GABLE("gable", "gable, two slopes and a ridge"),
    /** One slope, its low side over the tank. */
    DOWN_TO_TANK("single pitch down to the tank", "single pitch, lower over the tank than over the heater"),
    /** One slope, its high side over the tank. */
    UP_TO_TANK("single pitch up to the tank", "single pitch, higher over the tank than over the heater"),
    /** Level, or next to it. */
    FLAT("flat", "flat");

    private final String code;
    private final String label;

    Roof(String code, String label) {
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

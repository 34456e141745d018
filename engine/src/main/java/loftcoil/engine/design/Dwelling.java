package loftcoil.engine.design;

/** The example dwellings that a house can be started from; all of them invented, and marked so in their notes. */
public enum Dwelling implements Coded {
    /** The one that the course is built in. */
    ORCHARD_BOTHY("orchard-bothy", "bothy in a hillside orchard: one room, an upright tank in the loft, sun on it"),
    /** On wheels, without sun. */
    MARSH_HUT("marsh-hut", "hut on wheels: a small box of a tank low under the roof, no panes"),
    /** With long pipes. */
    UPLAND_BARN("upland-barn", "stone barn: a large tank high under the rafters, a long run from the heater"),
    /** South of the equator. */
    SOUTH_CABIN("south-cabin", "flat-roofed cabin in the south: a lying tank, panes to the north");

    private final String code;
    private final String label;

    Dwelling(String code, String label) {
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

    /** The dwelling as a design. */
    public Design design() {
        return DesignJson.read(Example.json(code + ".json"));
    }
}

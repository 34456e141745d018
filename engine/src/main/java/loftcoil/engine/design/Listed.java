package loftcoil.engine.design;

/** The lists of a design whose items come and go. */
enum Listed {
    COLD_LEGS("coldLegs", "Cold pipe", true),
    HOT_LEGS("hotLegs", "Hot pipe", true),
    TAPS("taps", "Tap", true),
    DRAWS("use", "Draw", false),
    PLASTIC_PIPES("safety.materials.plasticPipes", "Plastic pipe", true);

    private final String path;
    private final String item;
    private final boolean named;

    Listed(String path, String item, boolean named) {
        this.path = path;
        this.item = item;
        this.named = named;
    }

    String path() {
        return path;
    }

    /** What one of them is called. */
    String item() {
        return item;
    }

    /** Whether each has a name of its own. */
    boolean named() {
        return named;
    }

    /** Whether a path leads to a field of one of them. */
    boolean holds(String field) {
        return field.startsWith(path + "[");
    }

    /** The number of the item that a path leads to. */
    int number(String field) {
        return Integer.parseInt(field.substring(path.length() + 1, field.indexOf(']', path.length())));
    }

    /** What of the path stands behind the item. */
    String rest(String field) {
        return field.substring(field.indexOf(']', path.length()) + 1);
    }

    /** The path of a field of an item. */
    String at(int number, String rest) {
        return path + "[" + number + "]" + rest;
    }
}

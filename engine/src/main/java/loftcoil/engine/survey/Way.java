package loftcoil.engine.survey;

import loftcoil.engine.design.Coded;

/** Which way a straight piece of pipe leads, to somebody who walks along it. */
public enum Way implements Coded {
    /** Straight up. */
    UP("up"),
    /** Straight down. */
    DOWN("down"),
    /** Along a wall or floor, level or at a slope. */
    ALONG("along");

    private final String code;

    Way(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}

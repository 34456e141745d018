package loftcoil.engine.survey;

import loftcoil.engine.design.Coded;

/** How a season's sky is remembered, with the share of daylight hours in which the sun then shines; common practice, no source. */
public enum Sky implements Coded {
    /** Blue on most days. */
    CLEAR("clear", 0.8),
    /** As often blue as grey. */
    MIXED("mixed", 0.5),
    /** Grey on most days. */
    CLOUDY("cloudy", 0.3),
    /** Grey or in fog nearly always. */
    DULL("dull", 0.15);

    private final String code;
    private final double sunnyShare;

    Sky(String code, double sunnyShare) {
        this.code = code;
        this.sunnyShare = sunnyShare;
    }

    @Override
    public String code() {
        return code;
    }

    /** Share of the hours between sunrise and sunset in which the sun shines, 0 to 1. */
    public double sunnyShare() {
        return sunnyShare;
    }
}

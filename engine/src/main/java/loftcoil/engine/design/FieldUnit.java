package loftcoil.engine.design;

import loftcoil.engine.words.MeasureKind;

/** The units that the numbers of a design are in, each with the measure it is shown as. */
enum FieldUnit {
    M("m", MeasureKind.LENGTH_M, 1),
    MM("mm", MeasureKind.SMALL_LENGTH_MM, 1),
    M2("m²", MeasureKind.AREA_M2, 1),
    CM2("cm²", MeasureKind.SMALL_AREA_CM2, 1),
    L("L", MeasureKind.VOLUME_L, 1),
    L_PER_MIN("L/min", MeasureKind.FLOW_L_PER_MIN, 1),
    KPA("kPa", MeasureKind.PRESSURE_KPA, 1),
    KG("kg", MeasureKind.MASS_KG, 1),
    KG_PER_H("kg/h", MeasureKind.MASS_KG_PER_H, 1),
    C("°C", MeasureKind.TEMP_C, 1),
    KW("kW", MeasureKind.POWER_W, 1000),
    H("h", MeasureKind.TIME_H, 1),
    /** An hour of the day. */
    CLOCK("h", MeasureKind.CLOCK_H, 1),
    DEGREES("degrees", MeasureKind.ANGLE_DEG, 1),
    PERCENT("%", MeasureKind.PERCENT, 1),
    COUNT("", MeasureKind.COUNT, 1),
    BEARERS("bearers", MeasureKind.COUNT, 1),
    PLAIN("", MeasureKind.NONE, 1);

    private final String symbol;
    private final MeasureKind kind;
    private final double inKind;

    FieldUnit(String symbol, MeasureKind kind, double inKind) {
        this.symbol = symbol;
        this.kind = kind;
        this.inKind = inKind;
    }

    String symbol() {
        return symbol;
    }

    MeasureKind kind() {
        return kind;
    }

    /** What one of this unit is in the unit of its kind. */
    double inKind() {
        return inKind;
    }
}

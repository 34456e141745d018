package loftcoil.engine.study;

/**
 * One figure of a sheet.
 *
 * @param key where it stands in the sheet's JSON, such as {@code loop.flowLPerMin}; a tap goes by its name, as in
 *     {@code taps[wash tub].flowLPerMin}, so that taps are compared with themselves
 * @param kind what it is
 * @param value its value, in the unit of its kind
 */
record SheetFigure(String key, Kind kind, double value) {

    /**
     * What a figure is, whatever its value.
     *
     * @param group the figures it belongs to
     * @param label what it is called
     * @param unit its unit; empty for a plain number
     * @param wish which way is better
     */
    record Kind(FigureGroup group, String label, String unit, Better wish) {}
}

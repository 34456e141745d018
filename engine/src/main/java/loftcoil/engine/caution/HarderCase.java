package loftcoil.engine.caution;

import loftcoil.engine.loop.FlowSearch;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;

/**
 * The loop under other conditions than those of the sheet: a stronger fire, a hotter tank.
 *
 * @param when the conditions in words that follow a comma, such as {@code with the whole tank at 70 °C}
 * @param tankC temperature of the whole tank, °C
 * @param heatFactor heat of the coil over its usual heat there; 1 or more
 * @param search what the search of the loop found then
 */
public record HarderCase(MeasuredText when, double tankC, double heatFactor, FlowSearch search) {

    /** A tank late in a good evening, °C; each design is judged at it. */
    public static final double HOT_C = 70;

    private static final double PERCENT = 100;

    /** The loop with its whole tank at another temperature, °C. */
    public static HarderCase tankAt(double tankC, FlowSearch search) {
        return new HarderCase(
                CautionKind.SENTENCES.say("when.tank-at", "tank", Measure.celsius(tankC)), tankC, 1, search);
    }

    /**
     * The loop with a stronger fire as well.
     *
     * @param tankC temperature of the whole tank, °C
     * @param heatFactor heat of the coil over its usual heat; over 1
     * @param heatKW that heat, kW
     * @param search what the search of the loop found then
     */
    public static HarderCase stronger(double tankC, double heatFactor, double heatKW, FlowSearch search) {
        MeasuredText when = CautionKind.SENTENCES.say(
                "when.stronger",
                "tank",
                Measure.celsius(tankC),
                "heat",
                new Measure(heatKW, MeasureKind.POWER_KW),
                "more",
                new Measure((heatFactor - 1) * PERCENT, MeasureKind.PERCENT));
        return new HarderCase(when, tankC, heatFactor, search);
    }
}

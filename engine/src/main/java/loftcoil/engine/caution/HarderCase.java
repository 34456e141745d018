package loftcoil.engine.caution;

import loftcoil.engine.loop.FlowSearch;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;

/**
 * The loop under harder conditions than those of the sheet: a stronger fire, a hotter tank.
 *
 * @param when the conditions in words that follow a comma, such as {@code with the coil taking 2.8 kW}
 * @param search what the search of the loop found then
 */
public record HarderCase(MeasuredText when, FlowSearch search) {

    /** The loop with its whole tank at another temperature, °C. */
    public static HarderCase tankAt(double tankC, FlowSearch search) {
        return new HarderCase(CautionKind.SENTENCES.say("when.tank-at", "tank", Measure.celsius(tankC)), search);
    }

    /** The loop with the coil taking another heat, kW. */
    public static HarderCase coilTaking(double heatKW, FlowSearch search) {
        Measure heat = new Measure(heatKW, MeasureKind.POWER_KW);
        return new HarderCase(CautionKind.SENTENCES.say("when.coil-taking", "heat", heat), search);
    }
}

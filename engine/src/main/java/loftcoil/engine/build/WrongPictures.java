package loftcoil.engine.build;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.build.FirstHour.WrongPicture;
import loftcoil.engine.run.FirstFire.Moment;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;

/** What it means when the first hour does not look as expected; common practice, no source, the limits from the march. */
final class WrongPictures {

    private static final double TOO_HOT_K = 20;

    private final Moment mid;
    private final Moment low;
    private final Moment high;
    private final List<WrongPicture> pictures = new ArrayList<>();

    private WrongPictures(Moment mid, Moment low, Moment high) {
        this.mid = mid;
        this.low = low;
        this.high = high;
    }

    /** From the system at ten minutes. */
    static List<WrongPicture> of(Moment mid, Moment low, Moment high) {
        WrongPictures wrong = new WrongPictures(mid, low, high);
        wrong.flow();
        wrong.heat();
        wrong.tank();
        return wrong.pictures;
    }

    private void flow() {
        add(
                MeasuredText.of(
                        "After ten minutes the coil outlet is above ",
                        Measure.celsius(Math.min(90, high.coilOutC() + TOO_HOT_K)),
                        " and the top of the hot leg is still cold."),
                MeasuredText.of(
                        "The water stands: air at a high point, a valve shut, a pipe choked, or not filled over the return port."),
                MeasuredText.of(
                        "Rake the fire out now. Look for the high point; fill and bleed again when all is cold."));
        add(
                MeasuredText.of(
                        "Coil outlet less coil inlet is more than ",
                        Measure.kelvins(1.7 * Math.max(rise(high), rise(mid))),
                        ", the top of the hot leg is warm."),
                MeasuredText.of(
                        "It circulates, but at half the flow or less: some air, a burr, a crushed bend, solder in an elbow, sludge."),
                MeasuredText.of("Small fires only. Drain, open the joint you doubt most, look through the pieces."));
        add(
                MeasuredText.of("The foot of the cold leg warms before the top of the hot leg."),
                MeasuredText.of(
                        "It runs backward: coil connected the wrong way round, legs swapped at the tank, or a hot leg that falls."),
                MeasuredText.of("Rake out, let it cool, compare with the drawing leg by leg."));
        add(
                MeasuredText.of("It knocks, gurgles or spits at the vent."),
                MeasuredText.of("Water boils in the coil, or air passes through it."),
                MeasuredText.of(
                        "Rake the fire out, keep away from vent and taps, pour nothing on the coil. Bleed again cold; if it comes back,"
                                + " the fire is too large for the loop."));
    }

    private void heat() {
        add(
                MeasuredText.of(
                        "The order is right, but coil outlet less coil inlet is less than ",
                        Measure.kelvins(0.7 * Math.min(rise(low), rise(mid))),
                        "."),
                MeasuredText.of(
                        "The coil catches less heat: wet wood, a small fire, the coil beside the flames, or soot on it."),
                MeasuredText.of(
                        "No danger. Weigh the wood, look at the flames, write it down: the sheet's heat was too high."));
        add(
                MeasuredText.of(
                        "The coil outlet is as expected, but the top of the hot leg is more than ",
                        Measure.kelvins(Math.max(5, 2 * Math.abs(mid.coilOutC() - mid.returnC()) + 3)),
                        " cooler."),
                MeasuredText.of("The hot leg loses heat: lagging missing, wet or open at the joints."),
                MeasuredText.of("Close it when the pipe is cold."));
    }

    private void tank() {
        add(
                MeasuredText.of("The bottom of the tank warms as early as its top."),
                MeasuredText.of(
                        "The tank is stirred: return water shoots in, somebody draws, or cold port and return port are swapped."),
                MeasuredText.of("Compare the ports with the drawing."));
        add(
                MeasuredText.of("The top of the tank stays cold while the hot leg is warm."),
                MeasuredText.of(
                        "The return goes elsewhere: a tap open, a leak, or the water does not stand over the return port."),
                MeasuredText.of("Look at the level first; below the mark, rake the fire out."));
        add(
                MeasuredText.of("The level falls and nobody draws."),
                MeasuredText.of("It leaks, or it boils away through the vent."),
                MeasuredText.of(
                        "Rake the fire out. Never fill cold water into a loop that has boiled until it can be touched."));
    }

    private static double rise(Moment moment) {
        return moment.coilOutC() - moment.coilInC();
    }

    private void add(MeasuredText seen, MeasuredText means, MeasuredText act) {
        pictures.add(new WrongPicture(seen, means, act));
    }
}

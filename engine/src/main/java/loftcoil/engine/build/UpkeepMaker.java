package loftcoil.engine.build;

import static loftcoil.engine.build.Upkeep.When.BEFORE_LEAVING;
import static loftcoil.engine.build.Upkeep.When.COMING_BACK;
import static loftcoil.engine.build.Upkeep.When.EACH_FIRE;
import static loftcoil.engine.build.Upkeep.When.MONTHLY;
import static loftcoil.engine.build.Upkeep.When.WEEKLY;
import static loftcoil.engine.build.Upkeep.When.YEARLY;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.build.Upkeep.Task;
import loftcoil.engine.build.Upkeep.When;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.LaggingChoice;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;

/** What to look after; common practice, no source, except where a figure is named. */
final class UpkeepMaker {

    private final Design design;
    private final List<Task> tasks = new ArrayList<>();

    private UpkeepMaker(Design design) {
        this.design = design;
    }

    static Upkeep of(Design design) {
        UpkeepMaker maker = new UpkeepMaker(design);
        maker.eachFire();
        maker.weekly();
        maker.monthly();
        maker.yearly();
        maker.leaving();
        maker.back();
        return new Upkeep(maker.tasks);
    }

    private void eachFire() {
        add(
                EACH_FIRE,
                MeasuredText.of(
                        "Look at the level: it stands above the mark of ",
                        Measure.metres(SafeWater.leastM(design)),
                        "."),
                "A return port that draws air stops the loop, and the coil boils dry.");
        add(
                EACH_FIRE,
                MeasuredText.of("In frost: feel or read that no pipe of loop, vent or feed is frozen."),
                "Ice shuts loop or vent; a fire under it can burst the coil. Thaw first, from the open end inward.");
    }

    /** The interval of the caution about legionella: at most seven days. */
    private void weekly() {
        add(
                WEEKLY,
                MeasuredText.of(
                        "Heat the whole tank to ",
                        Measure.celsius(60),
                        " for half an hour, or draw it all and fill anew, then run each tap until it is hot."),
                "Legionella grow in water between 25 and 45 °C; 60 °C for half an hour kills them (WHO 2007, as restated"
                        + " in public). That water scalds: let nobody at the taps meanwhile.");
    }

    private void monthly() {
        add(
                MONTHLY,
                MeasuredText.of(
                        "Look into the open end of the vent, and at the overflow: clear, dry, and nothing hung over it."),
                "A shut vent makes a boiler of the tank.");
        add(
                MONTHLY,
                MeasuredText.of("Look at flue pipe and top for tar; ask a sweep when the layer is as thick as a coin."),
                "The coil cools the flue gas; tar takes fire and cracks the flue.");
        add(MONTHLY, MeasuredText.of("Press the button of the carbon monoxide alarm."), "It cannot be smelt.");
        design.window()
                .ifPresent(window -> add(
                        MONTHLY,
                        window.shutter().isPresent()
                                ? MeasuredText.of("Wipe the panes; see that the shutter closes tight all round.")
                                : MeasuredText.of("Wipe the panes, inside too where mist stands."),
                        "Dust takes a few hundredths of the sun; a gap undoes the shutter."));
    }

    private void yearly() {
        add(YEARLY, MeasuredText.of("Have the flue swept, before the first fire of the season."), "Tar and nests.");
        add(
                YEARLY,
                MeasuredText.of(
                        "Open the drain cock with the tank full, until the water runs clear; then look into the tank with a lamp."),
                "Sludge settles in the lowest run and slows the loop.");
        add(
                YEARLY,
                MeasuredText.of(
                        "Scrape soot off the coil and look at each of its joints: pitted, thin or weeping is replaced."),
                "Soot a millimetre thick keeps heat out; a coil that fails puts steam into the fire.");
        add(
                YEARLY,
                MeasuredText.of("Work through the first hour again, cold tank, and compare with the log."),
                "Slower than last year means scale, sludge or air.");
        add(
                YEARLY,
                MeasuredText.of("Feel the lagging: dry, closed at the joints, not slipped, not browned at the flue."),
                laggingWhy());
        add(
                YEARLY,
                MeasuredText.of("Put a level on the legs, and look at straps and bearers."),
                "Houses settle; a leg that has sagged holds air.");
        design.tank()
                .lagging()
                .map(LaggingChoice::material)
                .ifPresent(material -> add(
                        YEARLY,
                        MeasuredText.of("Look at the underside of the tank and the " + material
                                + " there for wet spots and rust."),
                        "A leak under lagging shows late."));
    }

    private String laggingWhy() {
        return "Wet lagging keeps no heat in; browned lagging is too close to the flue.";
    }

    private void leaving() {
        add(
                BEFORE_LEAVING,
                MeasuredText.of(
                        "Fire out and cold, feed shut: open the drain cock and all taps, and let tank, loop, vent, feed and taps run"
                                + " empty. Blow through the coil."),
                "Water that freezes splits copper; you see it when it thaws.");
        add(
                BEFORE_LEAVING,
                MeasuredText.of("Hang the sign on the door of the fire: **no water, no fire**."),
                "The next one to light it may not be you.");
    }

    private void back() {
        add(
                COMING_BACK,
                MeasuredText.of(
                        "Fill as for the first time, all steps. Then run every tap until the standing water is out, window open, face"
                                + " away from the spray."),
                "Water that stood warm for weeks may carry legionella, and spray carries them into the lungs.");
    }

    private void add(When when, MeasuredText what, String why) {
        tasks.add(new Task(when, what, MeasuredText.of(why)));
    }
}

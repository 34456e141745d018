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
import loftcoil.engine.caution.Conduct;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.LaggingChoice;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Sentences;

/** What to look after, and when. */
final class UpkeepMaker {

    private static final Sentences SENTENCES = Sentences.read(UpkeepMaker.class, "upkeep.properties");

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
        add(EACH_FIRE, "upkeep.level", "least", Measure.metres(SafeWater.leastM(design)));
        add(EACH_FIRE, "upkeep.frozen", "frost", Conduct.afterFrost());
    }

    private void weekly() {
        add(WEEKLY, "upkeep.heat-through");
    }

    private void monthly() {
        add(MONTHLY, "upkeep.vent");
        add(MONTHLY, "upkeep.tar");
        add(MONTHLY, "upkeep.alarm");
        design.window()
                .ifPresent(window -> tasks.add(new Task(
                        MONTHLY,
                        SENTENCES.say(window.shutter().isPresent() ? "upkeep.panes-shutter.what" : "upkeep.panes.what"),
                        SENTENCES.say("upkeep.panes.why"))));
    }

    private void yearly() {
        add(YEARLY, "upkeep.sweep");
        add(YEARLY, "upkeep.sludge");
        add(YEARLY, "upkeep.soot");
        add(YEARLY, "upkeep.first-hour");
        add(YEARLY, "upkeep.lagging");
        add(YEARLY, "upkeep.slopes");
        design.tank()
                .lagging()
                .map(LaggingChoice::material)
                .ifPresent(material -> add(YEARLY, "upkeep.under-the-tank", "lagging", material));
    }

    private void leaving() {
        add(BEFORE_LEAVING, "upkeep.drain");
        add(BEFORE_LEAVING, "upkeep.sign");
    }

    private void back() {
        add(COMING_BACK, "upkeep.fill-anew");
    }

    private void add(When when, String code, Object... filling) {
        List<MeasuredText> said = SENTENCES.sayEach(code, List.of("what", "why"), filling);
        tasks.add(new Task(when, said.get(0), said.get(1)));
    }
}

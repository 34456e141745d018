package loftcoil.runner.show;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.Headings;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.watch.Watch;

/**
 * The whole sheet and the build sheet of the learner's own design. The year of the one takes about a second, those of the other
 * some more: each is worked out once for each design.
 */
final class WholeSheets {

    /** The design as it is, the one before, and one to go back to. */
    private static final int MOST = 3;

    private static final View.Building BEGINNING =
            new View.Building(View.BuildState.WORKING, 0, "Working out " + Watch.Stage.YEAR.words() + ".");

    private final LearnerStore store;
    private final Map<Design, Sheet> made = new LinkedHashMap<>();
    private final Object building = new Object();
    private Optional<BuildSheet> lastBuild = Optional.empty();
    private Headings ledBy = Headings.UNKNOWN;

    /** What is being marched, whoever asked for it. */
    private volatile View.Building far = BEGINNING;

    WholeSheets(LearnerStore store) {
        this.store = store;
    }

    /** The sheet of the design as it is when its turn has come: one that was changed while others waited is never marched. */
    synchronized Sheet sheet() {
        return sheet(store.design());
    }

    /** The sheet of a design; the last few are kept, since a decision is set beside the one before. */
    Sheet sheet(Design design) {
        return sheet(design, Watch.NONE);
    }

    private synchronized Sheet sheet(Design design, Watch wanted) {
        Optional<Sheet> known = Optional.ofNullable(made.get(design));
        Sheet sheet = known.orElseGet(() -> Sheet.whole(design, Sheet.USUAL_TANK_C, telling(wanted)));
        made.remove(design);
        made.put(design, sheet);
        if (made.size() > MOST) {
            made.remove(made.keySet().iterator().next());
        }
        return sheet;
    }

    private Watch telling(Watch wanted) {
        return new Watch() {
            @Override
            public void at(Stage stage, int done, int of) {
                far = new View.Building(
                        View.BuildState.WORKING, stage.percent(done, of), "Working out " + stage.words() + ".");
            }

            @Override
            public boolean cancelled() {
                return wanted.cancelled();
            }
        };
    }

    /** How far the sheet is that is being worked out. */
    View.Building far() {
        return far;
    }

    /** As much of the build sheet as follows without a year and a start. */
    BuildSheet half() {
        return BuildSheet.of(Sheet.of(store.design()), Headings.of(store.survey()));
    }

    /** The build sheet of the design; the sheet itself can be had while it is worked out. */
    BuildSheet build() {
        return build(Watch.NONE);
    }

    /**
     * The same, watched.
     *
     * @throws Watch.StoppedException where the watch ends it
     */
    BuildSheet build(Watch watch) {
        synchronized (building) {
            far = BEGINNING;
            Sheet whole = sheet(store.design(), watch);
            Headings headings = Headings.of(store.survey());
            BuildSheet made = lastBuild
                    .filter(build -> build.sheet().equals(whole) && headings.equals(ledBy))
                    .orElseGet(() -> BuildSheet.of(whole, headings));
            lastBuild = Optional.of(made);
            ledBy = headings;
            return made;
        }
    }
}

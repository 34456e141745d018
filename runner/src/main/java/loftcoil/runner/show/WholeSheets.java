package loftcoil.runner.show;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.Headings;
import loftcoil.engine.sheet.Sheet;

/**
 * The whole sheet and the build sheet of the learner's own design. The year of the one takes about a second, those of the other
 * some more: each is worked out once for each design.
 */
final class WholeSheets {

    /** The design as it is, the one before, and one to go back to. */
    private static final int MOST = 3;

    private final LearnerStore store;
    private final Map<Design, Sheet> made = new LinkedHashMap<>();
    private final Object building = new Object();
    private Optional<BuildSheet> lastBuild = Optional.empty();
    private Headings ledBy = Headings.UNKNOWN;

    WholeSheets(LearnerStore store) {
        this.store = store;
    }

    /** The sheet of the design as it is when its turn has come: one that was changed while others waited is never marched. */
    synchronized Sheet sheet() {
        return sheet(store.design());
    }

    /** The sheet of a design; the last few are kept, since a decision is set beside the one before. */
    synchronized Sheet sheet(Design design) {
        Optional<Sheet> known = Optional.ofNullable(made.remove(design));
        Sheet sheet = known.orElseGet(() -> Sheet.whole(design, Sheet.USUAL_TANK_C));
        made.put(design, sheet);
        if (made.size() > MOST) {
            made.remove(made.keySet().iterator().next());
        }
        return sheet;
    }

    /** The build sheet of the design; the sheet itself can be had while it is worked out. */
    BuildSheet build() {
        synchronized (building) {
            Sheet whole = sheet();
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

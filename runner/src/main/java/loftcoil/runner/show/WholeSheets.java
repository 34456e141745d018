package loftcoil.runner.show;

import java.util.Optional;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.Sheet;

/**
 * The whole sheet and the build sheet of the learner's own design. The year of the one takes about a second, those of the other
 * some more: each is worked out once for each design.
 */
final class WholeSheets {

    private final LearnerStore store;
    private Optional<Sheet> last = Optional.empty();
    private final Object building = new Object();
    private Optional<BuildSheet> lastBuild = Optional.empty();

    WholeSheets(LearnerStore store) {
        this.store = store;
    }

    /** The sheet of the design as it is when its turn has come: one that was changed while others waited is never marched. */
    synchronized Sheet sheet() {
        Design design = store.design();
        Sheet sheet = last.filter(made -> made.design().equals(design))
                .orElseGet(() -> Sheet.whole(design, Sheet.USUAL_TANK_C));
        last = Optional.of(sheet);
        return sheet;
    }

    /** The build sheet of the design; the sheet itself can be had while it is worked out. */
    BuildSheet build() {
        synchronized (building) {
            Sheet whole = sheet();
            BuildSheet made =
                    lastBuild.filter(build -> build.sheet().equals(whole)).orElseGet(() -> BuildSheet.of(whole));
            lastBuild = Optional.of(made);
            return made;
        }
    }
}

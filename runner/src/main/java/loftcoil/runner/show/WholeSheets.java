package loftcoil.runner.show;

import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.Sheet;

/** The whole sheet of the learner's own design; its year takes about a second and is marched once for each design. */
final class WholeSheets {

    private final LearnerStore store;
    private Optional<Sheet> last = Optional.empty();

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
}

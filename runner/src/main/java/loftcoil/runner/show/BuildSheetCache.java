package loftcoil.runner.show;

import java.util.Optional;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.design.Design;

/** The build sheet of the learner's own design; worked out once for each design, since its years take seconds. */
final class BuildSheetCache {

    private final LearnerStore store;
    private Optional<BuildSheet> last = Optional.empty();

    BuildSheetCache(LearnerStore store) {
        this.store = store;
    }

    synchronized BuildSheet sheet() {
        Design design = store.design();
        BuildSheet sheet = last.filter(made -> made.design().equals(design)).orElseGet(() -> BuildSheet.of(design));
        last = Optional.of(sheet);
        return sheet;
    }
}

package loftcoil.runner.show;

import java.util.Optional;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.sheet.Sheet;

/** The build sheet of the learner's own design; worked out once for each design, since its years take seconds. */
final class BuildSheetCache {

    private final WholeSheets sheets;
    private Optional<BuildSheet> last = Optional.empty();

    BuildSheetCache(WholeSheets sheets) {
        this.sheets = sheets;
    }

    synchronized BuildSheet sheet() {
        Sheet whole = sheets.sheet();
        BuildSheet sheet = last.filter(made -> made.sheet().equals(whole)).orElseGet(() -> BuildSheet.of(whole));
        last = Optional.of(sheet);
        return sheet;
    }
}

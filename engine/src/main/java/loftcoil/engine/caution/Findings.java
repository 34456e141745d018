package loftcoil.engine.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Collects what the rules find in one design. */
final class Findings {

    private final List<Caution> cautions = new ArrayList<>();
    private final List<Ask> asks = new ArrayList<>();

    void caution(String code, String form, Object... figures) {
        cautions.add(CautionKind.of(code).raised(String.format(Locale.ROOT, form, figures)));
    }

    void ask(String field, String text) {
        asks.add(new Ask(field, text));
    }

    CautionReport report() {
        return new CautionReport(cautions, asks);
    }
}

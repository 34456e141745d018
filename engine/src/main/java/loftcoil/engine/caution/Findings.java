package loftcoil.engine.caution;

import java.util.ArrayList;
import java.util.List;

/** Collects what the rules find in one design. */
final class Findings {

    private final List<Caution> cautions = new ArrayList<>();
    private final List<Ask> asks = new ArrayList<>();

    /** A danger whose kind has one sentence; the filling is that of {@link loftcoil.engine.words.Sentences#say}. */
    void caution(CautionKind kind, Object... filling) {
        cautions.add(kind.raised(filling));
    }

    /** A danger whose kind has several sentences. */
    void cautionAs(CautionKind kind, String which, Object... filling) {
        cautions.add(kind.raisedAs(which, filling));
    }

    /** What is milder than its kind, for it only may come to that. */
    void milderAs(CautionKind kind, Severity severity, String which, Object... filling) {
        cautions.add(kind.raisedAs(which, filling).milder(severity));
    }

    /** A question; its sentence has the path of the field behind {@code ask}. */
    void ask(String field, Object... filling) {
        asks.add(new Ask(field, CautionKind.SENTENCES.say("ask." + field, filling)));
    }

    CautionReport report() {
        return new CautionReport(cautions, asks);
    }
}

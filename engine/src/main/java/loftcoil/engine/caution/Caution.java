package loftcoil.engine.caution;

import java.util.Comparator;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Units;

/**
 * One caution raised by a design.
 *
 * @param kind what it is about
 * @param severity how bad it can get: as its kind can, or milder where that only may come
 * @param words plain words with the figure that raised it, and who decides
 */
public record Caution(CautionKind kind, Severity severity, MeasuredText words) {

    /** The gravest first; of those alike the one that can hurt soonest, then the one whose kind is listed first. */
    public static final Comparator<Caution> GRAVEST_FIRST = Comparator.comparing(Caution::severity)
            .thenComparing((Caution caution) -> caution.kind().onset())
            .thenComparing(Caution::kind);

    /** Code of our own, such as {@code LC-BOIL}. */
    public String code() {
        return kind.code();
    }

    /** The same, less bad. */
    Caution milder(Severity milder) {
        return new Caution(kind, milder, words);
    }

    /** The words in metric units. */
    public String text() {
        return text(Units.METRIC);
    }

    /** The words in those units. */
    public String text(Units units) {
        return units.words(words);
    }

    /** Published source, or "common practice, no source", in metric units. */
    public String source() {
        return source(Units.METRIC);
    }

    /** The same in those units. */
    public String source(Units units) {
        return units.words(kind.source());
    }
}

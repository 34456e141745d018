package loftcoil.runner.handout;

import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Units;

/** Writes measures, and words with measures in them, in the units of the reader. */
final class MeasureText {

    /** Keeps a number and its unit on one line. */
    private static final char TIED = '\u00a0';

    private static final Pattern MARKS = Pattern.compile("[\\\\`*_\\[\\]<>&!~|#]");

    private final Units units;

    MeasureText(Units units) {
        this.units = units;
    }

    Units units() {
        return units;
    }

    /** A unit of so many letters is a phrase, and may go on in the next line. */
    private static final int PHRASE = 15;

    /** The measure with its unit. */
    String of(Measure measure) {
        String written = units.of(measure);
        return unit(measure.kind()).length() < PHRASE
                ? written.replace(' ', TIED)
                : written.replaceFirst(" ", String.valueOf(TIED));
    }

    /** The number alone, for a column whose heading has the unit; feet and inches keep theirs. */
    String number(Measure measure) {
        return units.number(measure);
    }

    /** What stands behind the number; empty where nothing does. */
    String unit(MeasureKind kind) {
        return units.unit(kind);
    }

    /** Unit to name over a column that is filled in by hand; empty where there is none. */
    String unitToWrite(MeasureKind kind) {
        return units == Units.US && kind == MeasureKind.LENGTH_M ? "ft, in" : units.typedUnit(kind);
    }

    /** From the one to the other; once where both read alike. */
    String between(Measure low, Measure high) {
        String from = of(low);
        String to = of(high);
        if (from.equals(to)) {
            return to;
        }
        return (unit(low.kind()).isEmpty() ? from : number(low)) + " to " + to;
    }

    /** The words as CommonMark, measures written out. */
    String words(MeasuredText words) {
        return words.parts().stream().map(this::part).collect(Collectors.joining());
    }

    private String part(MeasuredText.Part part) {
        if (part instanceof Measure measure) {
            return of(measure);
        }
        return part instanceof MeasuredText.Name name ? escaped(name.name()) : part.metric();
    }

    /** A name as CommonMark: what would be a mark in it stands for itself. */
    private static String escaped(String name) {
        return MARKS.matcher(name).replaceAll("\\\\$0");
    }
}

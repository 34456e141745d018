package loftcoil.runner.handout;

import java.util.Locale;
import java.util.Optional;
import loftcoil.engine.words.Units;

/** What it is printed on. */
public enum Paper {
    /** ISO 216 A4, 210 mm by 297 mm. */
    A4("A4", 210, 297),
    /** US Letter (ANSI/ASME Y14.1 size A), 8.5 in by 11 in. */
    LETTER("letter", 215.9, 279.4);

    private final String css;
    private final double widthMm;
    private final double heightMm;

    Paper(String css, double widthMm, double heightMm) {
        this.css = css;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** The paper of that name, whatever the case of its letters. */
    public static Optional<Paper> named(String name) {
        for (Paper paper : values()) {
            if (paper.name().equals(name.toUpperCase(Locale.ROOT))) {
                return Optional.of(paper);
            }
        }
        return Optional.empty();
    }

    /** What is sold where those units are used. */
    public static Paper usual(Units units) {
        return units == Units.US ? LETTER : A4;
    }

    /** Its name in a style sheet. */
    String css() {
        return css;
    }

    /** Width upright, mm. */
    public double widthMm() {
        return widthMm;
    }

    /** Height upright, mm. */
    public double heightMm() {
        return heightMm;
    }
}

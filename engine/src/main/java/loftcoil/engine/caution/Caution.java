package loftcoil.engine.caution;

/**
 * One caution raised by a design.
 *
 * @param code code of our own, such as {@code LC-BOIL}
 * @param severity how bad it can get
 * @param text plain words with the figure that raised it, and who decides
 * @param source published source, or "common practice, no source"
 */
public record Caution(String code, Severity severity, String text, String source) {}

package loftcoil.engine.fault;

/**
 * One thing wrong with what was given, in a design, a lesson, an exercise or a command: where, what, and what would have been
 * right.
 *
 * @param path where it stands, outermost first, such as {@code tank.waterlineM}, {@code coldLegs[1].riseM} or
 *     {@code lessons/02-tank-above.md:12:1}
 * @param given the value as it was given, in words or digits; "missing" where there was none
 * @param allowed what is allowed there, with its unit
 * @param why one plain sentence for the person who wrote it; may be empty where the other parts say it all
 */
public record Fault(String path, String given, String allowed, String why) {

    private static final int LONGEST = 200;

    /**
     * The same fault, with what its place stands in told too.
     *
     * @param around a file or part, as the person who wrote it knows it
     */
    public Fault in(String around) {
        return new Fault(path.isEmpty() ? around : around + ": " + path, given, allowed, why);
    }

    /** The fault on one line, the path first. */
    public String line() {
        return line(placed(path));
    }

    /**
     * The same, its place told otherwise than by the path.
     *
     * @param place what is told of where it stands
     */
    public String line(String place) {
        String reason = why.isEmpty() ? "" : " (" + why + ")";
        return place + ": " + PlainText.cut(given, LONGEST) + "; allowed: " + allowed + reason;
    }

    /**
     * A path as a line shows it: its names stand in files and may hold anything.
     *
     * @param path where something stands, outermost first
     * @return without control characters, no longer than a line can hold, and never empty
     */
    public static String placed(String path) {
        String plain = PlainText.cut(path, LONGEST);
        return plain.isBlank() || plain.endsWith(".") ? plain + "\"\"" : plain;
    }
}

package loftcoil.engine.fault;

/**
 * One thing wrong with what was given: where, what, and what would have been right.
 *
 * @param path where it stands, outermost first, such as {@code tank.waterlineM} or {@code coldLegs[1].riseM}
 * @param given the value as it was given, in words or digits; "missing" where there was none
 * @param allowed what is allowed there, with its unit
 * @param why one plain sentence for the person who wrote it; may be empty where the other parts say it all
 */
public record Fault(String path, String given, String allowed, String why) {

    /** The fault on one line, the path first. */
    public String line() {
        String reason = why.isEmpty() ? "" : " (" + why + ")";
        return path + ": " + given + " is not allowed; allowed: " + allowed + reason;
    }
}

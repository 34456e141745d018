package loftcoil.runner.show;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.check.AnswerText;
import org.jspecify.annotations.Nullable;

/** Angles as maps and builders write them: 40°, 40 degrees, 41.3 S, 146° 45' E, and a direction of the compass in letters. */
final class BearingText {

    /** The unit that a field of a design has for an angle. */
    static final String UNIT = "degrees";

    /** Clockwise from north, a sixteenth of the round apart. */
    private static final List<String> COMPASS =
            List.of("n", "nne", "ne", "ene", "e", "ese", "se", "sse", "s", "ssw", "sw", "wsw", "w", "wnw", "nw", "nnw");

    private static final double POINT_DEG = 22.5;

    private static final Pattern FACING =
            Pattern.compile("^(?:(?:facing|faces|looking|towards?|to|due|the|roughly|about)\\s+)+(?=[nesw])");

    private static final Map<String, String> LETTERS = Map.of("north", "n", "east", "e", "south", "s", "west", "w");

    private static final Pattern HALF =
            Pattern.compile("(?i)^(?:([NSEW])\\s+)?(.*?)\\s*([NSEW]|north|south|east|west)?$");

    private static final Pattern SIXTIETHS = Pattern.compile(
            "(?i)(\\d{1,3})\\s*(?:°|degrees?|degs?\\.?|d)?(?<=[°.\\p{L}\\s])\\s*(\\d{1,2}(?:[.,]\\d+)?)\\s*(?:['’′]|minutes?|mins?\\.?)?"
                    + "(?:\\s*(?<=['’′.\\p{L}\\s])(\\d{1,2}(?:[.,]\\d+)?)\\s*(?:[\"”″]|''|seconds?|secs?\\.?)?)?");

    private static final Pattern WORD = Pattern.compile("(?i)\\s*(?:°|degrees?|degs?\\.?)$");

    private static final double SIXTY = 60;

    private BearingText() {}

    /** A direction of the compass, clockwise from north; empty where the text is none in letters. */
    static Optional<Double> compass(String typed) {
        String plain = typed.strip().toLowerCase(Locale.ROOT);
        for (Map.Entry<String, String> word : LETTERS.entrySet()) {
            plain = plain.replace(word.getKey(), word.getValue());
        }
        int point = COMPASS.indexOf(FACING.matcher(plain).replaceFirst("").replaceAll("[\\s-]", ""));
        return point < 0 ? Optional.empty() : Optional.of(point * POINT_DEG);
    }

    /**
     * An angle in degrees. Of a latitude or longitude south and west are less than 0; of any other a letter alone is a direction.
     *
     * @param typed as typed
     * @param path where it stands
     * @throws RefusedException where no angle can be made out
     */
    static double degrees(String typed, String path) {
        boolean place = path.endsWith("latitudeDeg") || path.endsWith("longitudeDeg");
        if (!place) {
            Optional<Double> compass = compass(typed);
            return compass.isPresent() ? compass.get() : number(typed, path, typed);
        }
        Matcher half = HALF.matcher(typed.strip());
        if (!half.matches()) {
            return number(typed, path, typed);
        }
        String letters = Optional.ofNullable(half.group(1)).orElse("")
                + Optional.ofNullable(half.group(3)).orElse("");
        String side = letters.isEmpty() ? "" : letters.substring(0, 1).toLowerCase(Locale.ROOT);
        boolean fits = side.isEmpty() || (path.endsWith("latitudeDeg") ? "ns" : "ew").contains(side);
        double size = number(half.group(2), path, typed);
        if (!fits || (!side.isEmpty() && size < 0)) {
            throw refused(path, typed, path.endsWith("latitudeDeg") ? "north or south" : "east or west");
        }
        return side.equals("s") || side.equals("w") ? -size : size;
    }

    private static double number(String text, String path, String typed) {
        Matcher sixtieths = SIXTIETHS.matcher(text.strip());
        if (sixtieths.matches()) {
            return Double.parseDouble(sixtieths.group(1))
                    + part(sixtieths.group(2)) / SIXTY
                    + part(sixtieths.group(3)) / (SIXTY * SIXTY);
        }
        AnswerText read = AnswerText.read(WORD.matcher(text.strip()).replaceFirst(""));
        if (read instanceof AnswerText.Amount amount && amount.unit().isEmpty()) {
            return amount.value();
        }
        throw refused(path, typed, read instanceof AnswerText.NotRead not ? not.words() : "the unit does not fit");
    }

    private static double part(@Nullable String digits) {
        return digits == null ? 0 : Double.parseDouble(digits.replace(',', '.'));
    }

    private static RefusedException refused(String path, String typed, String why) {
        return new RefusedException(
                List.of(new Fault(path, "“" + typed.strip() + "”", "a number in degrees, such as 40 or 41.3 S", why)));
    }
}

package loftcoil.runner.unit;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** Brings the many spellings of a unit to one, before it is taken apart. */
final class UnitSpelling {

    private static final Pattern WATER_COLUMN =
            Pattern.compile("(?i)\\b(mm|cm|m|(?:milli|centi)?met(?:re|er)s?|in|inch|inches|ft|foot|feet)\\.?\\s*"
                    + "(?:H2O|H₂O|W\\.?C\\.?|W\\.?G\\.?|(?:of\\s+)?water(?:\\s+(?:column|gauge))?)(?![\\p{L}\\d])");
    private static final Pattern DEGREES =
            Pattern.compile("(?i)(?:°|º|˚|\\bdegrees?|\\bdeg\\.?)\\s*(?=[CFK]|celsius|centigrade|fahrenheit)");
    /** W/mK and J/kgK: the degree is often written close to what stands before it. */
    private static final Pattern CLOSE_DEGREE = Pattern.compile("(?<=/[ (]?(?:m|kg|g|L))(?=(?:K|°C|°F)\\b)");

    private static final Pattern UK_GALLON =
            Pattern.compile("(?i)\\b(?:imp(?:erial)?|uk|british)\\.?\\s*(gal|pint|quart)(?:lons?|s)?\\b\\.?");
    private static final Pattern US_GALLON =
            Pattern.compile("(?i)\\bu\\.?s\\.?(?:\\s*liquid)?\\s*(gal|pint|quart)(?:lons?|s)?\\b\\.?");
    /** A pound on an area is a pressure here: nothing in the course is measured in mass on an area. */
    private static final Pattern PSI =
            Pattern.compile("(?i)\\b(?:pounds?|lbs?|lbf)\\.?(?:[ -]?force)?\\s*(?:per\\s|/)\\s*"
                    + "(?:(?:square\\s+|sq\\.?\\s*)in(?:ch|ches)?|in(?:ch|ches)?\\s*(?:²|\\^?2))(?![\\p{L}\\d])");

    private static final Pattern PER_CENT = Pattern.compile("(?i)\\bper\\s+cent\\b");
    private static final Pattern HYPHEN = Pattern.compile("(?<=\\p{L})-(?=\\p{L})");
    /** A degree of which nobody says which: that of the other units beside it. */
    private static final Pattern PER_DEGREE = Pattern.compile("(?i)/\\s*(?:degrees?|deg)(?![\\p{L}])");

    private static final Pattern PER = Pattern.compile("(?i)(?<![\\p{L}])(?:per|a|an|each)(?=\\s)");
    private static final Pattern SQUARE = Pattern.compile("(?i)\\b(?:square\\s+|sq\\b\\.?\\s*)(\\p{L}+)");
    private static final Pattern CUBIC = Pattern.compile("(?i)\\b(?:cubic\\s+|cu\\b\\.?\\s*)(\\p{L}+)");
    private static final Map<Character, Character> RAISED = Map.ofEntries(
            Map.entry('⁰', '0'),
            Map.entry('¹', '1'),
            Map.entry('²', '2'),
            Map.entry('³', '3'),
            Map.entry('⁴', '4'),
            Map.entry('⁻', '-'));

    private UnitSpelling() {}

    static String plain(String text) {
        String plain = HYPHEN.matcher(text).replaceAll(" ").replaceFirst("(?i)^\\s*stacked\\s+", "");
        plain = WATER_COLUMN.matcher(plain).replaceAll(column -> shortMetre(column.group(1)) + "wc");
        plain = PSI.matcher(plain).replaceAll("psi");
        plain = PER_CENT.matcher(plain).replaceAll("%");
        plain = DEGREES.matcher(plain).replaceAll("°");
        plain = CLOSE_DEGREE.matcher(plain).replaceAll(" ");
        plain = UK_GALLON.matcher(plain).replaceAll("imp$1");
        plain = US_GALLON.matcher(plain).replaceAll("$1");
        plain = PER.matcher(plain).replaceAll("/");
        plain = PER_DEGREE
                .matcher(plain)
                .replaceAll(plain.toLowerCase(Locale.ROOT).contains("btu") ? "/°F" : "/K");
        plain = SQUARE.matcher(plain).replaceAll("$1^2");
        plain = CUBIC.matcher(plain).replaceAll("$1^3");
        StringBuilder lowered = new StringBuilder();
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            lowered.append(RAISED.getOrDefault(c, c).charValue());
        }
        return lowered.toString().strip();
    }

    private static String shortMetre(String length) {
        return length.toLowerCase(Locale.ROOT)
                .replaceFirst("^(m)illimet.*|^(c)entimet.*", "$1$2m")
                .replaceFirst("^met.*", "m");
    }
}

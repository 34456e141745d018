package loftcoil.runner.check;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.runner.unit.UnitText;
import loftcoil.runner.unit.WrittenUnit;
import org.jspecify.annotations.Nullable;

/**
 * Numbers and measures as people say them, in figures: twelve feet, four hundred, a foot and a half, three quarters of an inch, six
 * foot four. What is no number stays as it is.
 */
public final class NumberWords {

    private static final List<String> TO_NINETEEN = List.of(
            "zero",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen");
    private static final List<String> TENS =
            List.of("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety");
    private static final Map<String, Integer> MANY = Map.of("hundred", 100, "thousand", 1000, "dozen", 12);
    private static final String NAME = "(?:" + String.join("|", TO_NINETEEN) + "|" + String.join("|", TENS) + "|"
            + String.join("|", MANY.keySet()) + ")";
    private static final String END = "(?![\\p{L}\\d])";
    private static final Pattern CARDINAL = Pattern.compile("(?i)(?<![\\p{L}\\d])(?:an? (?=(?:hundred|thousand|dozen)"
            + END + "))?" + NAME + "(?:(?:(?<=hundred|thousand) and |[ -])" + NAME + ")*" + END);
    private static final Pattern TWO = Pattern.compile("(?i)^(?:both|(?:an? )?(?:couple|pair))(?: of)?" + END);
    private static final Pattern HALF_DOZEN = Pattern.compile("(?i)^half(?: a|-)? ?12" + END);

    private static final List<String> PARTS = List.of("half", "third", "quarter", "fourth", "eighth", "sixteenth");
    private static final List<Integer> PART_OF = List.of(2, 3, 4, 4, 8, 16);
    private static final String PART = "(half|halves|" + String.join("s?|", PARTS.subList(1, PARTS.size())) + "s?)";

    /** Two and a half; two and three quarters. */
    private static final Pattern WITH_PART =
            Pattern.compile("(?i)(?<![\\d.,/])(\\d+) and (?:an?|(\\d{1,2}))[ -]" + PART + END);

    /** Half an inch; three quarters of an inch; a half inch. */
    private static final Pattern PART_OF_ONE = Pattern.compile("(?i)^(?:an? |(\\d{1,2})[ -])?" + PART
            + "(?: of)?(?: an?)?(?! (?:past|to|till|after|before)\\b)(?=[ -]\\p{L}|$)");

    /** A foot and a half; three feet and a quarter. */
    private static final Pattern PART_BEHIND =
            Pattern.compile("(?i)^(\\d+|an?) ?(\\p{L}+) and (?:an?|(\\d{1,2}))[ -]" + PART + "$");

    /** Of an inch, behind a fraction in figures. */
    private static final Pattern OF_ONE =
            Pattern.compile("(?i)^([\\d /-]*/\\d+|[\\d ]*[½¼¾⅓⅔⅛⅜⅝⅞])(?: of)? an? (?=\\p{L})");

    private static final Pattern ONE = Pattern.compile("(?i)^an? (\\p{L}+)");
    private static final Pattern AND =
            Pattern.compile("(?i)(\\d['’′]|\\d ?(\\p{L}+)) and (\\d[\\d ./-]*?) ?(\\p{L}+|[\"”″])$");
    private static final int MANY_FROM = 100;

    private NumberWords() {}

    /** The text with its numbers in figures. */
    public static String inFigures(String text) {
        String plain = CARDINAL.matcher(text).replaceAll(NumberWords::cardinal);
        plain = HALF_DOZEN.matcher(TWO.matcher(plain).replaceFirst("2")).replaceFirst("6");
        plain = WITH_PART.matcher(plain).replaceAll(part -> part.group(1) + " " + share(part.group(2), part.group(3)));
        plain = PART_BEHIND.matcher(plain).replaceFirst(NumberWords::partBehind);
        plain = PART_OF_ONE.matcher(plain).replaceFirst(part -> share(part.group(1), part.group(2)));
        plain = OF_ONE.matcher(plain).replaceFirst("$1 ");
        plain = ONE.matcher(plain).replaceFirst(one -> isUnit(one.group(1)) ? "1 $1" : "$0");
        return together(plain);
    }

    private static String cardinal(MatchResult words) {
        OptionalLong value = value(words.group().toLowerCase(Locale.ROOT).replaceFirst("^an? ", "one "));
        return value.isPresent() ? Long.toString(value.getAsLong()) : Matcher.quoteReplacement(words.group());
    }

    /** What the words come to; empty where nobody says a number so. */
    private static OptionalLong value(String words) {
        long whole = 0;
        long group = 0;
        long last = Long.MAX_VALUE;
        for (String word : words.replace('-', ' ').replace(" and ", " ").split(" ", -1)) {
            int small = TO_NINETEEN.indexOf(word);
            int ten = TENS.indexOf(word);
            long one = small >= 0 ? small : ten >= 0 ? (ten + 2) * 10L : MANY.getOrDefault(word, 0);
            boolean many = MANY.containsKey(word);
            if (many
                    ? last >= MANY_FROM && last != Long.MAX_VALUE
                    : last < 20 || one >= Math.min(last, last < MANY_FROM ? 10 : last)) {
                return OptionalLong.empty();
            }
            if (many) {
                group = Math.max(1, group) * one;
                if (one > MANY_FROM) {
                    whole += group;
                    group = 0;
                }
            } else {
                group += one;
            }
            last = one;
        }
        return OptionalLong.of(whole + group);
    }

    private static String share(@Nullable String above, String part) {
        String one = part.toLowerCase(Locale.ROOT).replace("halves", "half").replaceFirst("s$", "");
        return (above == null ? "1" : above) + "/" + PART_OF.get(PARTS.indexOf(one));
    }

    private static String partBehind(MatchResult found) {
        boolean one = found.group(1).toLowerCase(Locale.ROOT).startsWith("a");
        return isUnit(found.group(2))
                ? (one ? "1" : found.group(1)) + " " + share(found.group(3), found.group(4)) + " " + found.group(2)
                : Matcher.quoteReplacement(found.group());
    }

    /** Two feet and three inches without the word between; two of one unit stay apart, for they may be a range. */
    private static String together(String plain) {
        Matcher and = AND.matcher(plain);
        if (!and.find() || !isUnit(and.group(4)) || (and.group(2) != null && !smaller(and.group(4), and.group(2)))) {
            return plain;
        }
        return plain.substring(0, and.end(1)) + " " + plain.substring(and.start(3));
    }

    private static boolean smaller(String unit, String than) {
        return UnitText.read(than)
                .flatMap(large -> UnitText.read(unit).filter(small -> small.fits(large) && small.to(large, 1) < 1))
                .isPresent();
    }

    private static boolean isUnit(String word) {
        return !word.isBlank()
                && UnitText.read(word)
                        .map(WrittenUnit::shown)
                        .filter(any -> !any.isEmpty())
                        .isPresent();
    }
}

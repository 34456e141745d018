package loftcoil.runner.session.words;

import static loftcoil.runner.session.words.Rule.key;
import static loftcoil.runner.session.words.Rule.message;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The table of rules, the more particular before the more general. */
public final class PlainWords {

    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<![\\w.])(\\d+),(\\d+)(?![\\w.])");

    private static final String TOO_LONG = "This is too long a piece for Java, which takes some 65,000 bytes of code at"
            + " once. Put long lists of numbers into several smaller arrays, each in a statement of its own.";

    private static final String NO_RETURN =
            "This method promises a value, but can end without a return. Write" + " return …; on every way to its end.";

    private static final List<Rule> RULES = List.of(
            Slips::openingQuote,
            PlainWords::decimalComma,
            Slips::twoPoints,
            Slips::unit,
            Slips::braceTooMany,
            Slips::printing,
            Slips::numberInWords,
            PlainWords::singleEquals,
            key(
                    "too.deep",
                    "This is too deeply nested for Java. Break it up: give its parts names of their own, and put these"
                            + " together."),
            key(
                    "limit.string",
                    "This is too long a text for Java: one text in quotes may have 65,535 bytes. Break it into"
                            + " several, each with a name of its own."),
            key("limit", TOO_LONG),
            key(
                    "unclosed.str.lit",
                    "This text has no closing quote \". A text starts and ends with \" on the same line."),
            key(
                    "unclosed.char.lit empty.char.lit",
                    "Text stands between double quotes \"…\"; single quotes hold one letter only."),
            key("unclosed.comment", "This comment has no end: write */ after it."),
            key(
                    "illegal.char",
                    "illegal character: .(.+).$",
                    "The character {1} is not part of Java. Text copied from a page often has curly quotes, long"
                            + " dashes or ×: use \", - and *."),
            message("^';' expected$", "A semicolon ; is missing here: each statement ends with one."),
            message("^<identifier> expected$", "A name is missing here."),
            message(
                    "^class, interface, enum, or record expected$",
                    "There is a closing brace } too many here, or the opening one is missing."),
            PlainWords::missingMark,
            UnknownName::say,
            key(
                    "cant.apply.symbols",
                    "no suitable (?:method|constructor) found for (\\w+)",
                    "{1} does not take what is given here. Look at what stands between its brackets."),
            key(
                    "cant.apply.symbol",
                    "(?:method|constructor) (\\w+) in .*required:\\s+([^\\n]+).*found:\\s+([^\\n]+)",
                    "{1} takes ({2}), but is given ({3})."),
            message(
                    "possible lossy conversion from (\\w+) to int",
                    "A value of type {1} does not fit into int without losing part of it. Use {1} for the variable, or"
                            + " (int) Math.round(…) where a whole number is meant."),
            message(
                    "possible lossy conversion from (\\w+) to (\\w+)",
                    "A value of type {1} does not fit into {2} without losing part of it. Use {1} for the variable."),
            message(
                    "incompatible types: ([^\\n]+) cannot be converted to ([^\\n]+)",
                    "This is of type {1}, but {2} is wanted here."),
            message(
                    "unexpected return value",
                    "This method is declared void, so it cannot return a value. Put its type in place of void."),
            key(
                    "illegal.initializer.for.type",
                    "Values in braces { } make an array; this variable is not one. Add [] to its type."),
            key("cant.deref", "A plain number has no methods: nothing can follow a dot after it."),
            key("array.req.but.found", "Square brackets [ ] pick from an array, and this is not an array."),
            key("missing.ret.stmt", NO_RETURN),
            key("prob.found.req", "missing return value", NO_RETURN),
            key(
                    "unreachable.stmt",
                    "This line can never run: what stands before it always returns, breaks or loops for ever."),
            key(
                    "var.might.not.have.been.initialized",
                    "variable (\\w+) might not",
                    "{1} may have no value yet here. Give it one where it is declared, such as {1} = 0;"),
            key(
                    "not.stmt",
                    "This line does nothing with its value. Give it to a variable, print it, or check for a missing ="
                            + " or ( ) before."),
            key(
                    "already.defined",
                    "(?:variable|method|class) (\\S+) is already",
                    "{1} is declared already in the same place. Leave its type away to change it, or choose another"
                            + " name."),
            key(
                    "operator.cant.be.applied.1",
                    "binary operator '([^\\n]+)'.*first type:\\s+(\\S+).*second type:\\s+(\\S+)",
                    "{1} does not work between {2} and {3}."),
            key("operator.cant.be.applied", "type (\\S+)$", "This operator does not work on a {1}."),
            key("incomparable.types", "These two are of different types and can never be the same."),
            key(
                    "int.number.too.large",
                    "This whole number is too large for int. Write it with .0 at its end to make it a double."),
            key(
                    "malformed.fp.lit illegal.underscore invalid.hex.number",
                    "This number is written wrongly. Numbers look like 12, 0.75 or 1.5e-6."),
            key(
                    "cant.assign.val.to.var cant.assign.val.to.final.var",
                    "This value is final: it cannot be changed once it is set."),
            key(
                    "local.variables.referenced.from cant.ref.non.effectively.final.var",
                    "A variable that changes cannot be used inside ->. Copy it to a new variable first."),
            key("unexpected.type", "Only a variable can stand to the left of =."),
            key(
                    "unreported.exception",
                    "exception ([\\w.]+)",
                    "This can fail with {1}, and Java wants to know what then: put it in try { … } catch (Exception e)"
                            + " { … }."),
            key(
                    "non-static.cant.be.ref",
                    "This belongs to one object, not to the type: name the object before the dot, such as design."
                            + " instead of Design."),
            key(
                    "illegal.start.of.expr",
                    "A value is missing just before here, or a bracket or brace is left open before."),
            key(
                    "illegal.start.of.type illegal.start.of.stmt",
                    "A statement cannot begin like this. Look for a missing brace, bracket or semicolon before."),
            key("else.without.if", "This else has no if before it. Look for a stray semicolon or brace."),
            key("premature.eof", "The snippet ends too early: a closing brace } or bracket is missing."),
            key("orphaned", "This case stands outside any switch."));

    private PlainWords() {}

    /** Plain words for a finding; the compiler's first line where no rule knows better. */
    public static String of(Finding finding) {
        return RULES.stream()
                .flatMap(rule -> rule.say(finding).stream())
                .findFirst()
                .orElseGet(() -> finding.message().lines().findFirst().orElse("this cannot be read as Java"));
    }

    /** A comma where Java has a point: 1,5 for 1.5. In a call a comma may be right, so only the number is offered. */
    private static Optional<String> decimalComma(Finding finding) {
        Matcher number = DECIMAL_COMMA.matcher(finding.line());
        return finding.isAny(
                                "expected",
                                "expected2",
                                "expected3",
                                "illegal.start.of.expr",
                                "not.stmt",
                                "cant.apply.symbol",
                                "cant.apply.symbols")
                        && number.find()
                ? Optional.of("Java writes decimals with a point: " + number.group(1) + "." + number.group(2) + ", not "
                        + number.group() + ".")
                : Optional.empty();
    }

    /** One equals sign where two are meant. */
    private static Optional<String> singleEquals(Finding finding) {
        boolean condition = finding.line().matches(".*\\b(if|while)\\s*\\(.*[^=<>!]=[^=].*");
        boolean noQuestion = finding.message().contains(" cannot be converted to boolean");
        return condition && (noQuestion || finding.isAny("unexpected.type"))
                ? Optional.of("= gives a value; to ask whether two values are the same, write ==.")
                : Optional.empty();
    }

    /** A bracket or another mark that should stand there. */
    private static Optional<String> missingMark(Finding finding) {
        String wanted = finding.inMessage("^(.*) expected$");
        String plain = wanted.replace("'", "").replace("<identifier>", "a name");
        return wanted.isEmpty() ? Optional.empty() : Optional.of("Here " + plain + " is missing.");
    }
}

package loftcoil.runner.session.words;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A comma where Java has a point: 1,5 for 1.5. */
final class DecimalComma implements PlainRule {

    private static final Pattern COMMA = Pattern.compile("(?<![\\w.])(\\d+),(\\d+)(?![\\w.])");

    @Override
    public Optional<String> say(Finding finding) {
        boolean misread = finding.is("expected")
                || finding.is("expected2")
                || finding.is("expected3")
                || finding.is("illegal.start.of.expr")
                || finding.is("not.stmt")
                || finding.is("cant.apply.symbol")
                || finding.is("cant.apply.symbols");
        Matcher matcher = COMMA.matcher(finding.line());
        if (!misread || !matcher.find()) {
            return Optional.empty();
        }
        // In a call a comma may be right, so only the number itself is offered there.
        return Optional.of("Java writes decimals with a point: " + matcher.group(1) + "." + matcher.group(2) + ", not "
                + matcher.group() + ".");
    }
}

package loftcoil.runner.session.words;

import java.util.List;
import java.util.Optional;

/** The table of rules, the more particular before the more general. */
public final class PlainWords {

    private static final List<PlainRule> RULES = List.of(
            new DecimalComma(),
            new SingleEquals(),
            new MissingQuote(),
            new StrangeCharacter(),
            new MissingMark(),
            new UnknownName(),
            new WrongArguments(),
            new LossyNumber(),
            new WrongType(),
            new MissingReturn(),
            new NeverReached(),
            new NeverSet(),
            new NotAStatement(),
            new AlreadyThere(),
            new WrongOperands(),
            new NumberWritten(),
            new CannotChange(),
            new MustCatch(),
            new NotStatic(),
            new BadStart());

    private PlainWords() {}

    /** Plain words for a finding; the compiler's first line where no rule knows better. */
    public static String of(Finding finding) {
        for (PlainRule rule : RULES) {
            Optional<String> words = rule.say(finding);
            if (words.isPresent()) {
                return words.get();
            }
        }
        return finding.message().lines().findFirst().orElse("this cannot be read as Java");
    }
}

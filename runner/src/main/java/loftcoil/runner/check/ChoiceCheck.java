package loftcoil.runner.check;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.runner.exercise.Choice;

/** Checks a choice. */
final class ChoiceCheck {

    private static final Pattern NUMBER = Pattern.compile("(\\d{1,3})[.)]?");

    private ChoiceCheck() {}

    static Verdict verdict(Choice choice, String typed, boolean judged) {
        List<String> texts = choice.options().stream().map(Choice.Option::text).toList();
        OptionalInt index = find(texts, typed);
        if (index.isEmpty()) {
            return unreadable(texts, typed);
        }
        Choice.Option option = choice.options().get(index.getAsInt());
        Verdict.Taken taken = Verdict.Taken.text(option.text());
        if (!judged) {
            return new Verdict.Noted(taken);
        }
        return option.right()
                ? new Verdict.Right(0, taken, option.say())
                : new Verdict.Wrong(0, taken, option.say(), "choice " + option.number());
    }

    /** Which option is meant: its own text first, then its number from 1; from 0 here. */
    static OptionalInt find(List<String> texts, String typed) {
        for (int i = 0; i < texts.size(); i++) {
            if (plain(texts.get(i)).equals(plain(typed))) {
                return OptionalInt.of(i);
            }
        }
        Matcher number = NUMBER.matcher(typed.strip());
        if (number.matches()) {
            int index = Integer.parseInt(number.group(1)) - 1;
            return index >= 0 && index < texts.size() ? OptionalInt.of(index) : OptionalInt.empty();
        }
        return OptionalInt.empty();
    }

    static Verdict.Unreadable unreadable(List<String> texts, String typed) {
        String what = typed.isBlank() ? "Nothing was chosen." : "“" + cut(typed.strip()) + "” is none of the choices.";
        return new Verdict.Unreadable(what + " Give the number of one, 1 to " + texts.size() + ".");
    }

    static String cut(String text) {
        return text.length() > 60 ? text.substring(0, 60) + "…" : text;
    }

    private static String plain(String text) {
        return text.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}

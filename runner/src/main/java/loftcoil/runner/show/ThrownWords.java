package loftcoil.runner.show;

import java.util.stream.Collectors;
import loftcoil.engine.survey.FaultWords;
import loftcoil.runner.session.Outcome;

/** What Java threw, put so that somebody new to Java knows where to look. */
final class ThrownWords {

    private ThrownWords() {}

    static String of(Outcome.Threw threw) {
        String where = threw.line() > 0 ? "Line " + threw.line() + ": " : "";
        // The engine's refusals say all there is to say; the name of their class would only be in the way.
        if (threw.exception().equals("RefusedException")) {
            return where + "the engine refuses this."
                    + behind(threw.message().lines().map(ThrownWords::placed).collect(Collectors.joining("\n")));
        }
        if (threw.wantsTyping()) {
            return where + threw.message();
        }
        String plain = plain(threw.exception());
        return plain.isEmpty()
                ? where + "it broke off with " + threw.exception() + "." + behind(threw.message())
                : where + plain + "\nJava's own words: " + threw.exception()
                        + (threw.message().isEmpty() ? "" : ", " + threw.message());
    }

    /** A refusal's line begins with the name of a field, which a reader of the page has never seen. */
    private static String placed(String line) {
        int end = line.indexOf(": ");
        return end < 0 ? line : FaultWords.place(line.substring(0, end)) + line.substring(end);
    }

    private static String behind(String message) {
        return message.isEmpty() ? "" : "\n" + message;
    }

    private static String plain(String exception) {
        return switch (exception) {
            case "NoSuchElementException" ->
                "there is nothing here to take. Most often the loop has no flow, or no tube has that name.";
            case "ArithmeticException" -> "a whole number cannot be divided by zero.";
            case "ArrayIndexOutOfBoundsException", "IndexOutOfBoundsException" ->
                "there is no such place in the list. Counting begins at 0.";
            case "IllegalFormatConversionException",
                    "MissingFormatArgumentException",
                    "UnknownFormatConversionException" ->
                "the pattern does not fit what is printed. %.1f stands for a number with one decimal, %d for a whole"
                        + " number, %s for text, %% for a per cent sign; each needs one value behind the pattern.";
            case "NullPointerException" -> "a name is used here that holds nothing yet.";
            case "NumberFormatException" -> "this text does not read as a number.";
            case "StackOverflowError" -> "a method calls itself without an end.";
            default -> "";
        };
    }
}

package loftcoil.runner.terminal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.show.LearnerApp;
import loftcoil.runner.show.MendView;
import loftcoil.runner.show.Slider;
import loftcoil.runner.show.View;

/** A faulty system to mend in the terminal: changes are typed one by one, then it is judged. */
final class MendStep {

    private static final Set<String> COMMANDS =
            Set.of("q", "b", "w", "c", "d", "f", "g", "r", "n", "h", "t", "u", "o", "!", "?");

    private static final int DIGITS = 12;

    private final LearnerApp bench;
    private final Console console;
    private final String lessonId;
    private final View.Question question;
    private final Map<String, String> moved = new LinkedHashMap<>();
    private String read = "";
    private String cause = "";

    MendStep(LearnerApp bench, Console console, String lessonId, View.Question question) {
        this.bench = bench;
        this.console = console;
        this.lessonId = lessonId;
        this.question = question;
    }

    Move walk(Function<String, Optional<Move>> common) {
        console.head("Find the fault: " + question.label());
        console.say(PlainText.of(question.markdown(), console.width()));
        question.reply()
                .ifPresent(reply -> console.say("You answered before: " + reply.answer() + " - " + reply.words()));
        MendView now = bench.mend(lessonId, question.id(), "");
        now.picture().ifPresent(picture -> Wrap.lines(picture.says(), console.width())
                .forEach(console::say));
        show(now);
        while (true) {
            Optional<String> typed = console.ask(
                    now.levers().isEmpty()
                            ? "read and two numbers, cause and its number, or judge: "
                            : "number = value, judge, or back to put all back: ");
            if (typed.isEmpty()) {
                return new Move.Leave();
            }
            String line = typed.get().strip();
            if (line.isEmpty()) {
                return new Move.On();
            }
            if (COMMANDS.contains(line)) {
                Optional<Move> move = common.apply(line);
                if (move.isPresent()) {
                    return move.get();
                }
            } else if (now.levers().isEmpty()) {
                diagnose(line);
                now = bench.mend(lessonId, question.id(), text());
                if (!now.levers().isEmpty() && moveNothing()) {
                    return new Move.On();
                }
                show(now);
            } else if (done(line, now)) {
                return new Move.On();
            }
        }
    }

    /** Takes readings or names a cause, by the numbers shown; anything else is judged or refused. */
    private void diagnose(String line) {
        String word = line.toLowerCase(Locale.ROOT);
        if (word.equals("judge")) {
            ReplyText.say(console, bench.answer(lessonId, question.id(), text()));
        } else if (word.matches("read[\\s\\d,]+")) {
            read = "read = " + word.substring(4).replace(',', ' ').strip();
        } else if (word.matches("cause\\s+\\d{1,3}")) {
            cause = "cause = " + word.substring(5).strip();
        } else {
            console.warn("“" + line + "” is neither; type for example read 1 3, then cause 2, then judge.");
        }
    }

    /** Who has found that nothing is wrong, or wants to go on, need not move anything. */
    private boolean moveNothing() {
        return console.ask("Found. Enter goes on; m lets you mend it: ")
                .map(String::strip)
                .filter("m"::equalsIgnoreCase)
                .isEmpty();
    }

    private boolean done(String line, MendView start) {
        switch (line.toLowerCase(Locale.ROOT)) {
            case "judge" -> {
                return ReplyText.say(console, bench.answer(lessonId, question.id(), text()));
            }
            case "back" -> {
                moved.clear();
                show(bench.mend(lessonId, question.id(), ""));
            }
            default -> change(line, start);
        }
        return false;
    }

    private void change(String line, MendView start) {
        int sign = line.indexOf('=');
        String name = sign < 0 ? "" : line.substring(0, sign).strip();
        Optional<MendView.Lever> lever = find(start.levers(), name);
        if (lever.isEmpty()) {
            console.warn("“" + line + "” is no change; type for example 1 = "
                    + start.levers().get(0).shownFound() + ", with a number from 1 to "
                    + start.levers().size() + ".");
            return;
        }
        String change = lever.get().change();
        Optional<String> before = Optional.ofNullable(moved.get(change));
        moved.put(change, option(lever.get(), line.substring(sign + 1).strip()));
        MendView now = bench.mend(lessonId, question.id(), text());
        if (now.refused().isEmpty()) {
            show(now);
            return;
        }
        now.refused().forEach(words -> Wrap.lines(words, console.width()).forEach(console::warn));
        before.ifPresentOrElse(value -> moved.put(change, value), () -> moved.remove(change));
    }

    private static Optional<MendView.Lever> find(List<MendView.Lever> levers, String name) {
        if (name.matches("\\d{1,2}")) {
            int at = Integer.parseInt(name) - 1;
            return at >= 0 && at < levers.size() ? Optional.of(levers.get(at)) : Optional.empty();
        }
        return levers.stream().filter(lever -> lever.change().equals(name)).findFirst();
    }

    /** An option may be named by its letter. */
    private static String option(MendView.Lever lever, String value) {
        int letter = value.length() == 1 ? Character.toLowerCase(value.charAt(0)) - 'a' : -1;
        if (letter >= 0 && letter < lever.options().size()) {
            return lever.options().get(letter);
        }
        int option = lever.shownOptions().indexOf(value);
        return option >= 0
                ? lever.options().get(option)
                : lever.slider()
                        .flatMap(slider -> slider.typed(value))
                        .map(number -> Numeral.typed(number, DIGITS))
                        .orElse(value);
    }

    private String text() {
        return Stream.concat(
                        Stream.of(read, cause).filter(each -> !each.isEmpty()),
                        moved.entrySet().stream().map(each -> each.getKey() + " = " + each.getValue()))
                .collect(Collectors.joining("; "));
    }

    private void diagnosis(MendView now) {
        console.say("What can be read (two of them tell):");
        for (MendView.Reading reading : now.readings()) {
            Wrap.lines(
                            "%2d. %s%s"
                                    .formatted(
                                            reading.number(),
                                            reading.label(),
                                            reading.value().isEmpty() ? "" : ": " + reading.value()),
                            console.width())
                    .forEach(console::say);
        }
        if (!now.causes().isEmpty()) {
            console.say("What is the cause, and why?");
        }
        for (MendView.Cause each : now.causes()) {
            Wrap.lines(
                            "%2d. %s%s".formatted(each.number(), each.text(), each.named() ? "  (named)" : ""),
                            console.width())
                    .forEach(console::say);
        }
    }

    private void show(MendView now) {
        if (!now.readings().isEmpty()) {
            diagnosis(now);
        }
        if (now.levers().isEmpty()) {
            return;
        }
        Wrap.lines(now.circulates(), console.width()).forEach(console::say);
        FigureText.lines(now.figures()).forEach(console::say);
        console.say("What can be changed:");
        int number = 0;
        for (MendView.Lever lever : now.levers()) {
            number++;
            List<String> lines = new ArrayList<>();
            String found = lever.value().equals(lever.found()) ? "" : " (as found " + lever.shownFound() + ")";
            lines.addAll(Wrap.lines(
                    "%2d. %s: %s%s".formatted(number, lever.label(), lever.shownValue(), found), console.width()));
            lines.addAll(Wrap.lines("    " + allowed(lever), console.width()));
            lines.forEach(console::say);
        }
    }

    private static String allowed(MendView.Lever lever) {
        List<String> options = new ArrayList<>();
        for (int i = 0; i < lever.options().size(); i++) {
            options.add((char) ('a' + i) + " " + lever.shownOptions().get(i));
        }
        return lever.slider().map(Slider::range).orElse(String.join(", ", options));
    }
}

package loftcoil.runner.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.runner.exercise.Choice;
import loftcoil.runner.exercise.Mend;

/**
 * What a learner says of a faulty system before anything is moved: two readings and a cause. It is written among the changes as
 * {@code read = 1 3; cause = 2}, with the numbers of the exercise's own order.
 *
 * @param read numbers of the readings taken, in order
 * @param cause number of the cause named; empty while none is
 * @param changes the rest of the text, which {@link MendTrial#moved} reads
 */
public record Diagnosis(List<Integer> read, Optional<Integer> cause, String changes) {

    /** How many readings are taken. */
    public static final int READINGS = 2;

    private static final Pattern LINES = Pattern.compile("[;\\n]");
    private static final Pattern READ = Pattern.compile("\\s*read\\s*=([\\d\\s,]*)");
    private static final Pattern CAUSE = Pattern.compile("\\s*cause\\s*=\\s*(\\d{1,3})\\s*");
    private static final Pattern NUMBER = Pattern.compile("\\d{1,3}");

    /** Keeps its own copy. */
    public Diagnosis {
        read = List.copyOf(read);
    }

    /** Reads it from what was typed; numbers that the exercise has not are passed over. */
    public static Diagnosis of(Mend mend, String typed) {
        TreeSet<Integer> read = new TreeSet<>();
        Optional<Integer> cause = Optional.empty();
        List<String> rest = new ArrayList<>();
        for (String line : LINES.splitAsStream(typed).toList()) {
            Matcher reads = READ.matcher(line);
            Matcher causes = CAUSE.matcher(line);
            if (reads.matches()) {
                NUMBER.matcher(reads.group(1)).results().forEach(each -> read.add(Integer.parseInt(each.group())));
            } else if (causes.matches()) {
                cause = Optional.of(Integer.parseInt(causes.group(1)));
            } else {
                rest.add(line);
            }
        }
        read.removeIf(number -> mend.readings().stream().noneMatch(reading -> reading.number() == number));
        Optional<Integer> named =
                cause.filter(number -> mend.causes().stream().anyMatch(each -> each.number() == number));
        return new Diagnosis(List.copyOf(read), named, String.join(";", rest));
    }

    /** Whether two readings are taken, so that causes can be weighed. */
    public boolean hasRead() {
        return read.size() == READINGS;
    }

    /** What is said of it; nothing where it is right and something was moved besides. */
    Optional<Verdict> verdict(Mend mend, boolean moved) {
        if (!hasRead()) {
            return Optional.of(
                    new Verdict.Unreadable("Choose just two readings first: those that would tell the cause."));
        }
        Optional<Choice.Option> named = mend.causes().stream()
                .filter(each -> cause.filter(number -> number == each.number()).isPresent())
                .findFirst();
        if (named.isEmpty()) {
            return Optional.of(new Verdict.Unreadable("Name the cause, with its reason. Then you may move something."));
        }
        Verdict.Taken taken = Verdict.Taken.text(named.get().text());
        if (!named.get().right()) {
            return Optional.of(new Verdict.Wrong(
                    0, taken, named.get().say(), "cause " + named.get().number()));
        }
        List<String> vain = mend.readings().stream()
                .filter(reading -> read.contains(reading.number()) && !reading.tells())
                .map(reading -> "“" + reading.label() + "”")
                .toList();
        if (!vain.isEmpty()) {
            return Optional.of(new Verdict.Wrong(
                    0,
                    taken,
                    "You may have guessed well, but " + String.join(" and ", vain)
                            + " would read about the same with another of these causes. Which two tell them apart?",
                    "reads what does not tell"));
        }
        return moved
                ? Optional.empty()
                : Optional.of(new Verdict.Right(0, taken, named.get().say()));
    }
}

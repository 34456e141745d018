package loftcoil.runner.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.survey.FaultWords;
import loftcoil.runner.exercise.Lever;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.exercise.Reckoning;

/** Judges a mended system by what it then does, whatever was done to it. */
public final class MendCheck {

    private final Mend mend;
    private final Reckoning reckoning;

    /**
     * A check of one exercise.
     *
     * @param mend the exercise
     * @param reckoning computes its Java
     */
    public MendCheck(Mend mend, Reckoning reckoning) {
        this.mend = mend;
        this.reckoning = reckoning;
    }

    /** Java that takes a design by the name {@code design} and is worth a number. */
    private static String on(Design design, String number) {
        return "((ToDoubleFunction<Design>) design -> " + number + ").applyAsDouble(DesignJson.read("
                + javaString(DesignJson.write(design)) + "))";
    }

    /**
     * What can be read on a system.
     *
     * @param readings some of the exercise's
     * @param design the system
     * @return a number for each, in order
     * @throws loftcoil.runner.exercise.ReckoningException where the exercise's own Java gives no number
     */
    public List<Double> readings(List<Mend.Reading> readings, Design design) {
        return numbers(readings.stream()
                .map(reading -> on(design, "(double) (" + reading.java() + ")"))
                .toList());
    }

    /**
     * What a system does of what is wanted.
     *
     * @param design the system
     * @return for each thing wanted, in order, whether it does that
     * @throws loftcoil.runner.exercise.ReckoningException where the exercise's own Java is neither true nor false
     */
    public List<Boolean> met(Design design) {
        return numbers(mend.wanted().stream()
                        .map(wanted -> on(design, "(" + wanted.java() + ") ? 1 : 0"))
                        .toList())
                .stream()
                .map(value -> value == 1)
                .toList();
    }

    private List<Double> numbers(List<String> asked) {
        Map<String, Double> values = reckoning.together(asked);
        return asked.stream()
                .map(java -> KnownIdeas.number(java, values, reckoning))
                .toList();
    }

    Verdict verdict(String typed) {
        Map<String, String> moved;
        Design design;
        Diagnosis diagnosis = Diagnosis.of(mend, typed);
        try {
            moved = MendTrial.moved(mend, diagnosis.changes());
            design = MendTrial.design(mend, moved);
        } catch (RefusedException refused) {
            return new Verdict.Unreadable(
                    "The system cannot be built like that: " + String.join("; ", FaultWords.lines(refused)) + ".");
        }
        Optional<Verdict> said = mend.diagnosed() ? diagnosis.verdict(mend, !moved.isEmpty()) : Optional.empty();
        if (said.isPresent()) {
            return said.get();
        }
        if (moved.isEmpty()) {
            return new Verdict.Unreadable("Nothing has been changed yet.");
        }
        List<Boolean> met = met(design);
        Verdict.Taken taken = Verdict.Taken.text(MendTrial.text(moved));
        if (!met.contains(false)) {
            return new Verdict.Right(0, taken, list(met) + needless(moved));
        }
        Optional<Mend.Misrepair> known = known(moved);
        return new Verdict.Wrong(
                0,
                taken,
                list(met) + known.map(Mend.Misrepair::hint).orElse(""),
                known.map(Mend.Misrepair::because).orElse(""));
    }

    private String list(List<Boolean> met) {
        StringBuilder list = new StringBuilder();
        for (int i = 0; i < met.size(); i++) {
            list.append(met.get(i) ? "- **Yes:** " : "- **Not yet:** ")
                    .append(mend.wanted().get(i).say())
                    .append('\n');
        }
        return list.append('\n').toString();
    }

    /** Says what was moved and would not have had to be. */
    private String needless(Map<String, String> moved) {
        List<String> labels = new ArrayList<>();
        Map<String, String> left = new LinkedHashMap<>(moved);
        for (Lever lever : mend.levers()) {
            Map<String, String> without = new LinkedHashMap<>(left);
            if (without.remove(lever.change()) != null && !without.isEmpty() && mends(without)) {
                labels.add("“" + lever.label() + "”");
                left = without;
            }
        }
        return labels.isEmpty()
                ? ""
                : "It would have worked without changing " + String.join(" and ", labels)
                        + ". One change at a time shows what the cause was.";
    }

    private boolean mends(Map<String, String> moved) {
        try {
            return !met(MendTrial.design(mend, moved)).contains(false);
        } catch (RefusedException cannotBeBuilt) {
            return false;
        }
    }

    /** The known mistake whose changes are just those made, each the same way. Where more was moved, nobody knows the idea. */
    private Optional<Mend.Misrepair> known(Map<String, String> moved) {
        Design found = mend.faulty().design();
        return mend.mistakes().stream()
                .filter(mistake -> mistake.changes().keySet().equals(moved.keySet())
                        && mistake.changes().entrySet().stream()
                                .allMatch(each -> sameWay(
                                        Changes.current(found, each.getKey()),
                                        each.getValue(),
                                        moved.getOrDefault(each.getKey(), ""))))
                .findFirst();
    }

    private static boolean sameWay(String found, String mistaken, String moved) {
        try {
            double from = Double.parseDouble(found);
            return Math.signum(Double.parseDouble(mistaken) - from) == Math.signum(Double.parseDouble(moved) - from);
        } catch (NumberFormatException anOption) {
            return mistaken.equals(moved);
        }
    }

    /** Text as a Java string literal. */
    private static String javaString(String text) {
        return '"'
                + text.replace("\\", "\\\\")
                        .replace("\"", "\\\"")
                        .replace("\n", "\\n")
                        .replace("\r", "\\r")
                        .replace("\t", "\\t")
                + '"';
    }
}

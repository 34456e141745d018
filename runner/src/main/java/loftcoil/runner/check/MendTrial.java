package loftcoil.runner.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Numeral;
import loftcoil.runner.exercise.About;
import loftcoil.runner.exercise.Lever;
import loftcoil.runner.exercise.Mend;

/** A faulty system with some of its levers moved. */
public final class MendTrial {

    private static final Pattern LINES = Pattern.compile("[;\\n]");

    private MendTrial() {}

    /**
     * What was moved, from one line or several of the form {@code change = value}, separated by line ends or semicolons.
     *
     * @param mend the exercise
     * @param text as typed
     * @return value by change, in the order of the levers; a value put back to what was found is not among them
     * @throws RefusedException where a change is no lever, or its value not allowed, with every such fault
     */
    public static Map<String, String> moved(Mend mend, String text) {
        Map<String, String> typed = new LinkedHashMap<>();
        List<Fault> faults = new ArrayList<>();
        for (String line : LINES.splitAsStream(text).toList()) {
            if (line.isBlank()) {
                continue;
            }
            int sign = line.indexOf('=');
            if (sign < 0) {
                faults.add(new Fault("change", "“" + line.strip() + "”", "change = value", ""));
            } else {
                typed.put(
                        line.substring(0, sign).strip(),
                        line.substring(sign + 1).strip());
            }
        }
        Map<String, String> moved = checked(mend, typed, faults);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
        return moved;
    }

    private static Map<String, String> checked(Mend mend, Map<String, String> typed, List<Fault> faults) {
        Map<String, String> left = new TreeMap<>(typed);
        Map<String, String> moved = new LinkedHashMap<>();
        Design found = mend.faulty().design();
        for (Lever lever : mend.levers()) {
            String given = left.remove(lever.change());
            if (given != null) {
                value(lever, given, faults)
                        .filter(value -> !value.equals(Changes.current(found, lever.change())))
                        .ifPresent(value -> moved.put(lever.change(), value));
            }
        }
        String names = mend.levers().stream().map(Lever::change).collect(Collectors.joining(", "));
        left.keySet().forEach(name -> faults.add(new Fault("change", "“" + name + "”", names, "")));
        return moved;
    }

    private static Optional<String> value(Lever lever, String given, List<Fault> faults) {
        if (lever.span().isEmpty()) {
            Optional<String> option =
                    lever.options().stream().filter(given::equalsIgnoreCase).findFirst();
            if (option.isEmpty()) {
                faults.add(new Fault(lever.change(), "“" + given + "”", lever.allowed(), ""));
            }
            return option;
        }
        About.Span span = lever.span().get();
        try {
            Optional<Double> value =
                    NumberText.read(AnswerCleanup.answer(given)).map(NumberText::value);
            if (value.isPresent() && value.get() >= span.from() - 1e-9 && value.get() <= span.to() + 1e-9) {
                return value.map(number -> Numeral.typed(number, 12));
            }
        } catch (NumberText.DoubtException twoWays) {
            // Said below, as for a number out of range.
        }
        faults.add(new Fault(lever.change(), "“" + given + "”", lever.allowed(), ""));
        return Optional.empty();
    }

    /**
     * The system with these changes made, in whatever order they can be made.
     *
     * @param mend the exercise
     * @param moved value by change
     * @throws RefusedException where no system can be built like that
     */
    public static Design design(Mend mend, Map<String, String> moved) {
        Design design = mend.faulty().design();
        List<Lever> open = new ArrayList<>(mend.levers().stream()
                .filter(lever -> moved.containsKey(lever.change()))
                .toList());
        while (!open.isEmpty()) {
            RefusedException last = null;
            List<Lever> refused = new ArrayList<>();
            for (Lever lever : open) {
                try {
                    design = Changes.apply(design, lever.change(), moved.getOrDefault(lever.change(), ""));
                } catch (RefusedException e) {
                    refused.add(lever);
                    last = e;
                }
            }
            if (last != null && refused.size() == open.size()) {
                throw last;
            }
            open = refused;
        }
        return design;
    }

    /** What was moved as one line that {@link #moved} reads. */
    public static String text(Map<String, String> moved) {
        return moved.entrySet().stream()
                .map(each -> each.getKey() + " = " + each.getValue())
                .collect(Collectors.joining("; "));
    }
}

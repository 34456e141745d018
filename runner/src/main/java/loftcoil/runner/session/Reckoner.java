package loftcoil.runner.session;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/** Evaluates Java expressions to numbers in a session. What they declare is not part of the learner's work. */
public final class Reckoner {

    private static final Set<String> NUMBERS = Set.of(
            "double", "float", "long", "int", "short", "byte", "Double", "Float", "Long", "Integer", "Short", "Byte");

    private static final String EACH_WITH_ITS_TYPE = ".map(one -> one.getClass().getSimpleName() + \" \" + one)"
            + ".collect(java.util.stream.Collectors.joining(\"\\n\"))";

    private static final String NO_VALUE =
            "Its last line has no value. End with the number itself, or with the name that holds it.";

    private final Session session;

    /**
     * Reckons in a session, with all its names.
     *
     * @param session stays the caller's to close
     */
    public Reckoner(Session session) {
        this.session = session;
    }

    /**
     * The value of an expression, exactly.
     *
     * @param javaExpression one Java expression, or pieces the last of which is one
     * @throws RefusedException where it does not compile, throws, is stopped, or is not a finite number; the compiler's
     *     own words are in it
     */
    public double number(String javaExpression) {
        Outcome outcome = session.look(javaExpression);
        if (!(outcome instanceof Outcome.Done done)) {
            throw refused(javaExpression, OutcomeWords.of(outcome));
        }
        if (!NUMBERS.contains(done.type())) {
            throw refused(
                    javaExpression,
                    done.type().isEmpty() ? NO_VALUE : "Its last line is of type " + done.type() + ", not a number.");
        }
        double number = parse(javaExpression, done.value());
        if (!Double.isFinite(number)) {
            throw refused(
                    javaExpression,
                    "It comes to " + done.value() + ", which is no number: nothing was found, or a division by zero"
                            + " or the root of a negative number came in between.");
        }
        return number;
    }

    /**
     * The values of several expressions, compiled at once, which takes little longer than one.
     *
     * @param javaExpressions Java as for {@link #number}
     * @return the values by their Java; what cannot be reckoned with others is not among them and has to be reckoned by itself,
     *     which tells why
     */
    public Map<String, Double> together(Collection<String> javaExpressions) {
        Map<String, String> some = new LinkedHashMap<>();
        javaExpressions.stream().distinct().forEach(java -> asOneExpression(java)
                .ifPresent(one -> some.put(java, one)));
        if (some.size() < 2) {
            return Map.of();
        }
        // Each on lines of its own, as it may end in a comment.
        String all = some.values().stream()
                .collect(Collectors.joining(
                        "\n),\n(", "java.util.stream.Stream.<Number>of((\n", "\n))" + EACH_WITH_ITS_TYPE));
        return session.look(all) instanceof Outcome.Done done
                ? values(List.copyOf(some.keySet()), done.value().lines().toList())
                : Map.of();
    }

    /** Pieces as the call of a function that declares what they declare; empty where the only one ends in a semicolon. */
    private Optional<String> asOneExpression(String java) {
        if (java.indexOf(';') < 0) {
            return Optional.of(java);
        }
        int last = session.lastPieceOf(java);
        return last == 0
                ? Optional.empty()
                : Optional.of("((java.util.concurrent.Callable<Number>) () -> {\n" + java.substring(0, last)
                        + "\nreturn " + java.substring(last) + "\n;\n}).call()");
    }

    private static Map<String, Double> values(List<String> expressions, List<String> typed) {
        Map<String, Double> values = new HashMap<>();
        for (int i = 0; i < typed.size(); i++) {
            int blank = typed.get(i).indexOf(' ');
            String type = typed.get(i).substring(0, blank);
            // As of a number by itself: a type of another kind, or what is not finite, has to be told.
            if (!NUMBERS.contains(type)) {
                return Map.of();
            }
            double value = Double.parseDouble(typed.get(i).substring(blank + 1));
            if (!Double.isFinite(value)) {
                return Map.of();
            }
            values.put(expressions.get(i), value);
        }
        return values;
    }

    private static double parse(String javaExpression, String value) {
        try {
            return Double.parseDouble(value);
        } catch (NumberFormatException e) {
            throw refused(javaExpression, "It comes to " + value + ".");
        }
    }

    private static RefusedException refused(String given, String why) {
        return new RefusedException(List.of(new Fault("java", given, "Java that comes to a finite number", why)));
    }
}

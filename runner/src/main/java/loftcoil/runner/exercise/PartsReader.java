package loftcoil.runner.exercise;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.lang.model.SourceVersion;
import loftcoil.engine.json.JsonFields;
import loftcoil.runner.unit.UnitText;

/** Reads the parts that several kinds of exercise share. */
final class PartsReader {

    private static final String JAVA = "a Java expression";
    private static final String TOLERANCE =
            "{\"absolute\": number above 0} or {\"relative\": ratio above 0 and below 1}";

    private PartsReader() {}

    static SortedMap<String, About.Span> vary(JsonFields fields) {
        SortedMap<String, About.Span> vary = new TreeMap<>();
        if (!fields.has("vary")) {
            return vary;
        }
        JsonFields inner = fields.object("vary", JsonFields.OBJECT);
        for (String name : inner.names()) {
            if (!SourceVersion.isIdentifier(name) || SourceVersion.isKeyword(name) || name.equals("answer")) {
                inner.fault(name, "a name", "a name Java takes for a variable, such as heightM; not answer");
            }
            span(inner, name).ifPresent(span -> vary.put(name, span));
        }
        return vary;
    }

    private static Optional<About.Span> span(JsonFields vary, String name) {
        JsonFields fields = vary.object(name, JsonFields.OBJECT);
        Optional<About.Span> span = span(fields);
        fields.done();
        return span;
    }

    /** The stops a number may take, from the fields from, to and by. */
    static Optional<About.Span> span(JsonFields fields) {
        double from = fields.number("from", "a number");
        double to = fields.number("to", "a number");
        double by = fields.number("by", "a number above 0");
        if (Double.isNaN(from + to + by)) {
            return Optional.empty();
        }
        try {
            return Optional.of(new About.Span(from, to, by));
        } catch (IllegalArgumentException e) {
            fields.fault(
                    "from",
                    "from " + from + " to " + to + " by " + by,
                    "from at or below to, by above 0, at most " + About.Span.MOST_STOPS + " stops");
            return Optional.empty();
        }
    }

    static Reference reference(JsonFields fields) {
        Reference reference = new Reference(fields.words("java", JAVA), unit(fields));
        fields.done();
        return reference;
    }

    static String unit(JsonFields fields) {
        String unit = fields.wordsIfSaid("unit", "a unit such as Pa");
        if (UnitText.read(unit).isEmpty()) {
            fields.fault(
                    "unit", "“" + unit + "”", "a unit that answers can be given in, such as Pa, L/min, °C or W/(m K)");
        }
        return unit;
    }

    static Tolerance tolerance(JsonFields around) {
        JsonFields fields = around.object("tolerance", TOLERANCE);
        double absolute = fields.has("absolute") ? fields.number("absolute", TOLERANCE) : 0;
        double relative = fields.has("relative") ? fields.number("relative", TOLERANCE) : 0;
        Tolerance.Safe safe = safe(fields);
        fields.done();
        if (Double.isNaN(absolute + relative)) {
            return new Tolerance(0, 0);
        }
        boolean some = fields.has("absolute") || fields.has("relative");
        boolean sound = absolute >= 0 && relative >= 0 && absolute + relative > 0 && relative < 1;
        if (around.has("tolerance") && some && !sound) {
            around.fault("tolerance", "absolute " + absolute + ", relative " + relative, TOLERANCE);
        } else if (around.has("tolerance") && !some) {
            around.fault("tolerance", "neither absolute nor relative", TOLERANCE);
        }
        return sound ? new Tolerance(absolute, relative, safe) : new Tolerance(0, 0);
    }

    private static Tolerance.Safe safe(JsonFields tolerance) {
        String allowed =
                "\"below\" where the most that is allowed is asked for, \"above\" where the least that is needed is";
        String word = tolerance.wordsIfSaid("safe", allowed);
        return switch (word) {
            case "" -> Tolerance.Safe.NEITHER;
            case "below" -> Tolerance.Safe.BELOW;
            case "above" -> Tolerance.Safe.ABOVE;
            default -> {
                tolerance.fault("safe", "“" + word + "”", allowed);
                yield Tolerance.Safe.NEITHER;
            }
        };
    }

    static Optional<Published> published(JsonFields around, Set<String> vary) {
        if (!around.has("published")) {
            return Optional.empty();
        }
        JsonFields fields = around.object("published", JsonFields.OBJECT);
        SortedMap<String, Double> values = new TreeMap<>();
        if (fields.has("with") || !vary.isEmpty()) {
            JsonFields with = fields.object("with", "a value for each of " + vary);
            vary.forEach(name -> values.put(name, with.number(name, "a number for each name that varies")));
            with.done();
        }
        double value = fields.number("value", "the published value");
        Tolerance tolerance = tolerance(fields);
        String source = fields.words("source", "where the value is published");
        fields.done();
        return Optional.of(new Published(new Numbers(values), value, tolerance, source));
    }

    static List<KnownMistake> mistakes(JsonFields fields) {
        return fields.each("mistakes", mistake -> {
            KnownMistake read = new KnownMistake(
                    mistake.words("java", JAVA),
                    mistake.words("because", "what the slip is, in words"),
                    mistake.words("hint", "what to say to the learner"));
            mistake.done();
            return read;
        });
    }

    static About.Solution solution(JsonFields around, boolean needed, boolean withJava) {
        if (!needed && !around.has("solution")) {
            return new About.Solution("", "");
        }
        JsonFields fields = around.object("solution", "{\"first\": …, \"text\": …, \"java\": …}");
        String first = fields.wordsIfSaid("first", "what to do first");
        String text = fields.words("text", "the way to the answer, step by step");
        String java = withJava ? fields.words("java", "a route of its own to the number") : "";
        fields.done();
        return new About.Solution(first, text, java);
    }

    static Quantity.Temperature temperature(JsonFields fields, String unit) {
        String allowed = "\"level\" (20 °C is 68 °F) or \"difference\" (20 °C is 36 °F), for a temperature only";
        boolean wanted =
                UnitText.read(unit).filter(written -> written.isTemperature()).isPresent();
        String word = fields.wordsIfSaid("temperature", allowed);
        boolean known = word.equals("level") || word.equals("difference");
        if (wanted && word.isEmpty()) {
            fields.fault("temperature", "missing", allowed);
        } else if (!word.isEmpty() && !(known && wanted)) {
            fields.fault("temperature", "“" + word + "” with unit “" + unit + "”", allowed);
        }
        return wanted && known
                ? Quantity.Temperature.valueOf(word.toUpperCase(Locale.ROOT))
                : Quantity.Temperature.NONE;
    }
}

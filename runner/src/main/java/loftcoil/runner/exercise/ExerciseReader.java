package loftcoil.runner.exercise;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.json.JsonFields;
import loftcoil.engine.json.JsonText;
import loftcoil.runner.unit.UnitText;
import loftcoil.runner.unit.WrittenUnit;

/** Reads an exercise from its JSON, with all faults at once. */
public final class ExerciseReader {

    /** Longest exercise file, in UTF-16 units. */
    public static final int LONGEST = 200_000;

    private static final JsonText TEXT = new JsonText(LONGEST);
    private static final String KINDS = "\"quantity\", \"choice\", \"java\", \"decision\" or \"mend\"";

    private ExerciseReader() {}

    /**
     * The exercise in that JSON.
     *
     * @param path path below the exercises folder without ending, such as {@code 01-warm-water/two-legs}
     * @param fileName the file as its writer knows it, for messages
     * @param json what stands in the file
     * @throws RefusedException where anything is wrong in it, with every fault found
     */
    public static Exercise read(String path, String fileName, String json) {
        try {
            return read(path, json);
        } catch (RefusedException refused) {
            throw refused.in(fileName);
        }
    }

    private static Exercise read(String path, String json) {
        if (json.length() > LONGEST) {
            throw new RefusedException(List.of(new Fault("", json.length() + " characters", "at most " + LONGEST, "")));
        }
        JsonFields fields = JsonFields.of(TEXT.object("", json));
        Exercise exercise = exercise(path, fields);
        fields.done();
        PlaceholderCheck.check(fields, exercise);
        if (!fields.faults().isEmpty()) {
            throw new RefusedException(fields.faults());
        }
        return exercise;
    }

    private static Exercise exercise(String path, JsonFields fields) {
        String kind = fields.words("kind", KINDS);
        return switch (kind) {
            case "quantity" -> quantity(path, fields);
            case "choice" -> choice(path, fields);
            case "java" -> code(path, fields);
            case "decision" -> decision(path, fields);
            case "mend" -> MendReader.read(path, fields);
            default -> {
                if (!kind.isBlank()) {
                    fields.fault("kind", "“" + kind + "”", KINDS);
                }
                // Without its kind, no other field can be judged.
                throw new RefusedException(fields.faults());
            }
        };
    }

    private static About about(String path, JsonFields fields, boolean judged, boolean reckoned) {
        String text = fields.words("text", "the question, in CommonMark");
        SortedMap<String, About.Span> vary = PartsReader.vary(fields);
        String allowed = "where the reference value is from; \"common practice\" or \"from memory\" where that is so";
        String source = judged ? fields.words("source", allowed) : fields.wordsIfSaid("source", allowed);
        String shown = fields.wordsIfSaid(
                "shown", "the first words of the paragraph that shows the sum with other numbers, or a snippet's name");
        return new About(
                path, text, before(fields), vary, source, PartsReader.solution(fields, judged, reckoned), shown);
    }

    private static boolean before(JsonFields fields) {
        String when = fields.wordsIfSaid("when", "\"before\", for a prediction, or nothing");
        if (!when.isEmpty() && !when.equals("before")) {
            fields.fault("when", "“" + when + "”", "\"before\", for a prediction, or nothing");
        }
        return when.equals("before");
    }

    private static Quantity quantity(String path, JsonFields fields) {
        About about = about(path, fields, true, true);
        Reference reference = PartsReader.reference(fields.object("reference", "{\"java\": …, \"unit\": …}"));
        List<Reference> also = fields.each("also", PartsReader::reference);
        also.stream()
                .filter(other -> sameKind(reference, other))
                .forEach(other -> fields.fault(
                        "also", "unit “" + other.unit() + "”", "units of another kind; fitting ones are taken anyway"));
        return new Quantity(
                about,
                reference,
                also,
                PartsReader.published(fields, about.vary().keySet()),
                PartsReader.temperature(fields, reference.unit()),
                PartsReader.tolerance(fields),
                PartsReader.mistakes(fields),
                slips(fields));
    }

    private static boolean sameKind(Reference one, Reference other) {
        WrittenUnit unit = UnitText.read(one.unit()).orElse(null);
        return unit != null && UnitText.read(other.unit()).filter(unit::fits).isPresent();
    }

    private static List<Quantity.Slip> slips(JsonFields fields) {
        List<Quantity.Slip> slips = new ArrayList<>();
        for (String word : fields.texts("slips", "\"diameter\" or \"diameter-squared\"")) {
            switch (word) {
                case "diameter" -> slips.add(Quantity.Slip.DIAMETER);
                case "diameter-squared" -> slips.add(Quantity.Slip.DIAMETER_SQUARED);
                default -> fields.fault("slips", "“" + word + "”", "\"diameter\" or \"diameter-squared\"");
            }
        }
        return slips;
    }

    private static Choice choice(String path, JsonFields fields) {
        About about = about(path, fields, true, false);
        List<Choice.Option> options = fields.each("choices", choice -> {
            Choice.Option option = new Choice.Option(
                    choice.words("text", "what the choice says"),
                    choice.flag("right"),
                    choice.words("say", "what to say to who chose it"));
            choice.done();
            return option;
        });
        Set<String> texts = new HashSet<>();
        options.forEach(option -> texts.add(option.text().strip()));
        long right = options.stream().filter(Choice.Option::right).count();
        if (options.size() < 2 || right != 1 || texts.size() != options.size()) {
            fields.fault(
                    "choices",
                    options.size() + " choices, " + right + " of them right, " + texts.size() + " different texts",
                    "at least two with different texts, exactly one of them right");
        }
        return new Choice(about, options);
    }

    private static Code code(String path, JsonFields fields) {
        About about = about(path, fields, true, true);
        if (about.before()) {
            fields.fault("when", "“before”", "predictions by quantity or choice only");
        }
        return new Code(
                about,
                fields.wordsIfSaid("starter", "Java to begin from"),
                PartsReader.reference(fields.object("reference", "{\"java\": …, \"unit\": …}")),
                PartsReader.published(fields, about.vary().keySet()),
                PartsReader.tolerance(fields),
                PartsReader.mistakes(fields),
                lines(fields));
    }

    /** Each line has what may stand in it, the right one first. */
    private static List<List<String>> lines(JsonFields fields) {
        List<List<String>> lines = fields.each("lines", line -> {
            List<String> choices =
                    line.texts("java", "what may stand there, the right one first; one alone always stands");
            line.done();
            return choices;
        });
        boolean asks = lines.stream().anyMatch(line -> line.size() > 1);
        boolean whole = lines.stream()
                .noneMatch(line -> line.isEmpty() || Set.copyOf(line).size() != line.size());
        if (!lines.isEmpty() && !(asks && whole)) {
            fields.fault(
                    "lines",
                    lines.size() + " lines",
                    "something in each, in at least one a choice, nothing twice in one");
        }
        return lines;
    }

    private static Decision decision(String path, JsonFields fields) {
        About about = about(path, fields, false, false);
        String change = fields.words("change", "the name of a design change, such as tank.baseM");
        List<String> options = fields.texts("options", "texts to choose among");
        String unit = PartsReader.unit(fields);
        if (options.isEmpty() == !fields.has("unit") || about.before()) {
            fields.fault("change", "unit, options and when", "either unit or a list of options, and no when");
        }
        boolean clock = fields.has("clock") && fields.flag("clock");
        if (clock && !unit.equals("h")) {
            fields.fault("clock", "true with unit “" + unit + "”", "with unit h only");
        }
        return new Decision(about, change, unit, options, clock);
    }
}

package loftcoil.engine.drift;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.sheet.SheetJson;
import loftcoil.engine.sheet.SheetText;
import loftcoil.engine.study.Comparison;
import loftcoil.engine.study.Row;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;

/**
 * All that the engine says of a design, one thing a line: figures with their path, sentences by their code and
 * by what is measured and named in them. How a sentence is put may change without a line changing; what it says may not.
 */
final class Output {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** Parts of a build sheet that stand in lines of their own. */
    private static final Set<String> ELSEWHERE = Set.of("design", "sheet");

    private final List<String> lines = new ArrayList<>();

    private Output() {}

    static List<String> of(Design design, Sheet compared) {
        Output output = new Output();
        BuildSheet build = BuildSheet.of(design);
        output.json("sheet", parsed(SheetJson.write(build.sheet())));
        output.text(build.sheet());
        output.record("build", build);
        output.comparison(Comparison.of(compared, build.sheet()));
        return List.copyOf(output.lines);
    }

    private static JsonNode parsed(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (JsonProcessingException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }

    private void json(String path, JsonNode node) {
        if (node.isObject()) {
            node.properties().stream()
                    .filter(field ->
                            !(node.has("code") && Set.of("text", "source").contains(field.getKey())))
                    .forEach(field -> json(path + "." + field.getKey(), field.getValue()));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                json(path + "[" + i + "]", node.get(i));
            }
        } else {
            line(path, node.asText());
        }
    }

    /** The sheet as text down to its cautions, which stand in the JSON by their codes. */
    private void text(Sheet sheet) {
        List<String> text = SheetText.lines(sheet);
        text.subList(0, text.indexOf("Cautions")).stream()
                .filter(said -> !said.isBlank())
                .forEach(said -> line("text", said.strip()));
    }

    private void comparison(Comparison comparison) {
        for (Row row : comparison.rows()) {
            line("compare." + row.key(), value(row.before()) + " -> " + value(row.after()) + " " + row.turn());
        }
        line("compare.raised", codes(comparison.cautionsRaised()));
        line("compare.settled", codes(comparison.cautionsSettled()));
    }

    private static String value(OptionalDouble value) {
        return value.isPresent() ? Double.toString(value.getAsDouble()) : "none";
    }

    private static String codes(List<Caution> cautions) {
        return String.join(" ", cautions.stream().map(Caution::code).toList());
    }

    private void any(String path, Object value) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresent(found -> any(path, found));
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                any(path + "[" + i + "]", list.get(i));
            }
        } else if (value instanceof MeasuredText words) {
            if (!words.code().isEmpty()) {
                line(path, words.code());
            }
            words.parts().stream()
                    .filter(part -> !(part instanceof MeasuredText.Text))
                    .forEach(part -> any(path, part));
        } else if (value instanceof MeasuredText.Name name) {
            line(path, "'" + name.name() + "'");
        } else if (value instanceof Measure measure) {
            line(path, measure.value() + " " + measure.kind());
        } else if (value instanceof Record parts) {
            record(path, parts);
        } else {
            line(path, value.toString());
        }
    }

    private void record(String path, Record parts) {
        for (RecordComponent part : parts.getClass().getRecordComponents()) {
            if (!ELSEWHERE.contains(part.getName())) {
                any(path + "." + part.getName(), read(parts, part));
            }
        }
    }

    private static Object read(Record parts, RecordComponent part) {
        try {
            return part.getAccessor().invoke(parts);
        } catch (ReflectiveOperationException closed) {
            throw new IllegalStateException(closed);
        }
    }

    private void line(String path, String value) {
        lines.add(path + " = " + value);
    }
}

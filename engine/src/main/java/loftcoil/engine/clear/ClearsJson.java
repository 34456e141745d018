package loftcoil.engine.clear;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignFields;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.sheet.SheetJson;
import loftcoil.engine.study.NamedValue;

/**
 * A sheet as JSON with what would clear its dangers: {@code clears} has the single changes, {@code clearsTogether} those that need
 * several fields or levers at once, {@code rarer} conduct, {@code noneFound} why there is neither of the first two. Each says in {@code fields} what every field of the design becomes, so that
 * a program which knows no named changes can follow it too.
 */
public final class ClearsJson {

    private ClearsJson() {}

    /** The sheet as one JSON object, indented, ending in a line break. */
    public static String write(Sheet sheet, Clears clears) {
        return SheetJson.write(sheet, (caution, out) -> add(caution, clears, out));
    }

    private static void add(Caution caution, Clears clears, ObjectNode out) {
        Optional<Cleared> found = clears.of(caution.kind());
        Design design = clears.design();
        List<Way> ways = found.map(Cleared::ways).orElse(List.of());
        out.set("clears", array(design, ways.stream().filter(Way::single).toList()));
        out.set(
                "clearsTogether",
                array(design, ways.stream().filter(way -> !way.single()).toList()));
        out.set("rarer", array(design, found.map(Cleared::rarer).orElse(List.of())));
        found.filter(cleared -> cleared.ways().isEmpty())
                .ifPresent(none -> out.put("noneFound", ClearWords.head(none).metric()));
    }

    private static ArrayNode array(Design design, List<Way> ways) {
        ArrayNode out = JsonNodeFactory.instance.arrayNode();
        for (Way way : ways) {
            ObjectNode one = out.addObject();
            List<DesignFields.Difference> fields = DesignFields.compare(design, way.appliedTo(design));
            if (way.single()) {
                change(one, way.changes().get(0), fields);
            } else {
                ArrayNode changes = one.putArray("changes");
                way.changes().forEach(change -> change(changes.addObject(), change, List.of()));
            }
            one.put("words", way.words().metric()).put("cost", way.cost());
            ArrayNode each = one.putArray("fields");
            fields.forEach(field -> put(each.addObject().put("path", field.path()), field.after()));
        }
        return out;
    }

    /** A named change that comes down to one field is told as that field. */
    private static void change(ObjectNode out, NamedValue change, List<DesignFields.Difference> fields) {
        if (fields.size() == 1) {
            put(out.put("change", fields.get(0).path()), fields.get(0).after());
        } else {
            put(out.put("change", change.name()), Optional.of(change.value()));
        }
    }

    /** Numbers and truths as such, as a design file has them. */
    private static void put(ObjectNode out, Optional<String> value) {
        String text = value.orElse("");
        if (value.isEmpty()) {
            out.putNull("to");
        } else if (text.equals("true") || text.equals("false")) {
            out.put("to", text.equals("true"));
        } else if (text.matches("-?\\d+(\\.\\d+)?")) {
            out.put("to", Double.parseDouble(text));
        } else {
            out.put("to", text);
        }
    }
}

package loftcoil.runner.show;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.design.BorrowedHeat;
import loftcoil.engine.design.Differences;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.study.Comparison;
import loftcoil.engine.study.Rebuild;
import loftcoil.engine.study.Row;

/** A comparison for other programs: plain numbers under the names they have in the sheet's JSON. */
public final class ComparisonJson {

    private ComparisonJson() {}

    /**
     * One JSON object, indented.
     *
     * @param compared the two designs
     * @param rebuild the named changes in which they differ
     * @param noYear why the years are not compared though that was asked for; empty where they are
     */
    public static String write(Comparison compared, Rebuild rebuild, String noYear) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("before", compared.before().design().name());
        out.put("after", compared.after().design().name());
        if (!noYear.isEmpty()) {
            out.put("noYear", noYear);
        }
        out.put(
                "heatBorrowedBefore",
                BorrowedHeat.of(compared.before().design()).isPresent());
        out.put("heatBorrowedAfter", BorrowedHeat.of(compared.after().design()).isPresent());
        ArrayNode differences = out.putArray("differences");
        Differences.between(compared.before().design(), compared.after().design())
                .forEach(said -> differences.add(difference(said)));
        out.set("figures", figures(compared.rows()));
        out.set("verdictBefore", verdict(compared.before()));
        out.set("verdictAfter", verdict(compared.after()));
        out.set("cautionsRaised", codes(compared.cautionsRaised()));
        out.set("cautionsSettled", codes(compared.cautionsSettled()));
        ArrayNode changes = out.putArray("changes");
        rebuild.effects().forEach(effect -> changes.add(effect(effect)));
        out.put("changesAreAll", rebuild.leadsTo(compared.after()));
        return out.toPrettyString();
    }

    private static ObjectNode difference(Differences.Said said) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("path", said.path());
        out.put("part", said.part());
        out.put("label", said.label());
        out.put("before", said.before().metric());
        out.put("after", said.after().metric());
        return out;
    }

    private static ObjectNode effect(Rebuild.Effect effect) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("name", effect.change().name());
        out.put("value", effect.change().value());
        effect.result().comparison().ifPresent(alone -> out.set("figures", figures(alone.changed())));
        if (effect.result() instanceof Rebuild.Refused refused) {
            ArrayNode faults = out.putArray("refused");
            refused.faults().forEach(fault -> faults.add(fault.line()));
        }
        return out;
    }

    private static ArrayNode figures(List<Row> rows) {
        ArrayNode out = JsonNodeFactory.instance.arrayNode();
        for (Row row : rows) {
            ObjectNode figure = out.addObject();
            figure.put("key", row.key());
            figure.put("label", row.label());
            figure.put("unit", row.unit());
            put(figure, "before", row.before());
            put(figure, "after", row.after());
            put(figure, "difference", row.difference());
            figure.put("turn", row.turn().name().toLowerCase(Locale.ROOT));
        }
        return out;
    }

    private static void put(ObjectNode figure, String name, OptionalDouble value) {
        if (value.isPresent()) {
            figure.put(name, value.getAsDouble());
        }
    }

    private static ObjectNode verdict(Sheet sheet) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("level", sheet.verdict().level());
        out.put("yearJudged", !sheet.verdict().yearOpen());
        out.put("startsJudged", !sheet.verdict().startsOpen());
        out.set("cautions", codes(sheet.cautions()));
        return out;
    }

    private static ArrayNode codes(List<Caution> cautions) {
        ArrayNode out = JsonNodeFactory.instance.arrayNode();
        cautions.forEach(caution -> out.add(caution.code()));
        return out;
    }
}

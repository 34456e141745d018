package loftcoil.engine.sheet;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import loftcoil.engine.caution.Ask;
import loftcoil.engine.caution.Caution;

/**
 * A sheet as JSON. Where there is no forward flow, the temperatures and the boiling margin are left out and
 * {@code loop.words} says why; no figure is ever a placeholder.
 */
public final class SheetJson {

    private SheetJson() {}

    /** The sheet as one JSON object, indented, ending in a line break. */
    public static String write(Sheet sheet) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("name", sheet.design().name());
        out.set("loop", loop(sheet.loop()));
        out.putObject("tank")
                .put("fullMassKg", sheet.tank().fullMassKg())
                .put("expansionL", sheet.tank().expansionL());
        ArrayNode cautions = out.putArray("cautions");
        for (Caution caution : sheet.cautions()) {
            cautions.addObject()
                    .put("code", caution.code())
                    .put("severity", caution.severity().toString().toLowerCase(Locale.ROOT))
                    .put("text", caution.text())
                    .put("source", caution.source());
        }
        ArrayNode asks = out.putArray("asks");
        for (Ask ask : sheet.asks()) {
            asks.addObject().put("field", ask.field()).put("text", ask.text());
        }
        return out.toPrettyString() + "\n";
    }

    private static ObjectNode loop(LoopFigures loop) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("tankC", loop.tankC());
        out.put("circulates", loop.circulates());
        out.put("words", loop.words());
        out.put("flowKgPerS", loop.flowKgPerS());
        out.put("flowLPerMin", loop.flowLPerMin());
        out.put("drivePa", loop.drivePa());
        out.put("reynolds", loop.reynolds());
        loop.flow().ifPresent(flow -> {
            out.put("coilInC", flow.coil().startC());
            out.put("coilOutC", flow.coil().endC());
            out.put("returnC", flow.returnC());
            out.put("boilMarginK", flow.boilMargin().marginK());
            out.put("boilMarginAt", flow.boilMargin().where());
        });
        out.putObject("coldFire")
                .put("flowKgPerS", loop.coldFire().flowKgPerS())
                .put("lossW", loop.coldFire().lossW());
        return out;
    }
}

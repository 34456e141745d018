package loftcoil.engine.sheet;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import loftcoil.engine.caution.Ask;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.loop.SteadyFlow;

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
        ObjectNode loop = loop(sheet.loop());
        sheet.spread().ifPresent(spread -> {
            loop.set("low", end(spread.low()));
            loop.set("high", end(spread.high()));
        });
        out.set("loop", loop);
        out.putObject("tank")
                .put("fullMassKg", sheet.tank().fullMassKg())
                .put("expansionL", sheet.tank().expansionL());
        if (!sheet.taps().isEmpty()) {
            ArrayNode taps = out.putArray("taps");
            sheet.taps().forEach(tap -> taps.add(tap(tap)));
        }
        sheet.window().ifPresent(window -> out.putObject("window")
                .put("uValueWPerM2K", window.uValueWPerM2K())
                .put("transmittanceNormal", window.transmittanceNormal()));
        sheet.year().ifPresent(year -> out.set("year", YearJson.write(year)));
        out.putObject("verdict")
                .put("level", sheet.verdict().level())
                .put("yearJudged", !sheet.verdict().yearOpen());
        ArrayNode cautions = out.putArray("cautions");
        for (Caution caution : sheet.cautions()) {
            cautions.addObject()
                    .put("code", caution.code())
                    .put("severity", caution.severity().code())
                    .put("text", caution.text())
                    .put("source", caution.source());
        }
        ArrayNode asks = out.putArray("asks");
        for (Ask ask : sheet.asks()) {
            asks.addObject().put("field", ask.field()).put("text", ask.text());
        }
        return out.toPrettyString() + "\n";
    }

    private static ObjectNode tap(TapFigures tap) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("name", tap.name());
        out.put("flowLPerMin", tap.flowLPerMin());
        out.put("headKPa", tap.headKPa());
        tap.fillMin60L().ifPresent(minutes -> out.put("fillMin60L", minutes));
        return out;
    }

    private static ObjectNode end(HeatSpread.End end) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("heatKW", end.heatKW());
        out.put("circulates", end.flow().isPresent());
        out.put("flowKgPerS", end.flow().map(SteadyFlow::flowKgPerS).orElse(0.0));
        end.flow().ifPresent(flow -> {
            out.put("coilOutC", flow.coil().endC());
            out.put("boilMarginK", flow.boilMargin().marginK());
        });
        return out;
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
            out.put("heatKW", flow.heat().coilW() / 1000);
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

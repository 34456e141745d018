package loftcoil.engine.sheet;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import loftcoil.engine.caution.Ask;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.design.ColdNight;
import loftcoil.engine.run.MonthRow;
import loftcoil.engine.run.YearSpread;
import loftcoil.engine.start.Start;
import loftcoil.engine.start.Starts;
import loftcoil.engine.survey.Doubts;

/**
 * A sheet as JSON. Where there is no forward flow, the temperatures and the boiling margin are left out and
 * {@code loop.words} says why; no figure is ever a placeholder.
 */
public final class SheetJson {

    /** What other programs still read beside {@code boilingH}. */
    private static final String OLDER_NAME = "boilingMin";

    private SheetJson() {}

    /** The sheet as one JSON object, indented, ending in a line break. */
    public static String write(Sheet sheet) {
        return write(sheet, (caution, one) -> {});
    }

    /**
     * The same, with more about each caution.
     *
     * @param more adds to the object of a caution what is known besides
     */
    public static String write(Sheet sheet, BiConsumer<Caution, ObjectNode> more) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("name", sheet.design().name());
        ObjectNode loop = out.putObject("loop");
        loop.put("tankC", sheet.loop().tankC());
        loop.put("words", sheet.loop().words());
        lit(loop, sheet.loop());
        sheet.loop()
                .flow()
                .ifPresent(flow -> loop.put("boilMarginAt", flow.boilMargin().where()));
        put(loop.putObject("coldFire"), Figures.NIGHT, sheet.loop().coldFire());
        sheet.starts().ifPresent(starts -> starts(out, starts));
        sheet.spread().ifPresent(spread -> {
            lit(loop.putObject("low"), spread.low());
            lit(loop.putObject("high"), spread.high());
        });
        sheet.states().worst().ifPresent(worst -> put(out.putObject("worst"), Figures.WORST, worst));
        sheet.coil().ifPresent(coil -> put(out.putObject("coil"), Figures.COIL, coil));
        sheet.scale().ifPresent(scale -> put(out.putObject("scale"), Figures.SCALE, scale));
        sheet.flue().ifPresent(flue -> put(out.putObject("flue"), Figures.FLUE, flue));
        sheet.firstCharge().ifPresent(charge -> put(out.putObject("firstFire"), Figures.FIRST_FIRE, charge));
        put(out.putObject("tank"), Figures.TANK, sheet.tank());
        put(out.putObject("frost"), Figures.FROST, ColdNight.of(sheet.design()));
        if (!sheet.taps().isEmpty()) {
            ArrayNode taps = out.putArray("taps");
            sheet.taps().forEach(tap -> put(taps.addObject().put("name", tap.name()), Figures.TAP, tap));
        }
        sheet.window().ifPresent(window -> put(out.putObject("window"), Figures.PANES, window));
        sheet.year().ifPresent(years -> {
            year(out.putObject("year"), years);
            years.weeks().clear().ifPresent(week -> put(out.putObject("spell"), Figures.CLEAR_WEEK, week));
            years.weeks().dull().ifPresent(week -> put(out.putObject("dull"), Figures.DULL_WEEK, week));
        });
        out.putObject("verdict")
                .put("level", sheet.verdict().level())
                .put("yours", sheet.grounds().yours())
                .put("assumed", sheet.grounds().assumed())
                .put("borrowed", sheet.grounds().borrowed())
                .put("yearJudged", !sheet.verdict().yearOpen())
                .put("startsJudged", !sheet.verdict().startsOpen());
        ArrayNode cautions = out.putArray("cautions");
        for (Caution caution : sheet.cautions()) {
            ObjectNode one = cautions.addObject();
            one.put("code", caution.code())
                    .put("severity", caution.severity().code())
                    .put("text", caution.text())
                    .put("source", caution.source());
            caution.kind().conduct().ifPresent(rule -> one.put("conduct", rule.code()));
            more.accept(caution, one);
        }
        ArrayNode asks = out.putArray("asks");
        for (Ask ask : sheet.asks()) {
            asks.addObject().put("field", ask.field()).put("text", ask.text());
        }
        ArrayNode slips = out.putArray("slips");
        for (Doubts.Slip slip : Doubts.slips(sheet.design())) {
            slips.addObject()
                    .put("kind", slip.kind())
                    .put("field", slip.field())
                    .put("text", slip.words().metric());
        }
        return out.toPrettyString() + "\n";
    }

    private static void lit(ObjectNode out, LitLoop loop) {
        out.put("circulates", loop.circulates());
        put(out, Figures.LOOP, loop);
    }

    private static void starts(ObjectNode out, Starts starts) {
        ArrayNode each = out.putArray("starts");
        for (Start start : starts.tried()) {
            ObjectNode one = each.addObject();
            orNull(one, "gapH", start.gapH());
            one.put("tankC", start.tankC())
                    .put("counterflow", start.counterflow().code())
                    .put("ends", start.ends().code());
            orNull(one, "forwardAfterMin", start.forwardAfterMin());
            orNull(one, "firstBoilingMin", start.firstBoilingMin());
            one.put("boilingMin", start.boilingMin()).put("hottestC", start.hottestC());
        }
        out.put("start", starts.sureness().code());
        put(out.putObject("starting"), Figures.STARTS, starts);
    }

    private static void orNull(ObjectNode out, String key, OptionalDouble value) {
        if (value.isPresent()) {
            out.put(key, value.getAsDouble());
        } else {
            out.putNull(key);
        }
    }

    private static void year(ObjectNode out, YearSpread years) {
        month(out, years.mid().whole());
        put(out, Figures.LOSSES, years.mid().energy().losses());
        years.low().ifPresent(low -> month(out.putObject("low"), low.whole()));
        years.high().ifPresent(high -> month(out.putObject("high"), high.whole()));
        ArrayNode months = out.putArray("months");
        years.mid().months().forEach(row -> month(months.addObject().put("month", row.month()), row));
    }

    private static void month(ObjectNode out, MonthRow row) {
        put(out, Figures.MONTH, row);
        out.put(OLDER_NAME, row.boilingMin());
    }

    private static <S> void put(ObjectNode out, List<Figure<S>> figures, S source) {
        for (Figure<S> figure : figures) {
            double value = figure.value().applyAsDouble(source);
            if (!Double.isNaN(value)) {
                int dot = figure.key().lastIndexOf('.');
                ObjectNode part =
                        dot < 0 ? out : out.withObject("/" + figure.key().substring(0, dot));
                part.put(figure.key().substring(dot + 1), value);
            }
        }
    }
}

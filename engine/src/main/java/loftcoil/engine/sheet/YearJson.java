package loftcoil.engine.sheet;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import loftcoil.engine.run.EnergyBook;
import loftcoil.engine.run.Litres;
import loftcoil.engine.run.Losses;
import loftcoil.engine.run.MonthRow;
import loftcoil.engine.run.YearRun;
import loftcoil.engine.run.YearSpread;

/** The year as JSON. */
final class YearJson {

    private YearJson() {}

    static ObjectNode write(YearSpread years) {
        ObjectNode out = main(years.mid());
        years.low().ifPresent(low -> out.set("low", main(low)));
        years.high().ifPresent(high -> out.set("high", main(high)));
        YearRun year = years.mid();
        out.set("losses", losses(year.energy().losses()));
        out.set("litres", litres(year.litres()));
        ArrayNode months = out.putArray("months");
        year.months().forEach(row -> months.add(month(row)));
        return out;
    }

    private static ObjectNode main(YearRun year) {
        ObjectNode out = energy(year.energy());
        out.put("shortfallKWh", year.shortfallKWh());
        out.put("woodKg", year.woodKg());
        out.put("hottestC", year.hottestC());
        out.put("boilingMin", year.boilingMin());
        return out;
    }

    private static ObjectNode month(MonthRow row) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("month", row.month());
        out.setAll(energy(row.energy()));
        out.put("shortfallKWh", row.shortfallKWh());
        out.put("woodKg", row.woodKg());
        out.put("hottestC", row.hottestC());
        out.put("boilingMin", row.boilingMin());
        out.set("litres", litres(row.litres()));
        return out;
    }

    private static ObjectNode energy(EnergyBook book) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("solarKWh", book.solarKWh());
        out.put("coilKWh", book.coilKWh());
        out.put("usedKWh", book.usedKWh());
        out.put("lossKWh", book.lossKWh());
        out.put("storedKWh", book.storedKWh());
        return out;
    }

    private static ObjectNode losses(Losses losses) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("tankKWh", losses.tank());
        out.put("windowKWh", losses.window());
        out.put("legsLitKWh", losses.legsLit());
        out.put("legsOutKWh", losses.legsOut());
        out.put("steamKWh", losses.steam());
        out.put("iceKWh", losses.ice());
        return out;
    }

    private static ObjectNode litres(Litres litres) {
        ObjectNode out = JsonNodeFactory.instance.objectNode();
        out.put("asWanted", litres.asWanted());
        out.put("tooCool", litres.tooCool());
        out.put("missing", litres.missing());
        return out;
    }
}

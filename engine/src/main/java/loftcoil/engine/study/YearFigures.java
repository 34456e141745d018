package loftcoil.engine.study;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import loftcoil.engine.run.EnergyBook;
import loftcoil.engine.run.Litres;
import loftcoil.engine.run.Losses;
import loftcoil.engine.run.MonthRow;
import loftcoil.engine.run.YearRun;
import loftcoil.engine.run.YearSpread;

/** The figures of a year, in the order of the sheet. */
final class YearFigures {

    private static final String KWH = "kWh";

    private YearFigures() {}

    static void add(List<SheetFigure> all, YearSpread years) {
        YearRun year = years.mid();
        Figures whole = Figures.into(all, FigureGroup.YEAR, "year.");
        main(whole, year);
        losses(whole.at("losses."), year.energy().losses());
        litres(whole.at("litres."), year.litres());
        years.low().ifPresent(low -> main(Figures.into(all, FigureGroup.YEAR_LEAST_HEAT, "year.low."), low));
        years.high().ifPresent(high -> main(Figures.into(all, FigureGroup.YEAR_MOST_HEAT, "year.high."), high));
        for (int i = 0; i < year.months().size(); i++) {
            month(
                    Figures.into(all, FigureGroup.MONTHS, "year.months[" + i + "]."),
                    year.months().get(i));
        }
    }

    private static void main(Figures figures, YearRun year) {
        energy(figures, year.energy());
        shortage(figures, year.shortfallKWh(), year.woodKg());
        heat(figures, year.hottestC(), year.boilingMin());
    }

    private static void month(Figures figures, MonthRow row) {
        Figures own = figures.of(Month.of(row.month()).getDisplayName(TextStyle.FULL, Locale.ENGLISH));
        energy(own, row.energy());
        shortage(own, row.shortfallKWh(), row.woodKg());
        heat(own, row.hottestC(), row.boilingMin());
        litres(own.at("litres."), row.litres());
    }

    private static void energy(Figures figures, EnergyBook book) {
        figures.more("solarKWh", "heat from the sun", KWH, book.solarKWh())
                .plain("coilKWh", "heat from the coil", KWH, book.coilKWh())
                .more("usedKWh", "heat used at the taps", KWH, book.usedKWh())
                .less("lossKWh", "heat lost", KWH, book.lossKWh())
                .plain("storedKWh", "heat in store, more at the end", KWH, book.storedKWh());
    }

    private static void shortage(Figures figures, double shortfallKWh, double woodKg) {
        figures.less("shortfallKWh", "heat missing at the taps", KWH, shortfallKWh)
                .less("woodKg", "wood burnt", "kg", woodKg);
    }

    private static void heat(Figures figures, double hottestC, double boilingMin) {
        figures.plain("hottestC", "hottest water in the tank", "°C", hottestC)
                .less("boilingMin", "time in which water boils", "min", boilingMin);
    }

    private static void losses(Figures figures, Losses losses) {
        figures.less("tankKWh", "lost through the tank's lagging", KWH, losses.tank())
                .less("windowKWh", "lost through the panes", KWH, losses.window())
                .less("legsLitKWh", "lost by the legs, fire lit", KWH, losses.legsLit())
                .less("legsOutKWh", "lost by the legs, fire out", KWH, losses.legsOut())
                .less("steamKWh", "lost as steam", KWH, losses.steam())
                .plain("iceKWh", "given up by freezing, less than 0", KWH, losses.ice());
    }

    private static void litres(Figures figures, Litres litres) {
        figures.more("asWanted", "water as warm as wanted", "L", litres.asWanted())
                .less("tooCool", "water cooler than wanted", "L", litres.tooCool())
                .less("missing", "water that did not come", "L", litres.missing());
    }
}

package loftcoil.engine.study;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.loop.SteadyFlow;
import loftcoil.engine.sheet.HeatSpread;
import loftcoil.engine.sheet.LoopFigures;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.sheet.TapFigures;

/** All figures of a sheet in one list, in the order of the sheet, under the names its JSON has. */
final class SheetFigures {

    private static final double W_PER_KW = 1000;

    private SheetFigures() {}

    static List<SheetFigure> of(Sheet sheet) {
        List<SheetFigure> all = new ArrayList<>();
        loop(Figures.into(all, FigureGroup.LOOP, "loop."), sheet.loop());
        Figures.into(all, FigureGroup.NIGHT, "loop.coldFire.")
                .plain(
                        "flowKgPerS",
                        "flow, backward where less than 0",
                        "kg/s",
                        sheet.loop().coldFire().flowKgPerS())
                .less(
                        "lossW",
                        "heat taken from the tank",
                        "W",
                        sheet.loop().coldFire().lossW());
        sheet.spread().ifPresent(spread -> {
            end(Figures.into(all, FigureGroup.LEAST_HEAT, "loop.low."), spread.low());
            end(Figures.into(all, FigureGroup.MOST_HEAT, "loop.high."), spread.high());
        });
        Figures.into(all, FigureGroup.TANK, "tank.")
                .plain("fullMassKg", "full mass", "kg", sheet.tank().fullMassKg())
                .plain(
                        "expansionL",
                        "growth of the water from 10 to 90 °C",
                        "L",
                        sheet.tank().expansionL());
        sheet.taps().forEach(tap -> tap(Figures.into(all, FigureGroup.TAPS, "taps[" + tap.name() + "]."), tap));
        sheet.window().ifPresent(window -> Figures.into(all, FigureGroup.PANES, "window.")
                .less("uValueWPerM2K", "U value", "W/(m² K)", window.uValueWPerM2K())
                .more(
                        "transmittanceNormal",
                        "share of the sun that passes, square on",
                        "",
                        window.transmittanceNormal()));
        sheet.year().ifPresent(years -> YearFigures.add(all, years));
        return List.copyOf(all);
    }

    private static void loop(Figures figures, LoopFigures loop) {
        figures.more("flowKgPerS", "flow by mass", "kg/s", loop.flowKgPerS())
                .more("flowLPerMin", "flow", "L/min", loop.flowLPerMin())
                .plain("drivePa", "drive", "Pa", loop.drivePa())
                .plain("reynolds", "Reynolds number in the coil", "", loop.reynolds());
        loop.flow().ifPresent(flow -> flowing(figures, flow));
    }

    private static void flowing(Figures figures, SteadyFlow flow) {
        figures.more("heatKW", "heat of the coil", "kW", flow.heat().coilW() / W_PER_KW)
                .plain("coilInC", "into the coil", "°C", flow.coil().startC())
                .plain("coilOutC", "out of the coil", "°C", flow.coil().endC())
                .plain("returnC", "back at the tank", "°C", flow.returnC())
                .more(
                        "boilMarginK",
                        "least distance from boiling",
                        "K",
                        flow.boilMargin().marginK());
    }

    private static void end(Figures figures, HeatSpread.End end) {
        figures.more("heatKW", "heat of the coil", "kW", end.heatKW())
                .more(
                        "flowKgPerS",
                        "flow by mass",
                        "kg/s",
                        end.flow().map(SteadyFlow::flowKgPerS).orElse(0.0));
        end.flow().ifPresent(flow -> figures.plain(
                        "coilOutC", "out of the coil", "°C", flow.coil().endC())
                .more(
                        "boilMarginK",
                        "least distance from boiling",
                        "K",
                        flow.boilMargin().marginK()));
    }

    private static void tap(Figures figures, TapFigures tap) {
        Figures own = figures.of(tap.name());
        own.more("flowLPerMin", "flow", "L/min", tap.flowLPerMin())
                .plain("headKPa", "pressure, all taps shut", "kPa", tap.headKPa());
        tap.fillMin60L().ifPresent(minutes -> own.less("fillMin60L", "time to fill 60 L", "min", minutes));
    }
}

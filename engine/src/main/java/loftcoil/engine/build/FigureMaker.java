package loftcoil.engine.build;

import static loftcoil.engine.build.BuildFigure.between;
import static loftcoil.engine.build.BuildFigure.sure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.SteadyFlow;
import loftcoil.engine.loop.UncertaintyFactors;
import loftcoil.engine.run.MonthRow;
import loftcoil.engine.run.YearRun;
import loftcoil.engine.run.YearSpread;
import loftcoil.engine.sheet.Figure;
import loftcoil.engine.sheet.Figures;
import loftcoil.engine.sheet.HeatSpread;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.study.Doubt;
import loftcoil.engine.study.LoopDoubts;
import loftcoil.engine.study.LoopSpread;
import loftcoil.engine.study.Percentiles;
import loftcoil.engine.study.ProgressListener;
import loftcoil.engine.study.SpreadPlan;
import loftcoil.engine.tank.WaterHeat;
import loftcoil.engine.water.Water;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Sentences;

/** The figures of a sheet with their doubt. */
final class FigureMaker {

    private static final Sentences SENTENCES = Sentences.read(FigureMaker.class, "figures.properties");

    /** Enough that the ends of a spread move by less than what is shown of them; always from the same seed. */
    private static final SpreadPlan PLAN = new SpreadPlan(1000, 20, 1);

    private static final double LEAST_HEATING_K = 1;
    private static final double WARM_C = 55;
    private static final double L_PER_M3 = 1000;
    private static final double S_PER_H = 3600;
    private static final double TAP_DOUBT = 0.15;
    private static final double FLOW_DOUBT = 0.15;
    private static final String A_YEAR = "year";

    private final Sheet sheet;
    private final Design design;
    private final List<BuildFigure> figures = new ArrayList<>();

    private FigureMaker(Sheet sheet) {
        this.sheet = sheet;
        this.design = sheet.design();
    }

    static List<BuildFigure> of(Sheet sheet) {
        FigureMaker maker = new FigureMaker(sheet);
        maker.sheet.loop().flow().ifPresent(maker::loop);
        maker.night();
        maker.tank();
        maker.taps();
        maker.window();
        maker.sheet.year().ifPresent(maker::year);
        return maker.figures;
    }

    private void loop(SteadyFlow flow) {
        heat(flow);
        Doubt coil = heatFromFire() ? LoopDoubts.USUAL.coilHeat() : Doubt.none();
        LoopDoubts doubts = LoopDoubts.USUAL.withCoilHeat(coil);
        LoopSpread spread = LoopSpread.of(design.circuit(sheet.loop().tankC()), doubts, PLAN, ProgressListener.NONE)
                .result();
        MeasuredText from = SENTENCES.say("figure.chance", "samples", Measure.count(spread.samples()), "tank", tankC());
        figures.add(spread(Figures.FLOW, flow.flowLPerMin(), FLOW_DOUBT, litres(spread, flow), noSurer(from)));
        figures.add(spread(Figures.COIL_OUT, flow.coil().endC(), 0, spread.coilOutC(), from));
        MeasuredText boiling = spread.boilsShare() + spread.stillShare() > 0
                ? MeasuredText.of(
                        from,
                        " ",
                        SENTENCES.say(
                                "figure.some-boil",
                                "share",
                                new Measure(100 * (spread.boilsShare() + spread.stillShare()), MeasureKind.PERCENT)))
                : from;
        figures.add(spread(Figures.BOIL_MARGIN, flow.boilMargin().marginK(), 0, spread.boilMarginK(), boiling));
        heating(flow);
    }

    /** No water loop with a measured flow proves the model better than by {@link #FLOW_DOUBT}. */
    private static MeasuredText noSurer(MeasuredText from) {
        return MeasuredText.of(
                from,
                " ",
                SENTENCES.say("figure.flow-least", "doubt", new Measure(100 * FLOW_DOUBT, MeasureKind.PERCENT)));
    }

    private static Percentiles litres(LoopSpread spread, SteadyFlow flow) {
        double perKg = flow.flowLPerMin() / flow.flowKgPerS();
        Percentiles kg = spread.flowKgPerS();
        return new Percentiles(kg.p5() * perKg, kg.p25() * perKg, kg.p50() * perKg, kg.p75() * perKg, kg.p95() * perKg);
    }

    /** Never surer than the doubt. */
    private static BuildFigure spread(
            Figure<?> figure, double value, double doubt, Percentiles spread, MeasuredText from) {
        // A loop at the edge of boiling may lie outside the nine in ten of those that do not boil.
        double low = Math.min(value * (1 - doubt), spread.p5());
        double high = Math.max(value * (1 + doubt), spread.p95());
        return between(figure.label(), figure.measure(value), figure.measure(low), figure.measure(high), from);
    }

    private void heat(SteadyFlow flow) {
        Figure<?> heat = Figures.HEAT;
        Measure best = heat.measure(flow.heat().coilW() / 1000);
        if (sheet.spread().isPresent()) {
            HeatSpread spread = sheet.spread().get();
            figures.add(between(
                    heat.label(),
                    best,
                    heat.measure(spread.low().heatKW()),
                    heat.measure(spread.high().heatKW()),
                    SENTENCES.say("figure.heat-from-fire")));
        } else {
            figures.add(sure(heat.label(), best, SENTENCES.say("figure.heat-stated")));
        }
    }

    private void heating(SteadyFlow flow) {
        double coldC = design.site().coldSupplyC();
        if (!(WARM_C - coldC > LEAST_HEATING_K) || !(flow.heat().tankW() > 0)) {
            return;
        }
        double kg = design.tank().waterlineL() / L_PER_M3 * Water.densityKgPerM3(coldC);
        double heatJ = kg * (WaterHeat.jPerKg(WARM_C) - WaterHeat.jPerKg(coldC));
        String label = "hours of fire to warm the whole tank";
        Measure mid = new Measure(heatJ / flow.heat().tankW() / S_PER_H, MeasureKind.TIME_H);
        MeasuredText to = SENTENCES.say("figure.heating", "warm", Measure.celsius(WARM_C), "tank", tankC());
        Optional<SteadyFlow> low = sheet.spread().flatMap(spread -> spread.low().flow());
        Optional<SteadyFlow> high =
                sheet.spread().flatMap(spread -> spread.high().flow());
        if (low.isPresent() && high.isPresent() && low.get().heat().tankW() > 0) {
            figures.add(between(
                    label,
                    mid,
                    new Measure(heatJ / high.get().heat().tankW() / S_PER_H, MeasureKind.TIME_H),
                    new Measure(heatJ / low.get().heat().tankW() / S_PER_H, MeasureKind.TIME_H),
                    to));
        } else {
            figures.add(sure(label, mid, to));
        }
    }

    private void night() {
        Circuit out = design.circuitFireOut(sheet.loop().tankC());
        Doubt lagging = LoopDoubts.USUAL.heatLoss();
        figures.add(between(
                Figures.NIGHT_LOSS.label(),
                nightLoss(out),
                nightLoss(out.trimmed(new UncertaintyFactors(1, 1, lagging.lowTimes()))),
                nightLoss(out.trimmed(new UncertaintyFactors(1, 1, lagging.highTimes()))),
                SENTENCES.say("figure.night", "tank", tankC())));
    }

    private Measure tankC() {
        return Measure.celsius(sheet.loop().tankC());
    }

    private static Measure nightLoss(Circuit out) {
        return Figures.NIGHT_LOSS.measure(
                out.search().fromRest().map(flow -> -flow.heat().tankW()).orElse(0.0));
    }

    private void tank() {
        figures.add(sure(
                Figures.FULL_MASS.label(),
                Figures.FULL_MASS.measure(sheet.tank().fullMassKg()),
                SENTENCES.say("figure.full-tank")));
        figures.add(sure(
                Figures.GROWTH.label(),
                Figures.GROWTH.measure(sheet.tank().expansionL()),
                SENTENCES.say("figure.growth")));
    }

    private void taps() {
        sheet.taps().stream()
                .filter(tap -> tap.flowLPerMin() > 0)
                .forEach(tap -> figures.add(between(
                        Figures.TAP_FLOW.labelOf(tap.name()),
                        Figures.TAP_FLOW.measure(tap.flowLPerMin()),
                        Figures.TAP_FLOW.measure(tap.flowLPerMin() * (1 - TAP_DOUBT)),
                        Figures.TAP_FLOW.measure(tap.flowLPerMin() * (1 + TAP_DOUBT)),
                        SENTENCES.say("figure.tap", "doubt", new Measure(100 * TAP_DOUBT, MeasureKind.PERCENT)))));
    }

    private void window() {
        sheet.window()
                .ifPresent(window -> figures.add(sure(
                        Figures.SUN_THROUGH.label(),
                        Figures.SUN_THROUGH.measure(window.transmittanceNormal()),
                        SENTENCES.say("figure.panes"))));
    }

    private void year(YearSpread years) {
        MeasuredText from = SENTENCES.say(years.low().isPresent() ? "figure.year-between" : "figure.year");
        Figures.MONTH.stream()
                .filter(figure -> figure.main() && !figure.equals(Figures.WOOD))
                .forEach(figure -> figures.add(year(years, figure, from)));
        if (years.mid().woodKg() > 0) {
            figures.add(sure(
                    Figures.WOOD.labelOf(A_YEAR),
                    Figures.WOOD.measure(years.mid().woodKg()),
                    SENTENCES.say("figure.wood")));
        }
    }

    private static BuildFigure year(YearSpread years, Figure<MonthRow> figure, MeasuredText from) {
        String label = figure.labelOf(A_YEAR);
        Measure mid = yearOf(figure, years.mid());
        return years.low().isPresent() && years.high().isPresent()
                ? between(
                        label,
                        mid,
                        yearOf(figure, years.low().get()),
                        yearOf(figure, years.high().get()),
                        from)
                : sure(label, mid, from);
    }

    private static Measure yearOf(Figure<MonthRow> figure, YearRun run) {
        return figure.measure(figure.value().applyAsDouble(run.whole()));
    }

    private boolean heatFromFire() {
        return design.coil().heatKW().isEmpty();
    }
}

package loftcoil.engine.build;

import static loftcoil.engine.build.BuildFigure.between;
import static loftcoil.engine.build.BuildFigure.sure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import loftcoil.engine.design.Design;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.SteadyFlow;
import loftcoil.engine.loop.UncertaintyFactors;
import loftcoil.engine.run.YearRun;
import loftcoil.engine.run.YearSpread;
import loftcoil.engine.sheet.HeatSpread;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.study.Doubt;
import loftcoil.engine.study.LoopDoubts;
import loftcoil.engine.study.LoopSpread;
import loftcoil.engine.study.Percentiles;
import loftcoil.engine.study.ProgressListener;
import loftcoil.engine.study.SpreadPlan;
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
    private static final double J_PER_L_K = 4180;
    private static final double S_PER_H = 3600;
    private static final double TAP_DOUBT = 0.15;

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
        LoopDoubts usual = LoopDoubts.USUAL;
        LoopDoubts doubts =
                new LoopDoubts(coil, usual.roughness(), usual.fittings(), usual.heatLoss(), usual.weatherM());
        LoopSpread spread = LoopSpread.of(design.circuit(sheet.loop().tankC()), doubts, PLAN, ProgressListener.NONE)
                .result();
        MeasuredText from = SENTENCES.say("figure.chance", "samples", Measure.count(spread.samples()), "tank", tankC());
        figures.add(spread(
                "flow of the lit loop", flow.flowLPerMin(), litres(spread, flow), MeasureKind.FLOW_L_PER_MIN, from));
        figures.add(spread("water out of the coil", flow.coil().endC(), spread.coilOutC(), MeasureKind.TEMP_C, from));
        MeasuredText boiling = spread.boilsShare() + spread.stillShare() > 0
                ? MeasuredText.of(
                        from,
                        " ",
                        SENTENCES.say(
                                "figure.some-boil",
                                "share",
                                new Measure(100 * (spread.boilsShare() + spread.stillShare()), MeasureKind.PERCENT)))
                : from;
        figures.add(spread(
                "least distance from boiling",
                flow.boilMargin().marginK(),
                spread.boilMarginK(),
                MeasureKind.TEMP_DIFF_K,
                boiling));
        heating(flow);
    }

    private static Percentiles litres(LoopSpread spread, SteadyFlow flow) {
        double perKg = flow.flowLPerMin() / flow.flowKgPerS();
        Percentiles kg = spread.flowKgPerS();
        return new Percentiles(kg.p5() * perKg, kg.p25() * perKg, kg.p50() * perKg, kg.p75() * perKg, kg.p95() * perKg);
    }

    private static BuildFigure spread(
            String label, double value, Percentiles spread, MeasureKind kind, MeasuredText from) {
        // A loop at the edge of boiling may lie outside the nine in ten of those that do not boil.
        double low = Math.min(value, spread.p5());
        double high = Math.max(value, spread.p95());
        return between(label, new Measure(value, kind), new Measure(low, kind), new Measure(high, kind), from);
    }

    private void heat(SteadyFlow flow) {
        double heatW = flow.heat().coilW();
        if (sheet.spread().isPresent()) {
            HeatSpread spread = sheet.spread().get();
            figures.add(between(
                    "heat of the coil",
                    Measure.watts(heatW),
                    Measure.watts(1000 * spread.low().heatKW()),
                    Measure.watts(1000 * spread.high().heatKW()),
                    SENTENCES.say("figure.heat-from-fire")));
        } else {
            figures.add(sure("heat of the coil", Measure.watts(heatW), SENTENCES.say("figure.heat-stated")));
        }
    }

    private void heating(SteadyFlow flow) {
        double riseK = WARM_C - design.site().coldSupplyC();
        if (!(riseK > LEAST_HEATING_K) || !(flow.heat().tankW() > 0)) {
            return;
        }
        double heatJ = design.tank().volumeL()
                * design.tank().waterlineM()
                / design.tank().heightM()
                * J_PER_L_K
                * riseK;
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
                "heat lost through the loop by night",
                Measure.watts(nightW(out)),
                Measure.watts(nightW(out.trimmed(new UncertaintyFactors(1, 1, lagging.lowTimes())))),
                Measure.watts(nightW(out.trimmed(new UncertaintyFactors(1, 1, lagging.highTimes())))),
                SENTENCES.say("figure.night", "tank", tankC())));
    }

    private Measure tankC() {
        return Measure.celsius(sheet.loop().tankC());
    }

    private static double nightW(Circuit out) {
        return out.search().fromRest().map(flow -> -flow.heat().tankW()).orElse(0.0);
    }

    private void tank() {
        figures.add(sure(
                "full tank weighs", Measure.kilograms(sheet.tank().fullMassKg()), SENTENCES.say("figure.full-tank")));
        figures.add(sure("water grows by", Measure.litres(sheet.tank().expansionL()), SENTENCES.say("figure.growth")));
    }

    private void taps() {
        sheet.taps().stream()
                .filter(tap -> tap.flowLPerMin() > 0)
                .forEach(tap -> figures.add(between(
                        "flow at " + tap.name(),
                        Measure.litresPerMin(tap.flowLPerMin()),
                        Measure.litresPerMin(tap.flowLPerMin() * (1 - TAP_DOUBT)),
                        Measure.litresPerMin(tap.flowLPerMin() * (1 + TAP_DOUBT)),
                        SENTENCES.say("figure.tap", "doubt", new Measure(100 * TAP_DOUBT, MeasureKind.PERCENT)))));
    }

    private void window() {
        sheet.window()
                .ifPresent(window -> figures.add(sure(
                        "sun that passes the panes, square on",
                        new Measure(100 * window.transmittanceNormal(), MeasureKind.PERCENT),
                        SENTENCES.say("figure.panes"))));
    }

    private void year(YearSpread years) {
        MeasuredText from = SENTENCES.say(years.low().isPresent() ? "figure.year-between" : "figure.year");
        year(years, "heat from the coil in a year", run -> run.energy().coilKWh(), MeasureKind.ENERGY_KWH, from);
        year(years, "heat from the sun in a year", run -> run.energy().solarKWh(), MeasureKind.ENERGY_KWH, from);
        year(years, "heat missing at the taps in a year", YearRun::shortfallKWh, MeasureKind.ENERGY_KWH, from);
        year(years, "hottest water in the tank", YearRun::hottestC, MeasureKind.TEMP_C, from);
        if (years.mid().woodKg() > 0) {
            figures.add(sure("wood in a year", Measure.kilograms(years.mid().woodKg()), SENTENCES.say("figure.wood")));
        }
    }

    private void year(
            YearSpread years, String label, ToDoubleFunction<YearRun> of, MeasureKind kind, MeasuredText from) {
        Measure mid = new Measure(of.applyAsDouble(years.mid()), kind);
        if (years.low().isPresent() && years.high().isPresent()) {
            figures.add(between(
                    label,
                    mid,
                    new Measure(of.applyAsDouble(years.low().get()), kind),
                    new Measure(of.applyAsDouble(years.high().get()), kind),
                    from));
        } else {
            figures.add(sure(label, mid, from));
        }
    }

    private boolean heatFromFire() {
        return design.coil().heatKW().isEmpty();
    }
}

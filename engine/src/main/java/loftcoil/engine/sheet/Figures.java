package loftcoil.engine.sheet;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import loftcoil.engine.caution.HarderCase;
import loftcoil.engine.design.ColdNight;
import loftcoil.engine.design.ColdNight.Frozen;
import loftcoil.engine.loop.Boils;
import loftcoil.engine.run.ClearSpell;
import loftcoil.engine.run.DullWeek;
import loftcoil.engine.run.Losses;
import loftcoil.engine.run.MonthRow;
import loftcoil.engine.start.Starts;
import loftcoil.engine.sun.Weather;
import loftcoil.engine.words.MeasureKind;

/**
 * All figures there are: key, label, kind, decimal places, which way is better, value. Text, JSON, panel, comparison and build
 * sheet go by these lists; to add a figure is to add a row.
 */
public final class Figures {

    /** Heat of the lit coil. */
    public static final Figure<LitLoop> HEAT = Figure.of(
                    "heatKW", "heat of the coil", MeasureKind.POWER_KW, 2, LitLoop::heatKW)
            .more()
            .first();

    /** Flow of the lit loop. */
    public static final Figure<LitLoop> FLOW = Figure.of(
                    "flowLPerMin", "flow round the loop", MeasureKind.FLOW_L_PER_MIN, 2, LitLoop::flowLPerMin)
            .more()
            .first();

    /** Water out of the lit coil. */
    public static final Figure<LitLoop> COIL_OUT = Figure.of(
                    "coilOutC", "water out of the coil", MeasureKind.TEMP_C, 1, LitLoop::coilOutC)
            .first();

    /** How far from boiling the lit loop is where it is nearest. */
    public static final Figure<LitLoop> BOIL_MARGIN = Figure.of(
                    "boilMarginK", "least distance from boiling", MeasureKind.TEMP_DIFF_K, 1, LitLoop::boilMarginK)
            .more()
            .first()
            .noted(loop -> loop.flow().map(flow -> flow.boilMargin().where()).orElse(""));

    /** A lit loop. */
    public static final List<Figure<LitLoop>> LOOP = List.of(
            HEAT,
            Figure.of("flowKgPerS", "flow round the loop by mass", MeasureKind.FLOW_KG_PER_S, 4, LitLoop::flowKgPerS)
                    .more(),
            FLOW,
            Figure.of("drivePa", "drive", MeasureKind.PRESSURE_PA, 0, LitLoop::drivePa)
                    .first(),
            Figure.of("reynolds", "Reynolds number in the coil", MeasureKind.NONE, 0, LitLoop::reynolds),
            Figure.of("coilInC", "water into the coil", MeasureKind.TEMP_C, 1, LitLoop::coilInC),
            COIL_OUT,
            Figure.<LitLoop>of(
                    "coilRiseK",
                    "warming in the coil",
                    MeasureKind.TEMP_DIFF_K,
                    1,
                    loop -> loop.flowing(
                            flow -> flow.coil().endC() - flow.coil().startC())),
            Figure.of("returnC", "water back at the tank", MeasureKind.TEMP_C, 1, LitLoop::returnC),
            BOIL_MARGIN,
            Figure.<LitLoop>of(
                            "lostW",
                            "heat lost on the way",
                            MeasureKind.POWER_W,
                            0,
                            loop -> loop.flowing(flow -> flow.heat().lostW()))
                    .less(),
            Figure.<LitLoop>of(
                            "intoTankKW",
                            "heat into the tank",
                            MeasureKind.POWER_KW,
                            2,
                            loop -> loop.flowing(flow -> flow.heat().tankW() / 1000))
                    .more()
                    .first());

    /** What the loop takes from the tank with the fire out. */
    public static final Figure<ColdFire> NIGHT_LOSS = Figure.of(
                    "lossW", "heat lost through the loop by night", MeasureKind.POWER_W, 1, ColdFire::lossW)
            .less()
            .first()
            .noted(night -> night.stands() ? "the water stands still" : "");

    /** The loop with the fire out. */
    public static final List<Figure<ColdFire>> NIGHT = List.of(
            Figure.of("flowKgPerS", "flow round the loop by night", MeasureKind.FLOW_KG_PER_S, 5, ColdFire::flowKgPerS)
                    .noted(night -> night.stands()
                            ? "the water stands still"
                            : night.flowKgPerS() < 0 ? "backward" : "forward"),
            NIGHT_LOSS);

    /** The loop in the worst of the states in which it is judged. */
    public static final List<Figure<HarderCase>> WORST = List.of(
            Figure.of(
                            "boilMarginK",
                            "least distance from boiling, worst",
                            MeasureKind.TEMP_DIFF_K,
                            1,
                            JudgedStates::boilMarginK)
                    .more()
                    .first(),
            Figure.<HarderCase>of("tankC", "tank at its worst", MeasureKind.TEMP_C, 0, HarderCase::tankC)
                    .noted(worst -> worst.search().circulates()
                            ? ""
                            : worst.search().circulation() instanceof Boils ? "the loop boils" : "nothing flows"),
            Figure.of("heatFactor", "heat over the usual then", MeasureKind.NONE, 2, HarderCase::heatFactor));

    /** The metal of the coil. */
    public static final List<Figure<CoilFigures>> COIL = List.of(
            Figure.of("wallC", "coil's wall at the water, mean", MeasureKind.TEMP_C, 0, CoilFigures::wallC)
                    .less(),
            Figure.of(
                            "wallHottestC",
                            "coil's wall at the water, hottest side",
                            MeasureKind.TEMP_C,
                            0,
                            CoilFigures::wallHottestC)
                    .less(),
            Figure.of(
                    "wallColdestC", "coil's wall where water enters", MeasureKind.TEMP_C, 0, CoilFigures::wallColdestC),
            Figure.of(
                            "dryFromTankC",
                            "tank from which it sweats no more",
                            MeasureKind.TEMP_C,
                            0,
                            CoilFigures::dryFromTankC)
                    .less(),
            Figure.of("boilingC", "boiling point in the coil", MeasureKind.TEMP_C, 1, CoilFigures::boilingC),
            Figure.of("singsFromTankC", "tank from which it sings", MeasureKind.TEMP_C, 0, CoilFigures::singsFromTankC)
                    .more(),
            Figure.of(
                            "burnoutShare",
                            "heat there over that of burnout",
                            MeasureKind.SHARE,
                            0,
                            CoilFigures::burnoutShare)
                    .less()
                    .noted(coil -> coil.burnoutNoRisk()
                            ? "no risk as long as water is in it"
                            : "near burnout: less fire or more tube"));

    /** Lime in the coil. */
    public static final List<Figure<ScaleFigures>> SCALE = List.of(
            Figure.<ScaleFigures>of(
                            "kgPerYear", "lime in the coil, a year", MeasureKind.MASS_KG, 2, scale -> scale.lime()
                                    .kgPerYear())
                    .less(),
            Figure.<ScaleFigures>of(
                            "mmPerYear",
                            "its layer in the first year",
                            MeasureKind.SMALL_LENGTH_MM,
                            2,
                            scale -> scale.lime().mmPerYear())
                    .less(),
            Figure.<ScaleFigures>of(
                            "yearsToHalfBore", "years to half the bore", MeasureKind.NONE, 1, scale -> scale.lime()
                                    .yearsToHalfBore())
                    .more()
                    .noted(scale -> "a third to three times"),
            Figure.<ScaleFigures>of(
                            "flowAtHalfBoreLPerMin",
                            "flow then",
                            MeasureKind.FLOW_L_PER_MIN,
                            2,
                            ScaleFigures::flowLPerMin)
                    .more(),
            Figure.of(
                            "coilRiseAtHalfBoreK",
                            "warming in the coil then",
                            MeasureKind.TEMP_DIFF_K,
                            1,
                            ScaleFigures::riseK)
                    .less());

    /** What the coil leaves for the flue. */
    public static final List<Figure<FireFigures>> FLUE = List.of(
            Figure.of("gasC", "gas as it leaves the heater", MeasureKind.TEMP_C, 0, FireFigures::gasC),
            Figure.of("gasTopC", "coolest gas in the flue, as best known", MeasureKind.TEMP_C, 0, FireFigures::gasTopC),
            Figure.of("gasLowC", "the same at the low end of doubt", MeasureKind.TEMP_C, 0, FireFigures::gasLowC)
                    .more(),
            Figure.of("dewC", "dew point of the gas", MeasureKind.TEMP_C, 0, FireFigures::dewC));

    /** The weighed charge of the first fire. */
    public static final List<Figure<FirstCharge>> FIRST_FIRE = List.of(
            Figure.of("coilWaterKg", "water in the coil", MeasureKind.MASS_KG, 2, FirstCharge::coilWaterKg),
            Figure.of("share", "share of the wood's heat reckoned with", MeasureKind.SHARE, 0, FirstCharge::share),
            Figure.of("chargeG", "weighed charge, at most", MeasureKind.SMALL_MASS_G, 0, FirstCharge::chargeG));

    /** Mass of the full tank. */
    public static final Figure<TankFigures> FULL_MASS = Figure.of(
                    "fullMassKg", "mass of the full tank", MeasureKind.MASS_KG, 0, TankFigures::fullMassKg)
            .first();

    /** Growth of the water in the tank. */
    public static final Figure<TankFigures> GROWTH = Figure.of(
                    "expansionL", "growth of the heated water", MeasureKind.VOLUME_L, 1, TankFigures::expansionL)
            .first()
            .noted(tank -> "from 10 to 90 °C");

    /** The tank. */
    public static final List<Figure<TankFigures>> TANK = List.of(
            FULL_MASS,
            GROWTH,
            Figure.of("waterlineL", "water to the waterline", MeasureKind.VOLUME_L, 0, TankFigures::waterlineL),
            Figure.of("lossAt60W", "heat lost by coat and ports", MeasureKind.POWER_W, 0, TankFigures::lossAt60W)
                    .less()
                    .noted(tank -> "whole tank at 60 °C, without its panes"));

    /** Flow of a tap. */
    public static final Figure<TapFigures> TAP_FLOW = Figure.of(
                    "flowLPerMin", "flow", MeasureKind.FLOW_L_PER_MIN, 1, TapFigures::flowLPerMin)
            .more()
            .noted(tap -> tap.flowLPerMin() > 0 ? "" : "nothing runs: not below the waterline");

    /** A tap. */
    public static final List<Figure<TapFigures>> TAP = List.of(
            TAP_FLOW,
            Figure.of(
                            "flowAllOpenLPerMin",
                            "flow, all taps open",
                            MeasureKind.FLOW_L_PER_MIN,
                            1,
                            TapFigures::allOpenLPerMin)
                    .more()
                    .noted(TapFigures::allOpenNote),
            Figure.of("headKPa", "pressure, all taps shut", MeasureKind.PRESSURE_KPA, 1, TapFigures::headKPa),
            Figure.<TapFigures>of("fillMin60L", "time to fill 60 L", MeasureKind.TIME_MIN, 1, tap -> tap.fillMin60L()
                            .orElse(Double.NaN))
                    .less());

    /** Sun that the panes let through. */
    public static final Figure<WindowFigures> SUN_THROUGH = Figure.of(
                    "transmittanceNormal",
                    "sun that passes the panes, square on",
                    MeasureKind.SHARE,
                    0,
                    WindowFigures::transmittanceNormal)
            .more();

    /** The panes. */
    public static final List<Figure<WindowFigures>> PANES = List.of(
            Figure.of("uValueWPerM2K", "U value of the panes", MeasureKind.U_VALUE, 2, WindowFigures::uValueWPerM2K)
                    .less()
                    .first(),
            SUN_THROUGH,
            Figure.of("faceM2", "face of the tank that the sun sees", MeasureKind.AREA_M2, 2, WindowFigures::faceM2),
            Figure.of(
                            "creditedAreaM2",
                            "panes whose sun reaches the tank",
                            MeasureKind.AREA_M2,
                            2,
                            WindowFigures::creditedAreaM2)
                    .more(),
            paneAtItsHottest(1),
            paneAtItsHottest(2),
            paneAtItsHottest(3),
            paneAtItsHottest(4),
            Figure.of("toughenedPanes", "panes that must be toughened", MeasureKind.COUNT, 0, panes -> panes.hottest()
                    .toughened()));

    /** Wood of a month or year. */
    public static final Figure<MonthRow> WOOD = Figure.of(
                    "woodKg", "wood burnt", MeasureKind.MASS_KG, 0, MonthRow::woodKg)
            .less()
            .first()
            .headed("wood");

    /** A month or a year. */
    public static final List<Figure<MonthRow>> MONTH = List.of(
            kWh("solarKWh", "heat from the sun", 0, row -> row.energy().solarKWh())
                    .more()
                    .first()
                    .headed("sun"),
            kWh("coilKWh", "heat from the coil", 0, row -> row.energy().coilKWh())
                    .first()
                    .headed("coil"),
            kWh("usedKWh", "heat used at the taps", 0, row -> row.energy().usedKWh())
                    .more()
                    .first()
                    .headed("used"),
            kWh("lossKWh", "heat lost", 0, row -> row.energy().lossKWh()).less().headed("lost"),
            kWh("storedKWh", "heat in store, more at the end", 1, row -> row.energy()
                            .storedKWh())
                    .headed("stored"),
            kWh("shortfallKWh", "heat missing at the taps", 0, MonthRow::shortfallKWh)
                    .less()
                    .first()
                    .headed("short"),
            WOOD,
            Figure.of("hottestC", "hottest water in the tank", MeasureKind.TEMP_C, 1, MonthRow::hottestC)
                    .first()
                    .headed("top"),
            Figure.<MonthRow>of(
                            "boilingH",
                            "time in which water boils",
                            MeasureKind.TIME_H,
                            1,
                            row -> row.boilingMin() / 60)
                    .less()
                    .first()
                    .headed("boiling"),
            litres("steamL", "water lost as steam", MonthRow::steamL).less(),
            litres("litres.asWanted", "water as warm as wanted", row -> row.litres()
                            .asWanted())
                    .more()
                    .headed("hot"),
            litres("litres.tooCool", "water cooler than wanted", row -> row.litres()
                            .tooCool())
                    .less(),
            litres("litres.missing", "water that did not come", row -> row.litres()
                            .missing())
                    .less());

    /** Where the heat lost in a year goes. */
    public static final List<Figure<Losses>> LOSSES = List.of(
            Figure.of(
                            "losses.tankKWh",
                            "lost through the tank's coat and ports",
                            MeasureKind.ENERGY_KWH,
                            0,
                            Losses::tank)
                    .less(),
            Figure.of("losses.windowKWh", "lost through the panes", MeasureKind.ENERGY_KWH, 0, Losses::window)
                    .less(),
            Figure.of("losses.legsLitKWh", "lost by the legs, fire lit", MeasureKind.ENERGY_KWH, 0, Losses::legsLit)
                    .less(),
            Figure.of("losses.legsOutKWh", "lost by the legs, fire out", MeasureKind.ENERGY_KWH, 0, Losses::legsOut)
                    .less(),
            Figure.of("losses.steamKWh", "lost as steam", MeasureKind.ENERGY_KWH, 0, Losses::steam)
                    .less(),
            Figure.of("losses.iceKWh", "given up by freezing, less than 0", MeasureKind.ENERGY_KWH, 0, Losses::ice));

    /** The fire lit after rests. */
    public static final List<Figure<Starts>> STARTS = List.of(
            Figure.<Starts>of(
                            "slowestForwardMin",
                            "slowest start to flow forward",
                            MeasureKind.TIME_MIN,
                            0,
                            starts -> starts.slowestForwardMin().orElse(Double.NaN))
                    .less(),
            Figure.<Starts>of(
                            "soonestBoilingMin",
                            "soonest boiling in a start",
                            MeasureKind.TIME_MIN,
                            0,
                            starts -> starts.soonestBoilingMin().orElse(Double.NaN))
                    .more(),
            Figure.of("hottestC", "hottest water in a start", MeasureKind.TEMP_C, 0, Starts::hottestC)
                    .less());

    /** The coldest night and what it freezes. */
    public static final List<Figure<ColdNight>> FROST = List.of(
            Figure.of("nightC", "coldest night outside", MeasureKind.TEMP_C, 0, ColdNight::nightC)
                    .noted(night -> night.isSaid() ? "" : "a guess from the coldest month"),
            Figure.<ColdNight>of(
                            "legAroundC",
                            "around the leg that freezes first",
                            MeasureKind.TEMP_C,
                            0,
                            night -> first(night.firstLeg(), Frozen::aroundC))
                    .more(),
            Figure.<ColdNight>of(
                            "legZeroH",
                            "first leg at freezing point after",
                            MeasureKind.TIME_H,
                            1,
                            night -> first(night.firstLeg(), Frozen::zeroH))
                    .more(),
            Figure.<ColdNight>of(
                            "legThroughH",
                            "first leg frozen through after",
                            MeasureKind.TIME_H,
                            1,
                            night -> first(night.firstLeg(), Frozen::throughH))
                    .more(),
            Figure.of("tankAroundC", "around the tank then", MeasureKind.TEMP_C, 0, ColdNight::aroundTankC)
                    .more(),
            Figure.<ColdNight>of(
                            "tankZeroH",
                            "tank at freezing point after",
                            MeasureKind.TIME_H,
                            0,
                            night -> first(night.tankFreezes(), Frozen::zeroH))
                    .more(),
            Figure.<ColdNight>of(
                            "tankThroughH",
                            "tank frozen through after",
                            MeasureKind.TIME_H,
                            0,
                            night -> first(night.tankFreezes(), Frozen::throughH))
                    .more());

    /** The hottest clear week. */
    public static final List<Figure<ClearSpell>> CLEAR_WEEK = List.of(
            Figure.<ClearSpell>of(
                            "hottestTankC",
                            "hottest water after a clear week",
                            MeasureKind.TEMP_C,
                            1,
                            ClearSpell::hottestTankC)
                    .less()
                    .noted(week -> "the week from the middle of " + monthName(week.month())),
            Figure.of(
                    "hottestDrawC", "hottest water at the draw port", MeasureKind.TEMP_C, 1, ClearSpell::hottestDrawC),
            Figure.of("days", "clear days on end", MeasureKind.COUNT, 0, week -> ClearSpell.DAYS),
            Figure.of("awayDays", "of them with nobody at home", MeasureKind.COUNT, 0, week -> ClearSpell.AWAY_DAYS),
            Figure.of("inMonth", "month of the clear week", MeasureKind.COUNT, 0, ClearSpell::month));

    /** The worst dull week. */
    public static final List<Figure<DullWeek>> DULL_WEEK = List.of(
            Figure.<DullWeek>of(
                            "shortShare",
                            "heat missing at the taps in a dull week",
                            MeasureKind.SHARE,
                            0,
                            DullWeek::shortShare)
                    .less()
                    .noted(week -> "the week from the middle of " + monthName(week.month())),
            Figure.of(
                    "meanShortShare",
                    "the same on that month's mean days",
                    MeasureKind.SHARE,
                    0,
                    DullWeek::meanShortShare),
            Figure.of("sunShare", "its sun over the mean", MeasureKind.SHARE, 0, week -> Weather.DULL_SHARE),
            Figure.of("inMonth", "month of the dull week", MeasureKind.COUNT, 0, DullWeek::month));

    private Figures() {}

    private static double first(Optional<Frozen> frozen, ToDoubleFunction<Frozen> value) {
        return frozen.map(value::applyAsDouble).orElse(Double.NaN);
    }

    private static String monthName(int month) {
        return Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    private static Figure<WindowFigures> paneAtItsHottest(int fromTank) {
        return Figure.<WindowFigures>of(
                        "pane" + fromTank + "C",
                        "pane " + fromTank + " from the tank, at its hottest",
                        MeasureKind.TEMP_C,
                        0,
                        panes -> panes.paneC(fromTank))
                .less()
                .noted(panes -> "tank boiling, full sun, the coldest air");
    }

    private static Figure<MonthRow> kWh(String key, String label, int decimals, ToDoubleFunction<MonthRow> value) {
        return Figure.of(key, label, MeasureKind.ENERGY_KWH, decimals, value);
    }

    private static Figure<MonthRow> litres(String key, String label, ToDoubleFunction<MonthRow> value) {
        return Figure.of(key, label, MeasureKind.VOLUME_L, 0, value);
    }

    /** The figures that a sheet has, in its order. */
    public static List<SheetFigure> of(Sheet sheet) {
        List<SheetFigure> all = new ArrayList<>();
        add(all, FigureGroup.LOOP, LOOP, sheet.loop());
        add(all, FigureGroup.NIGHT, NIGHT, sheet.loop().coldFire());
        sheet.starts().ifPresent(starts -> add(all, FigureGroup.STARTS, STARTS, starts));
        sheet.spread().ifPresent(spread -> {
            add(all, FigureGroup.LEAST_HEAT, LOOP, spread.low());
            add(all, FigureGroup.MOST_HEAT, LOOP, spread.high());
        });
        sheet.states().worst().ifPresent(worst -> add(all, FigureGroup.WORST, WORST, worst));
        sheet.coil().ifPresent(coil -> add(all, FigureGroup.COIL, COIL, coil));
        sheet.scale().ifPresent(scale -> add(all, FigureGroup.SCALE, SCALE, scale));
        sheet.flue().ifPresent(flue -> add(all, FigureGroup.FLUE, FLUE, flue));
        sheet.firstCharge().ifPresent(charge -> add(all, FigureGroup.FIRST_FIRE, FIRST_FIRE, charge));
        add(all, FigureGroup.TANK, TANK, sheet.tank());
        add(all, FigureGroup.FROST, FROST, ColdNight.of(sheet.design()));
        sheet.taps().forEach(tap -> addOf(all, FigureGroup.TAPS, tap.name(), tap.name(), TAP, tap));
        sheet.window().ifPresent(window -> add(all, FigureGroup.PANES, PANES, window));
        sheet.year().ifPresent(years -> {
            add(all, FigureGroup.YEAR, MONTH, years.mid().whole());
            add(all, FigureGroup.YEAR, LOSSES, years.mid().energy().losses());
            years.weeks().clear().ifPresent(week -> add(all, FigureGroup.CLEAR_WEEK, CLEAR_WEEK, week));
            years.weeks().dull().ifPresent(week -> add(all, FigureGroup.DULL_WEEK, DULL_WEEK, week));
            years.low().ifPresent(low -> add(all, FigureGroup.YEAR_LEAST_HEAT, MONTH, low.whole()));
            years.high().ifPresent(high -> add(all, FigureGroup.YEAR_MOST_HEAT, MONTH, high.whole()));
            years.mid()
                    .months()
                    .forEach(row -> addOf(
                            all,
                            FigureGroup.MONTHS,
                            Integer.toString(row.month() - 1),
                            monthName(row.month()),
                            MONTH,
                            row));
        });
        return List.copyOf(all);
    }

    /** Those of {@link #of} that say something to a person: of a loop in which nothing flows its heat alone. */
    public static List<SheetFigure> toRead(Sheet sheet) {
        Set<FigureGroup> still = EnumSet.noneOf(FigureGroup.class);
        if (!sheet.loop().circulates()) {
            still.add(FigureGroup.LOOP);
        }
        sheet.spread().filter(spread -> !spread.low().circulates()).ifPresent(low -> still.add(FigureGroup.LEAST_HEAT));
        sheet.spread()
                .filter(spread -> !spread.high().circulates())
                .ifPresent(high -> still.add(FigureGroup.MOST_HEAT));
        return of(sheet).stream()
                .filter(figure -> figure.figure().equals(HEAT) || !still.contains(figure.group()))
                .toList();
    }

    private static <S> void add(List<SheetFigure> all, FigureGroup group, List<Figure<S>> list, S source) {
        add(all, group, group.path(), "", list, source);
    }

    private static <S> void addOf(
            List<SheetFigure> all, FigureGroup group, String item, String whose, List<Figure<S>> list, S source) {
        add(all, group, group.path() + "[" + item + "].", whose, list, source);
    }

    private static <S> void add(
            List<SheetFigure> all, FigureGroup group, String path, String whose, List<Figure<S>> list, S source) {
        for (Figure<S> figure : list) {
            double value = figure.value().applyAsDouble(source);
            if (!Double.isNaN(value)) {
                String note = figure.note().apply(source);
                all.add(new SheetFigure(path + figure.key(), group, figure, figure.labelOf(whose), value, note));
            }
        }
    }
}

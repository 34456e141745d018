package loftcoil.engine.loop;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Sentences;

/** Turns what the scans found into one of the three findings, in words a builder can act on. */
final class Judgement {

    private static final Sentences SENTENCES = Sentences.read(Judgement.class, "findings.properties");

    private final CircuitPlan plan;
    private final Setting setting;

    private Judgement(CircuitPlan plan, Setting setting) {
        this.plan = plan;
        this.setting = setting;
    }

    static Circulation of(CircuitPlan plan, Setting setting, List<SteadyFlow> flows, RootScan forward) {
        Judgement judgement = new Judgement(plan, setting);
        Optional<SteadyFlow> stable = flows.stream()
                .filter(flow -> flow.flowKgPerS() > 0 && flow.stable())
                .findFirst();
        if (stable.isPresent()) {
            return circulates(stable.get());
        }
        Optional<RootScan.Edge> edge = forward.edge();
        if (edge.isPresent() && edge.get().freezes()) {
            return new Still(forward.bestDrivePa(), SENTENCES.say("loop.freezes"));
        }
        if (edge.isPresent() && edge.get().drivePa() > 0) {
            return judgement.boils(edge.get());
        }
        return judgement.still(forward.bestDrivePa());
    }

    private static Circulates circulates(SteadyFlow flow) {
        BoilMargin nearest = flow.boilMargin();
        return new Circulates(
                flow,
                SENTENCES.say(
                        "loop.circulates",
                        "flow",
                        aMinute(flow.flowLPerMin()),
                        "drive",
                        Measure.pascals(flow.drivePa()),
                        "out",
                        Measure.celsius(flow.coil().endC()),
                        "margin",
                        Measure.kelvins(nearest.marginK()),
                        "where",
                        nearest.where()));
    }

    private Boils boils(RootScan.Edge edge) {
        BoilMargin at = edge.margin();
        MeasuredText limit = at.marginK() > 0.01
                ? SENTENCES.say("loop.passes-formulas", "limit", Measure.celsius(Limits.FORMULA_C))
                : SENTENCES.say("loop.boils-at", "boiling", Measure.celsius(at.boilingC()));
        MeasuredText finding = SENTENCES.say(
                "loop.boils",
                "least",
                aMinute(litres(edge.signedFlow())),
                "limit",
                limit,
                "where",
                at.where(),
                "level",
                Measure.metres(at.levelM()),
                "drive",
                Measure.pascals(edge.drivePa()),
                "friction",
                Measure.pascals(edge.frictionPa()));
        return new Boils(at, edge.signedFlow(), edge.drivePa(), edge.frictionPa(), finding);
    }

    private Still still(double bestDrivePa) {
        LoopHeights at = plan.heights();
        double inletM = coilInletM();
        double outletM = inletM + plan.coil().riseM();
        double coilM = (inletM + outletM) / 2;
        MeasuredText stands = SENTENCES.say(
                "loop.still",
                "cause",
                SENTENCES.say(coilM > at.returnPortM() ? "loop.coil-above-port" : "loop.no-side-lighter"),
                "low",
                Measure.metres(Math.min(inletM, outletM)),
                "high",
                Measure.metres(Math.max(inletM, outletM)),
                "cold",
                Measure.metres(at.coldPortM()),
                "warm",
                Measure.metres(at.returnPortM()));
        boolean heated = setting.firing().lit() && setting.firing().heatW() > 0;
        MeasuredText finding = heated ? MeasuredText.of(stands, " ", SENTENCES.say("loop.boils-dry")) : stands;
        return new Still(Math.min(0, bestDrivePa), finding);
    }

    private static Measure aMinute(double litres) {
        return new Measure(litres, MeasureKind.FLOW_LITRES_A_MINUTE);
    }

    private double coilInletM() {
        return plan.heights().coldPortM()
                + plan.coldLegs().stream().mapToDouble(Pipe::riseM).sum();
    }

    private double litres(double flowKgPerS) {
        return flowKgPerS / LiquidTable.WATER.densityKgPerM3(setting.tankC()) * 60_000;
    }
}

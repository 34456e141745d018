package loftcoil.engine.loop;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Turns what the scans found into one of the three findings, in words a builder can act on. */
final class Judgement {

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
            return judgement.circulates(stable.get());
        }
        Optional<RootScan.Edge> edge = forward.edge();
        if (edge.isPresent() && edge.get().freezes()) {
            return new Still(forward.bestDrivePa(), judgement.freezingWords());
        }
        if (edge.isPresent() && edge.get().drivePa() > 0) {
            return judgement.boils(edge.get());
        }
        return judgement.still(forward.bestDrivePa());
    }

    private Circulates circulates(SteadyFlow flow) {
        String words = text(
                "The loop circulates: %.2f litres a minute go round, driven by %.0f Pa; the coil lets the water out at"
                        + " %.1f °C, %.1f °C below boiling at the nearest place (%s).",
                flow.flowLPerMin(),
                flow.drivePa(),
                flow.coil().endC(),
                flow.boilMargin().marginK(),
                flow.boilMargin().where());
        return new Circulates(flow, words);
    }

    private Boils boils(RootScan.Edge edge) {
        BoilMargin at = edge.margin();
        String limit = at.marginK() > 0.01
                ? text("passes %.0f °C, where these formulas end,", Limits.FORMULA_C)
                : text("boils, at %.1f °C,", at.boilingC());
        String words = text(
                "The loop boils. Below %.2f litres a minute the water %s at the %s (%.2f m above the floor). At that"
                        + " flow the loop has %.0f Pa to drive it and needs %.0f Pa, so it cannot flow that fast."
                        + " Lighting the fire is dangerous: steam can throw scalding water out or burst a pipe.",
                litres(edge.signedFlow()), limit, at.where(), at.levelM(), edge.drivePa(), edge.frictionPa());
        return new Boils(at, edge.signedFlow(), edge.drivePa(), edge.frictionPa(), words);
    }

    private Still still(double bestDrivePa) {
        LoopHeights at = plan.heights();
        double inletM = coilInletM();
        double outletM = inletM + plan.coil().riseM();
        double coilM = (inletM + outletM) / 2;
        String levels = text(
                "the coil stands at %.2f to %.2f m, the tank's ports at %.2f and %.2f m above the floor",
                Math.min(inletM, outletM), Math.max(inletM, outletM), at.coldPortM(), at.returnPortM());
        String cause = coilM > at.returnPortM()
                ? "the coil is above the tank's return port, so the warm water is already at the top and nothing pushes it on"
                : "no flow gives the hot side less weight than the cold side";
        String danger = setting.firing().lit() && setting.firing().heatW() > 0
                ? " Lighting the fire is dangerous: the water in the coil stands, boils, and the coil boils dry."
                : "";
        return new Still(
                Math.min(0, bestDrivePa), "The loop does not circulate: " + cause + " (" + levels + ")." + danger);
    }

    private String freezingWords() {
        return "The loop does not circulate: at every flow it could hold, water in it would freeze.";
    }

    private double coilInletM() {
        return plan.heights().coldPortM()
                + plan.coldLegs().stream().mapToDouble(Pipe::riseM).sum();
    }

    private double litres(double flowKgPerS) {
        return flowKgPerS / LiquidTable.densityKgPerM3(setting.tankC()) * 60_000;
    }

    private static String text(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }
}

package loftcoil.engine.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.loop.BoilMargin;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.FlowSearch;

/** The dangers of the loop itself: boiling, standing still, valves, air. */
public final class LoopCautions {

    /** Margin below which an uneven fire may bring the water to the boil, K. */
    private static final double SMALL_MARGIN_K = 10;

    private static final double LEAST_FALL_M = 0.001;
    private static final Set<String> VALVES = Set.of("gate", "ball", "check", "globe");
    private static final String PRACTICE = "common practice, no source";
    private static final String LOCAL = " Local codes and a licensed installer decide.";

    private final Design design;
    private final List<Caution> cautions = new ArrayList<>();

    private LoopCautions(Design design) {
        this.design = design;
    }

    /**
     * The cautions of a loop; none where nothing is wrong.
     *
     * @param design a checked design
     * @param circuit its circuit with the fire lit
     * @param search what the search of that circuit found
     */
    public static List<Caution> of(Design design, Circuit circuit, FlowSearch search) {
        LoopCautions found = new LoopCautions(design);
        found.circulation(search);
        found.falling();
        found.aboveWaterline(circuit.aboveWaterlineM());
        design.coldLegs().forEach(found::valves);
        design.hotLegs().forEach(found::valves);
        found.valves("the coil", design.coil().fittings().keySet());
        return List.copyOf(found.cautions);
    }

    private void circulation(FlowSearch search) {
        boolean fire = design.coil().heatKW().orElse(0) > 0;
        search.circulation()
                .match(
                        flow -> smallMargin(flow.flow().boilMargin()),
                        boils -> add("LC-BOIL", Severity.DANGER, boils.words() + LOCAL, "IAPWS-IF97, region 4"),
                        still -> add("LC-STILL", fire ? Severity.DANGER : Severity.NOTE, still.words(), PRACTICE));
    }

    private boolean smallMargin(BoilMargin margin) {
        return margin.marginK() < SMALL_MARGIN_K
                && add(
                        "LC-BOIL-NEAR",
                        Severity.DANGER,
                        text(
                                "The %s comes within %.1f K of boiling (%.1f °C there). A brisk fire or a little air"
                                        + " takes that up: scalding water and steam.",
                                margin.where(), margin.marginK(), margin.boilingC()),
                        "IAPWS-IF97, region 4; the 10 K are common practice, no source");
    }

    /** Air gathers where a hot leg turns down again on its way to the tank. */
    private void falling() {
        for (Leg leg : design.hotLegs()) {
            if (leg.riseM() < -LEAST_FALL_M
                    && design.tank().returnPortLevelM() > design.coil().outletM()) {
                add(
                        "LC-AIR",
                        Severity.WARNING,
                        text(
                                "'%s' falls by %.2f m on its way up to the tank: air gathers at the high point before"
                                        + " it and can stop the flow while the fire burns.",
                                leg.name(), -leg.riseM()),
                        PRACTICE);
            }
        }
    }

    private void aboveWaterline(double aboveM) {
        if (aboveM > 0) {
            add(
                    "LC-SIPHON",
                    Severity.WARNING,
                    text(
                            "The loop rises %.2f m above the waterline: the pressure there is below that of the air,"
                                    + " air comes out of the water and breaks the flow, and water boils sooner.",
                            aboveM),
                    PRACTICE);
        }
    }

    private void valves(Leg leg) {
        valves("'" + leg.name() + "'", leg.fittings().keySet());
    }

    private void valves(String where, Set<String> fittings) {
        for (String key : fittings) {
            if (VALVES.contains(key)) {
                add(
                        "LC-VALVE",
                        Severity.DANGER,
                        text(
                                "There is a valve (%s) in %s. Shut by mistake while the fire burns it makes a sealed"
                                        + " boiler that can burst. No valve belongs between the coil and the tank.",
                                key, where),
                        PRACTICE);
            }
        }
    }

    private boolean add(String code, Severity severity, String text, String source) {
        return cautions.add(new Caution(code, severity, text, source));
    }

    private static String text(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }
}

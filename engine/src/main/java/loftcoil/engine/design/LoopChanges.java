package loftcoil.engine.design;

import java.util.List;
import loftcoil.engine.pipe.TubeTable;

/** The named changes of coil and legs. */
final class LoopChanges {

    private LoopChanges() {}

    static void into(ChangeTable table) {
        coil(table);
        loop(table);
        sides(table);
        valves(table);
    }

    private static void coil(ChangeTable table) {
        table.number("coil.inletM", "Coil inlet above the floor", DesignRanges.LEVEL)
                .as(design -> design.coil().inletM(), Design::withCoilInletM);
        table.choice("coil.tube", "Tube of the coil", TubeTable.names())
                .as(design -> design.coil().tube(), Design::withCoilTube);
        table.number("coil.lengthM", "Length of tube in the coil", DesignRanges.COIL_LENGTH)
                .as(design -> design.coil().lengthM(), Design::withCoilLengthM);
        table.number("coil.heatKW", "Heat the coil gives the water", DesignRanges.HEAT)
                .as(WithFire::statedOrWorkedOutKW, Design::withCoilHeatKW);
        table.choice(
                        "coil.ends",
                        "Which end of the coil the cold pipe joins",
                        List.of(WithLoop.COLD_LOW, WithLoop.COLD_HIGH))
                .as(
                        design -> design.coil().riseM() >= 0 ? WithLoop.COLD_LOW : WithLoop.COLD_HIGH,
                        Design::withCoilEnds);
    }

    private static void loop(ChangeTable table) {
        table.choice("loop.tube", "Tube of every leg and the coil", TubeTable.names())
                .as(design -> design.coil().tube(), Design::withLoopTube);
        table.whole("loop.elbowsPerLeg", "Sharp 90° elbows in each leg", DesignRanges.FITTINGS)
                .as(design -> design.hotLegs().get(0).fittings().getOrDefault("elbow90", 0), Design::withElbowsPerLeg);
        table.number("loop.slopeMmPerM", "Slope of the flattest pipe in the loop", DesignRanges.SLOPE)
                .as(design -> Math.rint(Slopes.leastMmPerM(design) * 10) / 10, Design::withLoopSlopeMmPerM);
        table.number("loop.laggingMm", "Thickness of lagging on every leg", DesignRanges.LAGGING)
                .as(design -> laggingMm(design.hotLegs()), Design::withLoopLaggingMm);
        table.choice("loop.laggingMaterial", "Lagging of every leg", TankChanges.laggings())
                .as(design -> laggingMaterial(design.hotLegs()), Design::withLoopLaggingMaterial);
    }

    private static void sides(ChangeTable table) {
        table.choice("hotLegs.tube", "Tube of the hot legs", TubeTable.names())
                .as(design -> design.hotLegs().get(0).tube(), Design::withHotTube);
        table.choice("coldLegs.tube", "Tube of the cold legs", TubeTable.names())
                .as(design -> design.coldLegs().get(0).tube(), Design::withColdTube);
        table.number("hotLegs.laggingMm", "Thickness of lagging on the hot legs", DesignRanges.LAGGING)
                .as(design -> laggingMm(design.hotLegs()), Design::withHotLaggingMm);
        table.number("coldLegs.laggingMm", "Thickness of lagging on the cold legs", DesignRanges.LAGGING)
                .as(design -> laggingMm(design.coldLegs()), Design::withColdLaggingMm);
        table.choice("hotLegs.laggingMaterial", "Lagging of the hot legs", TankChanges.laggings())
                .as(design -> laggingMaterial(design.hotLegs()), Design::withHotLaggingMaterial);
        table.choice("coldLegs.laggingMaterial", "Lagging of the cold legs", TankChanges.laggings())
                .as(design -> laggingMaterial(design.coldLegs()), Design::withColdLaggingMaterial);
        table.number("hotLegs.runM", "Level run of the hot legs, seen from above", DesignRanges.RUN)
                .as(design -> Stretch.runM(design.hotLegs()), Design::withHotRunM);
        table.number("coldLegs.runM", "Level run of the cold legs, seen from above", DesignRanges.RUN)
                .as(design -> Stretch.runM(design.coldLegs()), Design::withColdRunM);
        table.number("hotLegs.aroundC", "Warmth round the first hot leg while the fire burns", DesignRanges.LEG_AROUND)
                .as(design -> design.hotLegs().get(0).aroundC(), Design::withRiserAroundC);
        table.choice("loop.besideFlue", "What stands beside the flue", List.of(WithLoop.HOT_LEG, WithLoop.COLD_LEG))
                .as(
                        design -> Stretch.coldBesideFlue(design) ? WithLoop.COLD_LEG : WithLoop.HOT_LEG,
                        Design::withBesideFlue);
    }

    private static void valves(ChangeTable table) {
        table.whole("loop.valves", "Gate valves in the loop", DesignRanges.VALVES)
                .as(LoopValves::count, Design::withLoopValves);
        table.choice("loop.valveOpening", "Gate valve in the cold pipe", LoopValves.OPENINGS)
                .as(LoopValves::opening, Design::withValveOpening);
        table.choice("loop.choked", "A joint of the hot pipe", List.of(LoopValves.CLEAR, LoopValves.CHOKED))
                .as(LoopValves::choked, Design::withChokedJoint);
    }

    private static double laggingMm(List<Leg> legs) {
        return legs.get(0).lagging().map(LaggingChoice::thicknessMm).orElse(0.0);
    }

    private static String laggingMaterial(List<Leg> legs) {
        return legs.get(0).lagging().map(LaggingChoice::material).orElse(TankChanges.BARE);
    }
}

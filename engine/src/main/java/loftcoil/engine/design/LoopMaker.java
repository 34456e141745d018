package loftcoil.engine.design;

import java.util.List;
import java.util.function.ToDoubleFunction;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.CircuitPlan;
import loftcoil.engine.loop.Firing;
import loftcoil.engine.loop.LoopHeights;
import loftcoil.engine.loop.LoopKind;
import loftcoil.engine.loop.Pipe;
import loftcoil.engine.loop.Setting;
import loftcoil.engine.pipe.Lagging;
import loftcoil.engine.pipe.TubeTable;

/** Makes the loop of a checked design. */
final class LoopMaker {

    private static final double W_PER_KW = 1000;

    private LoopMaker() {}

    static Circuit lit(Design design, double tankC) {
        Firing firing = Firing.lit(design.coil().heatKW().orElse(0) * W_PER_KW);
        Circuit circuit = Circuit.of(
                plan(Outdoors.at(design, Outdoors.usualC(design)), Leg::aroundC),
                new Setting(tankC, design.site().altitudeM(), firing));
        return design.coil().heatKW().isPresent()
                ? circuit
                : design.coilHeating().agreed(circuit).circuit();
    }

    static Circuit fireOut(Design design, double tankC) {
        double roomC = design.site().roomC();
        ToDoubleFunction<Leg> around = leg -> leg.aroundFireOutC().orElse(Math.min(leg.aroundC(), roomC));
        return Circuit.of(
                plan(Outdoors.at(design, Outdoors.usualC(design)), around),
                new Setting(tankC, design.site().altitudeM(), Firing.out()));
    }

    private static CircuitPlan plan(Design design, ToDoubleFunction<Leg> around) {
        Tank tank = design.tank();
        LoopHeights heights = new LoopHeights(tank.coldPortLevelM(), tank.returnPortLevelM(), tank.waterlineLevelM());
        Coil coil = design.coil();
        Pipe coilPipe = new Pipe(
                "coil",
                TubeTable.require("coil.tube", coil.tube()),
                coil.lengthM(),
                coil.riseM(),
                coil.fittings(),
                Lagging.NONE,
                design.site().roomC(),
                coil.windingM());
        return new CircuitPlan(
                heights,
                pipes("coldLegs", design.coldLegs(), around),
                coilPipe,
                pipes("hotLegs", design.hotLegs(), around),
                LoopKind.REAL);
    }

    private static List<Pipe> pipes(String side, List<Leg> legs, ToDoubleFunction<Leg> around) {
        return legs.stream()
                .map(leg -> new Pipe(
                        leg.name(),
                        TubeTable.require(side + ".tube", leg.tube()),
                        leg.lengthM(),
                        leg.riseM(),
                        leg.fittings(),
                        leg.lagging().map(LaggingChoice::lagging).orElse(Lagging.NONE),
                        around.applyAsDouble(leg)))
                .toList();
    }
}

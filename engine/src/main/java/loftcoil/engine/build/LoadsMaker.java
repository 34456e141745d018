package loftcoil.engine.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.build.Loads.Load;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.Safety;
import loftcoil.engine.design.Structure;
import loftcoil.engine.design.Tank;
import loftcoil.engine.design.Wheels;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.sun.Glass;
import loftcoil.engine.tank.Dwelling;
import loftcoil.engine.tank.FullWeight;
import loftcoil.engine.tank.TankPlace;
import loftcoil.engine.tank.UprightCylinder;
import loftcoil.engine.tank.WheelLoad;
import loftcoil.engine.water.Water;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;

/** Weighs the parts of a design. */
final class LoadsMaker {

    private static final double M3_PER_L = 0.001;

    /** Density of soda-lime glass, EN 572-1. */
    private static final double GLASS_KG_PER_M3 = 2500;

    private final Design design;
    private final List<Load> loads = new ArrayList<>();
    private final List<MeasuredText> notes = new ArrayList<>();

    private LoadsMaker(Design design) {
        this.design = design;
    }

    static Loads of(Design design) {
        LoadsMaker maker = new LoadsMaker(design);
        maker.tank();
        maker.pipes();
        maker.panes();
        maker.lastWords();
        return new Loads(maker.loads, maker.notes);
    }

    private void tank() {
        Tank tank = design.tank();
        UprightCylinder shape = new UprightCylinder(tank.volumeL() * M3_PER_L, tank.heightM());
        FullWeight full = FullWeight.of(shape, tank.emptyMassKg());
        double toWaterlineKg = tank.emptyMassKg() + full.waterKg() * tank.waterlineM() / tank.heightM();
        add("tank, empty", Measure.kilograms(tank.emptyMassKg()), "as the design says, lagging and ironwork included");
        add("tank, full to the waterline", Measure.kilograms(toWaterlineKg), "as it stands in use");
        add(
                "tank, full to the brim",
                Measure.kilograms(full.massKg()),
                "the heaviest it can get: a float valve that sticks, water at 10 °C");
        add("its weight as a force", new Measure(full.forceN(), MeasureKind.FORCE_N), "full to the brim");
        add(
                "on the floor under it",
                new Measure(full.pressureKNPerM2(), MeasureKind.LOAD_KN_PER_M2),
                "spread evenly over the round base; on bearers it is far more where they touch");
        structure(full);
        lean(shape, full);
    }

    private void structure(FullWeight full) {
        Optional<Structure> structure = design.safety().flatMap(Safety::structure);
        structure.filter(carries -> carries.bearers() > 0).ifPresent(carries -> {
            double eachN = full.perBearerN(carries.bearers());
            add(
                    "on each of " + carries.bearers() + " bearers",
                    new Measure(eachN, MeasureKind.FORCE_N),
                    "shared evenly");
            notes.add(MeasuredText.of(
                    "Bearers that give unevenly share unevenly: reckon one with half as much again, ",
                    new Measure(1.5 * eachN, MeasureKind.FORCE_N),
                    " (common practice, no source)."));
        });
        structure.ifPresent(carries -> notes.add(MeasuredText.of(
                "The place may carry ", Measure.kilograms(carries.loadLimitKg()), " by what the design says.")));
        structure.flatMap(Structure::wheels).ifPresent(wheels -> wheels(wheels, full));
    }

    private void wheels(Wheels wheels, FullWeight full) {
        Dwelling dwelling = new Dwelling(
                wheels.massKg(), wheels.centreHeightM(), wheels.centreAheadM(), wheels.hitchAheadM(), wheels.trackM());
        double heightM =
                wheels.floorAboveRoadM() + design.tank().baseM() + design.tank().heightM() / 2;
        WheelLoad load = WheelLoad.of(dwelling, full, new TankPlace(heightM, wheels.tankAheadM(), wheels.tankAsideM()));
        add("on the axle, tank full", new Measure(load.axleN(), MeasureKind.FORCE_N), "standing level, water at rest");
        add("on the hitch, tank full", new Measure(load.hitchN(), MeasureKind.FORCE_N), "negative where it lifts");
        add(
                "side tilt at which it tips",
                new Measure(load.tipsAtDeg(), MeasureKind.ANGLE_DEG),
                "rigid, no gust, water at rest; part full it sloshes and tips sooner");
        notes.add(MeasuredText.of("Drain the tank before the dwelling is moved."));
    }

    private void lean(UprightCylinder shape, FullWeight full) {
        double leanDeg = Math.toDegrees(Math.atan2(shape.diameterM() / 2, shape.heightM() / 2));
        add(
                "lean at which the tank alone falls over",
                new Measure(leanDeg, MeasureKind.ANGLE_DEG),
                "its middle over the edge of its base; less on bearers narrower than the tank");
        notes.add(MeasuredText.of(
                "Strap or frame the tank against sliding and tipping: a shove of a tenth of its weight is ",
                new Measure(full.forceN() / 10, MeasureKind.FORCE_N),
                ". In earthquake country the code asks for more."));
    }

    private void pipes() {
        List<Leg> legs = new ArrayList<>(design.coldLegs());
        legs.addAll(design.hotLegs());
        double all = 0;
        for (Leg leg : legs) {
            all += pipe("'" + leg.name() + "', with water", leg.tube(), leg.lengthM());
        }
        all += pipe("coil, with water", design.coil().tube(), design.coil().lengthM());
        add("whole loop, with water", Measure.kilograms(all), "copper and water; lagging and fittings not counted");
    }

    private double pipe(String what, String name, double lengthM) {
        Tube tube = TubeTable.require("tube", name);
        double kgPerM = tube.copperKgPerM() + tube.volumeM3PerM() * Water.densityKgPerM3(FullWeight.COLD_C);
        double kg = kgPerM * lengthM;
        loads.add(new Load(
                what,
                Measure.kilograms(kg),
                MeasuredText.of(
                        Measure.kilograms(kgPerM),
                        " a metre of " + name + ": ",
                        Measure.kilograms(tube.copperKgPerM()),
                        " copper, the rest water")));
        return kg;
    }

    private void panes() {
        design.window().ifPresent(window -> {
            double thickM = Glass.SALVAGED_FLOAT.thicknessM();
            add(
                    "panes",
                    Measure.kilograms(window.panes() * window.areaM2() * thickM * GLASS_KG_PER_M3),
                    "taken as 4 mm float glass, 2500 kg/m³; measure yours: frames come on top");
        });
    }

    private void lastWords() {
        notes.add(MeasuredText.of(
                "Dead load only: no people, snow, wind or safety factor. Whether the roof, loft or floor carries it is for a"
                        + " structural engineer."));
    }

    private void add(String what, Measure value, String why) {
        loads.add(new Load(what, value, MeasuredText.of(why)));
    }
}

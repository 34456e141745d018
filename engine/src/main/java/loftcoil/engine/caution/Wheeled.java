package loftcoil.engine.caution;

import loftcoil.engine.constant.Constants;
import loftcoil.engine.design.Structure;
import loftcoil.engine.design.Tank;
import loftcoil.engine.design.Wheels;
import loftcoil.engine.tank.TankPlace;
import loftcoil.engine.tank.Trailer;
import loftcoil.engine.tank.WheelLoad;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/** A full tank high in a dwelling on wheels. */
final class Wheeled implements CautionRule {

    /** Least side tilt it must stand, degrees; UN Regulation 111, from memory. */
    static final double LEAST_TILT_DEG = 23;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        facts.safety()
                .structure()
                .flatMap(Structure::wheels)
                .ifPresent(wheels -> judge(wheels, load(wheels, facts.design().tank()), findings));
    }

    static WheelLoad load(Wheels wheels, Tank tank) {
        Trailer trailer = new Trailer(
                wheels.massKg(), wheels.centreHeightM(), wheels.centreAheadM(), wheels.hitchAheadM(), wheels.trackM());
        double centreM = wheels.floorAboveRoadM() + tank.baseM() + tank.heightM() / 2;
        return WheelLoad.of(
                trailer, RoofLoad.full(tank), new TankPlace(centreM, wheels.tankAheadM(), wheels.tankAsideM()));
    }

    private static void judge(Wheels wheels, WheelLoad load, Findings findings) {
        if (load.tipsAtDeg() < LEAST_TILT_DEG) {
            findings.cautionAs(
                    CautionKind.TIP,
                    "side",
                    "tips",
                    new Measure(load.tipsAtDeg(), MeasureKind.ANGLE_DEG),
                    "least",
                    new Measure(LEAST_TILT_DEG, MeasureKind.ANGLE_DEG));
        } else if (load.hitchN() < 0) {
            findings.cautionAs(
                    CautionKind.TIP, "hitch", "hitch", Measure.kilograms(load.hitchN() / Constants.GRAVITY_M_PER_S2));
        }
        double axleKg = load.axleN() / Constants.GRAVITY_M_PER_S2;
        if (axleKg > wheels.axleLimitKg()) {
            findings.caution(
                    CautionKind.AXLE,
                    "axle",
                    Measure.kilograms(axleKg),
                    "most",
                    Measure.kilograms(wheels.axleLimitKg()));
        }
    }
}

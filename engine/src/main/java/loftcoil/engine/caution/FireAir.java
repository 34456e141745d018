package loftcoil.engine.caution;

import loftcoil.engine.design.FireRoom;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;

/** Carbon monoxide: a fire starved of air makes it, a flue that does not draw lets it into the room. */
final class FireAir implements CautionRule {

    /** Free opening for each kW of the fire, cm²; Approved Document J (England), table 1, tight houses; from memory. */
    static final double CM2_PER_KW = 5.5;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        if (!facts.heated()) {
            return;
        }
        facts.safety()
                .fireRoom()
                .ifPresentOrElse(room -> judge(room, facts, findings), () -> findings.ask("safety.fireRoom"));
    }

    private static void judge(FireRoom room, CautionFacts facts, Findings findings) {
        if (!room.carbonMonoxideAlarm()) {
            findings.caution(CautionKind.CO_ALARM);
        }
        facts.fire().ifPresent(fire -> {
            double neededCm2 = CM2_PER_KW * fire.fuelKW();
            if (room.airOpeningCm2() < neededCm2) {
                findings.caution(
                        CautionKind.CO_AIR,
                        "openings",
                        new Measure(room.airOpeningCm2(), MeasureKind.SMALL_AREA_CM2),
                        "fire",
                        new Measure(fire.fuelKW(), MeasureKind.POWER_KW),
                        "least",
                        new Measure(neededCm2, MeasureKind.SMALL_AREA_CM2));
            }
        });
        if (room.extractFan()) {
            findings.caution(
                    CautionKind.CO_FAN, "openings", new Measure(room.airOpeningCm2(), MeasureKind.SMALL_AREA_CM2));
        }
    }
}

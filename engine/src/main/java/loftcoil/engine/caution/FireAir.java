package loftcoil.engine.caution;

import loftcoil.engine.design.FireRoom;

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
                .ifPresentOrElse(
                        room -> judge(room, facts, findings),
                        () -> findings.ask(
                                "safety.fireRoom",
                                "Is there a carbon monoxide alarm in the room with the fire, and an opening for its air that cannot be shut?"
                                        + " The gas has no smell and kills in sleep."));
    }

    private static void judge(FireRoom room, CautionFacts facts, Findings findings) {
        if (!room.carbonMonoxideAlarm()) {
            findings.caution(
                    "LC-CO-ALARM",
                    "There is no carbon monoxide alarm in the room with the fire. The gas has no smell and kills in sleep.");
        }
        facts.fire().ifPresent(fire -> {
            double neededCm2 = CM2_PER_KW * fire.fuelKW();
            if (room.airOpeningCm2() < neededCm2) {
                findings.caution(
                        "LC-CO-AIR",
                        "The room has %.0f cm² of openings that cannot be shut; a fire of %.1f kW should have %.0f cm². Short"
                                + " of air it makes carbon monoxide and the flue does not draw.",
                        room.airOpeningCm2(),
                        fire.fuelKW(),
                        neededCm2);
            }
        });
        if (room.extractFan()) {
            findings.caution(
                    "LC-CO-FAN",
                    "A fan draws air out of the room with the fire, which has %.0f cm² of openings: it can pull the flue"
                            + " gas back into the room.",
                    room.airOpeningCm2());
        }
    }
}

package loftcoil.engine.sheet;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.ColdFeed;
import loftcoil.engine.design.Tank;
import loftcoil.engine.design.Vent;
import loftcoil.engine.sheet.Drawing.Bounds;
import loftcoil.engine.sheet.Drawing.Fixture;
import loftcoil.engine.sheet.Drawing.Point;
import loftcoil.engine.sheet.Drawing.TankBox;

/**
 * Vent, overflow and feed at the tank. The level of the vent's open end is true; where the others go through the wall is not part of a
 * design, so they stand where such things usually do.
 *
 * @param tank the tank
 * @param box where it is drawn
 */
record TankFixtures(Tank tank, TankBox box) {

    private static final double VENT_AT = 0.3;
    private static final double HOOK_M = 0.09;
    private static final double LID_OVER_M = 0.03;
    private static final double OUT_M = 0.12;
    private static final double CISTERN_M = 0.24;

    Optional<Fixture> vent(Vent vent) {
        return switch (vent.kind()) {
            case OPEN_PIPE -> Optional.of(openVent(vent.aboveWaterlineM().orElse(HOOK_M)));
            case LOOSE_LID ->
                Optional.of(new Fixture(
                        Fixture.Kind.LOOSE_LID,
                        List.of(
                                new Point(box.leftM() - LID_OVER_M, box.topM() + LID_OVER_M),
                                new Point(box.rightM() + LID_OVER_M, box.topM() + LID_OVER_M)),
                        Optional.empty()));
            case SEALED, NONE -> Optional.empty();
        };
    }

    private Fixture openVent(double aboveM) {
        double x = box.leftM() + VENT_AT * box.widthM();
        double open = tank.waterlineLevelM() + aboveM;
        // From the crown of a lying tank, from the lid of a standing one.
        double from = box.round() ? box.topM() - VENT_AT * VENT_AT * box.heightM() / 2 : box.topM();
        return new Fixture(
                Fixture.Kind.OPEN_VENT,
                List.of(
                        new Point(x, Math.min(from, open)),
                        new Point(x, open + HOOK_M / 2),
                        new Point(x - HOOK_M, open + HOOK_M / 2),
                        new Point(x - HOOK_M, open)),
                Optional.empty());
    }

    Optional<Fixture> overflow(ColdFeed feed) {
        if (feed.overflowBoreMm().orElse(0) <= 0) {
            return Optional.empty();
        }
        double levelM = tank.waterlineLevelM() + (box.topM() - tank.waterlineLevelM()) / 2;
        double wall = box.rightM() - box.insetM(levelM);
        return Optional.of(new Fixture(
                Fixture.Kind.OVERFLOW,
                List.of(
                        new Point(wall, levelM),
                        new Point(box.rightM() + OUT_M, levelM),
                        new Point(box.rightM() + OUT_M, levelM - HOOK_M)),
                Optional.empty()));
    }

    Optional<Fixture> feed(ColdFeed feed) {
        return switch (feed.kind()) {
            case BY_HAND -> Optional.empty();
            case FLOAT_VALVE -> Optional.of(floatValve());
            case FEED_CISTERN -> Optional.of(cistern());
        };
    }

    private Fixture floatValve() {
        double x = box.rightM() - VENT_AT * box.widthM();
        double radius = Math.min(HOOK_M, box.widthM() / 5) / 2;
        return new Fixture(
                Fixture.Kind.FLOAT_VALVE,
                List.of(
                        new Point(x, box.topM() + HOOK_M),
                        new Point(x, box.topM() - LID_OVER_M),
                        new Point(x - box.widthM() / 5, tank.waterlineLevelM())),
                Optional.of(new Bounds(
                        x - box.widthM() / 5 - radius,
                        tank.waterlineLevelM() - radius,
                        x - box.widthM() / 5 + radius,
                        tank.waterlineLevelM() + radius)));
    }

    /** It stands as high as the water in the tank, and its pipe enters low. */
    private Fixture cistern() {
        double right = box.leftM() - CISTERN_M / 2;
        double waterM = tank.waterlineLevelM();
        Bounds vessel = new Bounds(right - CISTERN_M, waterM - CISTERN_M / 2, right, waterM + CISTERN_M / 3);
        double low = box.baseM() + Math.min(tank.coldPortM(), box.heightM() / 8) / 2;
        double beside = box.leftM() - CISTERN_M / 4;
        return new Fixture(
                Fixture.Kind.FEED_CISTERN,
                List.of(
                        new Point(box.leftM() + box.insetM(low), low),
                        new Point(beside, low),
                        new Point(beside, vessel.bottomM() + LID_OVER_M),
                        new Point(right, vessel.bottomM() + LID_OVER_M)),
                Optional.of(vessel));
    }
}

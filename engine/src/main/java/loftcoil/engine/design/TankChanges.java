package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.pipe.LaggingTable;

/** The named changes of the tank; legs and coil follow, so that the loop stays closed. */
final class TankChanges {

    /** The name of a bare pipe or tank among the laggings. */
    static final String BARE = "none";

    /** What lagging may be asked for, mm. */
    static final Allowed LAGGING_MM = new Allowed(0, LaggingFields.MOST_MM, "mm");

    /** Hour at which a tank is filled by hand where nothing else is said: before the fire is lit. */
    private static final double USUAL_REFILL_H = 16;

    /** How cold water follows. */
    private enum Refill implements Coded {
        AS_DRAWN("by itself, as water is drawn"),
        ONCE_A_DAY("by hand, once a day");

        private final String code;

        Refill(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    private TankChanges() {}

    /** All laggings, and none. */
    static List<String> laggings() {
        List<String> options = new ArrayList<>(LaggingTable.names());
        options.add(BARE);
        return options;
    }

    static void into(ChangeTable table) {
        table.follows("tank.baseM", (design, baseM) -> moved(design, TankFields.BASE, baseM));
        table.fields("tank.volumeL");
        table.follows("tank.heightM", TankChanges::higher);
        table.fields("tank.waterlineM");
        table.follows("tank.coldPortM", (design, portM) -> moved(design, TankFields.COLD_PORT, portM));
        table.follows("tank.returnPortM", (design, portM) -> moved(design, TankFields.RETURN_PORT, portM));
        table.fields("tank.drawPortM", "tank.shape", "tank.coat");
        table.number("tank.laggingMm", "Thickness of lagging round the tank", LAGGING_MM, "tank.lagging.thicknessMm")
                .as(
                        design -> design.tank()
                                .lagging()
                                .map(LaggingChoice::thicknessMm)
                                .orElse(0.0),
                        (design, mm) -> lagged(
                                design,
                                Optional.of(LaggingChoice.thick(design.tank().lagging(), mm))));
        table.named("tank.laggingMaterial", "Lagging round the tank", laggings(), "tank.lagging.material")
                .as(
                        design -> design.tank()
                                .lagging()
                                .map(LaggingChoice::material)
                                .orElse(BARE),
                        (design, material) -> lagged(
                                design,
                                LaggingChoice.of(design.tank().lagging(), material, TankFields.BARE_TANK_GETS_MM)));
        table.choice("tank.refill", "How cold water follows", Refill.class, "tank.refillAtH")
                .as(
                        design -> design.tank().refillAtH().isPresent() ? Refill.ONCE_A_DAY : Refill.AS_DRAWN,
                        TankChanges::refilled);
    }

    private static Design moved(Design design, Field<Tank, Double> field, double levelM) {
        return Stretch.toTank(design, TankFields.TABLE.with(design.tank(), field, levelM));
    }

    /** It holds as much as before, so it gets narrower or wider; the waterline keeps its distance from the rim, the ports stay. */
    private static Design higher(Design design, double heightM) {
        Tank tank = design.tank();
        Tank higher = TankFields.TABLE.with(tank, TankFields.HEIGHT, heightM);
        return design.with(
                DesignTable.TANK,
                TankFields.TABLE.with(higher, TankFields.WATERLINE, tank.waterlineM() + heightM - tank.heightM()));
    }

    private static Design lagged(Design design, Optional<LaggingChoice> lagging) {
        return design.with(DesignTable.TANK, TankFields.TABLE.with(design.tank(), TankFields.LAGGING, lagging));
    }

    private static Design refilled(Design design, Refill refill) {
        OptionalDouble atH = refill == Refill.ONCE_A_DAY
                ? OptionalDouble.of(design.tank().refillAtH().orElse(USUAL_REFILL_H))
                : OptionalDouble.empty();
        return design.with(DesignTable.TANK, TankFields.TABLE.with(design.tank(), TankFields.REFILL, atH));
    }
}

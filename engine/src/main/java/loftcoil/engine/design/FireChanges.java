package loftcoil.engine.design;

import java.util.List;
import loftcoil.engine.fire.WoodTable;

/** The named changes of the fire and of where the coil's heat is taken from. */
final class FireChanges {

    private FireChanges() {}

    static void into(ChangeTable table) {
        table.choice("coil.heat", "Where the coil's heat is taken from", List.of(WithFire.WORKED_OUT, WithFire.STATED))
                .as(
                        design -> design.coil().heatKW().isPresent() ? WithFire.STATED : WithFire.WORKED_OUT,
                        Design::withCoilHeatFrom);
        table.choice("fire.wood", "Wood", WoodTable.known().names())
                .as(design -> WithFire.orStarted(design).wood(), Design::withWood);
        table.number("fire.moisturePct", "Water in the wood, of its whole weight", DesignRanges.MOISTURE)
                .as(design -> WithFire.orStarted(design).moisturePct(), Design::withMoisturePct);
        table.number("fire.burnKgPerH", "Wood burnt in an hour", DesignRanges.BURN)
                .as(design -> WithFire.orStarted(design).burnKgPerH(), Design::withBurnKgPerH);
        table.number("fire.litFromH", "Hour at which the fire is lit", DesignRanges.HOUR)
                .as(design -> WithFire.orStarted(design).litFromH(), Design::withLitFromH);
        table.number("fire.litForH", "Hours the fire burns", DesignRanges.HOUR)
                .as(design -> WithFire.orStarted(design).litForH(), Design::withLitForH);
        table.choice("fire.months", "Months in which the fire is lit", FireMonths.names())
                .as(design -> FireMonths.of(WithFire.orStarted(design)), Design::withFireMonths);
    }
}

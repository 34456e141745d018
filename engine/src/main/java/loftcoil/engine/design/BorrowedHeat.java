package loftcoil.engine.design;

import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What an example's coil was stated to give says nothing of one's own fire. As soon as anything is told from which the heat of a coil can
 * be worked out, a heat that is borrowed still is dropped, and worked out from then on; one that somebody told stays.
 */
public final class BorrowedHeat {

    private static final String HEAT = "coil.heatKW";

    /** From what the heat is worked out; see {@link FireMaker}. */
    private static final List<String> WORKED_OUT_FROM = List.of(
            "fire.wood",
            "fire.moisturePct",
            "fire.burnKgPerH",
            "fire.excessAir",
            "fire.fireboxM2",
            "fire.passageCm2",
            "coil.tube",
            "coil.lengthM",
            "coil.windingMm",
            "coil.sootMm");

    private BorrowedHeat() {}

    /** The heat of a design's coil that is borrowed from an example still, kW; empty where it is one's own or worked out from the fire. */
    public static OptionalDouble of(Design design) {
        return design.origin(HEAT) == Origin.BORROWED ? design.coil().heatKW() : OptionalDouble.empty();
    }

    /** The design to which values at these paths are about to be told; unchanged where none of them is about fire or coil. */
    static Design without(Design design, Collection<String> told) {
        boolean about = told.stream().anyMatch(WORKED_OUT_FROM::contains);
        return about && design.fire().isPresent() && design.origin(HEAT) == Origin.BORROWED ? dropped(design) : design;
    }

    /** The design as it should be where somebody told fire or coil before this was held. */
    static Design settled(Design design) {
        List<String> told = DesignFields.of(design).stream()
                .filter(value -> value.text().isPresent() && value.origin() != Origin.BORROWED)
                .map(DesignFields.Value::path)
                .toList();
        return without(design, told);
    }

    private static Design dropped(Design design) {
        if (design.coil().heatKW().isEmpty()) {
            return design;
        }
        Coil coil = CoilFields.TABLE.with(design.coil(), CoilFields.HEAT, OptionalDouble.empty());
        return DesignTable.with(design, DesignTable.COIL, coil);
    }
}

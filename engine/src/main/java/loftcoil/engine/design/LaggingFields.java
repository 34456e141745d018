package loftcoil.engine.design;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.pipe.LaggingTable;

/** The fields of {@link LaggingChoice}. */
final class LaggingFields {

    /** No lagging is thicker than this, mm. */
    static final int MOST_MM = 300;

    private static final Field<LaggingChoice, String> MATERIAL = new Field<>(
            "material",
            "Material of the lagging",
            "Each stands a heat of its own; close to the flue only mineral wool does.",
            Leaf.known(name -> LaggingTable.find(name).isPresent(), LaggingTable.names(), LaggingTable::unknown),
            LaggingChoice::material);
    private static final Field<LaggingChoice, Double> THICKNESS = new Field<>(
            "thicknessMm",
            "Thickness of the lagging",
            "0 is no lagging.",
            Leaf.number(0, MOST_MM, FieldUnit.MM),
            LaggingChoice::thicknessMm);

    private static final Table<LaggingChoice> TABLE =
            new Table<>(List.of(MATERIAL, THICKNESS), of -> new LaggingChoice(of.of(MATERIAL), of.of(THICKNESS)));

    private LaggingFields() {}

    /** A lagging that may be left out; where a change names one of its fields it starts as stone wool of a thickness, mm. */
    static Form<Optional<LaggingChoice>> startedAt(double thicknessMm) {
        return Part.started(TABLE, design -> LaggingChoice.stoneWool(thicknessMm));
    }
}

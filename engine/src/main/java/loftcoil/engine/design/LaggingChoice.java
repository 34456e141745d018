package loftcoil.engine.design;

import java.util.Optional;
import loftcoil.engine.pipe.Lagging;

/**
 * A lagging as chosen.
 *
 * @param material name in the lagging table, such as {@code stone wool}
 * @param thicknessMm thickness, mm; 0 to 300; 0 is no lagging
 */
public record LaggingChoice(String material, double thicknessMm) {

    /** Stone wool, the lagging that stands any heat of a loop, of a thickness in mm. */
    public static LaggingChoice stoneWool(double thicknessMm) {
        return new LaggingChoice("stone wool", thicknessMm);
    }

    /** A lagging in another thickness, mm; stone wool where there was none. */
    static LaggingChoice thick(Optional<LaggingChoice> before, double thicknessMm) {
        return new LaggingChoice(before.orElse(stoneWool(thicknessMm)).material(), thicknessMm);
    }

    /** A lagging of another material, {@link TankChanges#BARE} to take it off; where there was none it is this thick, mm. */
    static Optional<LaggingChoice> of(Optional<LaggingChoice> before, String material, double elseMm) {
        return material.equals(TankChanges.BARE)
                ? Optional.empty()
                : Optional.of(new LaggingChoice(
                        material, before.map(LaggingChoice::thicknessMm).orElse(elseMm)));
    }

    /** The lagging as physics takes it. */
    public Lagging lagging() {
        return new Lagging(material, thicknessMm / 1000);
    }
}

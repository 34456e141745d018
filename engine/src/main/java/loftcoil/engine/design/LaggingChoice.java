package loftcoil.engine.design;

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

    /** The same material in another thickness, mm. */
    public LaggingChoice withThicknessMm(double newThicknessMm) {
        return new LaggingChoice(material, newThicknessMm);
    }

    public Lagging lagging() {
        return new Lagging(material, thicknessMm / 1000);
    }
}

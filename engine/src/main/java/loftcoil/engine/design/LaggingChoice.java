package loftcoil.engine.design;

import loftcoil.engine.pipe.Lagging;

/**
 * A lagging as chosen.
 *
 * @param material name in the lagging table, such as {@code stone wool}
 * @param thicknessMm thickness, mm; 0 to 300; 0 is no lagging
 */
public record LaggingChoice(String material, double thicknessMm) {

    public Lagging lagging() {
        return new Lagging(material, thicknessMm / 1000);
    }
}

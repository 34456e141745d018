package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Dwelling;
import loftcoil.engine.design.Roof;
import loftcoil.engine.fault.RefusedException;

/** Houses as they might be drawn: the example dwellings, each changed by chance in all that a drawing shows. */
public final class RandomHouses {

    private RandomHouses() {}

    /** The four example dwellings and so many random ones. */
    public static List<Design> withDwellings(int count, long seed) {
        List<Design> designs = new ArrayList<>();
        for (Dwelling dwelling : Dwelling.values()) {
            designs.add(dwelling.design());
        }
        Random random = new Random(seed);
        while (designs.size() < count + Dwelling.values().length) {
            Roof roof = List.of(Roof.values()).get(designs.size() % Roof.values().length);
            designs.add(Changes.apply(one(random), "site.roof", roof.code()));
        }
        return designs;
    }

    private static Design one(Random random) {
        Design design = List.of(Dwelling.values())
                .get(random.nextInt(Dwelling.values().length))
                .design();
        design = changed(design, "tank.baseM", -0.6 + 4 * random.nextDouble());
        design = changed(design, "tank.volumeL", 50 + 300 * random.nextDouble());
        design = changed(design, "tank.heightM", 0.4 + 0.8 * random.nextDouble());
        design = changed(design, "tank.returnPortM", 0.1 + 0.7 * random.nextDouble());
        design = changed(design, "tank.drawPortM", 0.1 + 0.7 * random.nextDouble());
        design = changed(design, "coil.lengthM", 0.6 + 19.4 * Math.pow(random.nextDouble(), 3));
        design = changed(design, "coil.outletM", 0.4 + 0.6 * random.nextDouble());
        design = changed(design, "coil.windingMm", 80 + 300 * random.nextDouble());
        design = changed(design, "hotLegs.runM", 5 * Math.pow(random.nextDouble(), 2));
        design = changed(design, "coldLegs.runM", 5 * Math.pow(random.nextDouble(), 2));
        design = changed(design, "window.tiltDeg", 90 * random.nextDouble());
        design = changed(design, "window.areaM2", 0.2 + 1.8 * random.nextDouble());
        for (int i = 0; i < design.taps().size(); i++) {
            design = changed(design, "taps[" + i + "].levelM", 0.2 + 1.2 * random.nextDouble());
        }
        return design;
    }

    private static Design changed(Design design, String change, double value) {
        try {
            return Changes.apply(design, change, String.format(Locale.ROOT, "%.3f", value));
        } catch (RefusedException refused) {
            return design;
        }
    }
}

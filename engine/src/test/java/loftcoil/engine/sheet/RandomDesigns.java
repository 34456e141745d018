package loftcoil.engine.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.SafeBothy;
import loftcoil.engine.fault.RefusedException;

/**
 * Whole designs as self-builders might make them. Half are drawn wide, good and bad by chance in everything; half are drawn by somebody
 * who has read how it is done, and still may go wrong in the sizes.
 */
public final class RandomDesigns {

    private static final List<String> ANY_TUBE =
            List.of("EN1057 15x1.0", "EN1057 18x1.0", "EN1057 22x0.9", "EN1057 28x1.5", "EN1057 35x1.5");
    private static final List<String> STOUT_TUBE =
            List.of("EN1057 22x1.0", "EN1057 22x1.2", "EN1057 28x1.2", "EN1057 28x1.5", "EN1057 35x1.5");

    private final Random random;
    private final List<String> edits = new ArrayList<>();

    private RandomDesigns(Random random) {
        this.random = random;
    }

    /** The first designs after a seed that can be computed. */
    public static List<Design> some(int count, long seed) {
        Random random = new Random(seed);
        List<Design> designs = new ArrayList<>();
        while (designs.size() < count) {
            new RandomDesigns(random).one(random.nextBoolean()).ifPresent(designs::add);
        }
        return designs;
    }

    private Optional<Design> one(boolean learned) {
        try {
            house(learned);
            tank(learned);
            return Optional.of(SafeBothy.edited(edits));
        } catch (RefusedException refused) {
            return Optional.empty();
        }
    }

    private void house(boolean learned) {
        set("/site/altitudeM", between(0, 1800));
        set("/site/coldSupplyC", between(4, 16));
        set("/site/hardnessMgPerL", learned ? between(0, 60) : between(0, 350));
        // On the ground, under a roof that carries it: what stands on wheels is judged elsewhere.
        edits.addAll(List.of("/safety/structure/wheels", "null", "/safety/structure/loadLimitKg", "900"));
        set("/coil/heatKW", between(0.6, learned ? 2.6 : 5));
        set("/fire/burnKgPerH", between(learned ? 2.5 : 1.5, 6));
        set("/fire/litForH", between(2, learned ? 4 : 6));
        set("/safety/fireRoom/airOpeningCm2", 250);
        if (random.nextInt(3) > 0) {
            edits.addAll(List.of("/window", "null"));
        } else {
            set("/window/areaM2", between(0.3, 0.9));
        }
    }

    private void tank(boolean learned) {
        double heightM = between(0.6, 1.1);
        double waterlineM = heightM - between(0.04, 0.08);
        double returnM = learned ? between(0.5, 0.8) * waterlineM : between(0.3, 0.97) * waterlineM;
        double baseM = learned ? between(1.9, 2.8) : between(0.8, 2.8);
        set("/tank/volumeL", between(learned ? 150 : 60, 320));
        set("/tank/heightM", heightM);
        set("/tank/waterlineM", waterlineM);
        set("/tank/returnPortM", returnM);
        set("/tank/drawPortM", between(returnM, waterlineM));
        set("/tank/baseM", baseM);
        set("/tank/lagging/thicknessMm", between(learned ? 60 : 20, 120));
        double inletM = between(0.2, 0.5);
        double riseM = learned ? between(0.25, 0.6) : between(-0.1, 0.6);
        String tube = any(learned ? STOUT_TUBE : ANY_TUBE);
        set("/coil/inletM", inletM);
        set("/coil/outletM", inletM + riseM);
        set("/coil/lengthM", Math.abs(riseM) + between(0.7, 2));
        edits.addAll(List.of("/coil/tube", quoted(same(learned, tube))));
        double dropM = inletM - baseM - 0.05;
        double liftM = baseM + returnM - inletM - riseM;
        double lowCold = between(0, learned ? 0.15 : 0.3);
        double lowHot = learned ? between(0.1, 0.3) : between(-0.05, 0.3);
        leg("/coldLegs/0", same(learned, tube), dropM * (1 - lowCold), learned);
        leg("/coldLegs/1", same(learned, tube), dropM * lowCold, learned);
        leg("/hotLegs/0", same(learned, tube), liftM * (1 - lowHot), learned);
        leg("/hotLegs/1", same(learned, tube), liftM * lowHot, learned);
        set("/hotLegs/0/aroundC", random.nextBoolean() ? 19 : 60);
    }

    private void leg(String path, String tube, double riseM, boolean learned) {
        edits.addAll(List.of(path + "/tube", quoted(tube)));
        set(path + "/riseM", riseM);
        set(path + "/lengthM", Math.abs(riseM) + between(0.1, learned ? 1 : 2.5));
        if (!learned && random.nextInt(3) == 0) {
            edits.addAll(List.of(path + "/lagging", "null"));
        }
    }

    private String same(boolean learned, String tube) {
        return learned || random.nextBoolean() ? tube : any(ANY_TUBE);
    }

    private String any(List<String> of) {
        return of.get(random.nextInt(of.size()));
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private void set(String path, double value) {
        edits.addAll(List.of(path, String.format(Locale.ROOT, "%.4f", value)));
    }

    private static String quoted(String value) {
        return "\"" + value + "\"";
    }
}

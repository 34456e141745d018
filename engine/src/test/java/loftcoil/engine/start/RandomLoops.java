package loftcoil.engine.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.SafeBothy;
import loftcoil.engine.fault.RefusedException;

/** Loops as a builder might make them, good and bad: bores, rises, level runs, coats and heats by chance. */
public final class RandomLoops {

    private static final List<String> TUBES =
            List.of("EN1057 15x0.7", "EN1057 18x1.0", "EN1057 22x0.9", "EN1057 28x0.9", "EN1057 35x1.2");

    private RandomLoops() {}

    /** The first designs after a seed that can be computed. */
    public static List<Design> some(int count, long seed) {
        Random random = new Random(seed);
        List<Design> designs = new ArrayList<>();
        while (designs.size() < count) {
            one(random).ifPresent(designs::add);
        }
        return designs;
    }

    private static Optional<Design> one(Random random) {
        double inletM = 0.25 + 0.2 * random.nextDouble();
        double riseM = random.nextInt(5) == 0 ? 0 : -0.1 + 0.7 * random.nextDouble();
        double baseM = 0.9 + 1.8 * random.nextDouble();
        double returnPortM = 0.2 + 0.4 * random.nextDouble();
        double dropM = inletM - baseM - 0.05;
        double liftM = baseM + returnPortM - inletM - riseM;
        if (dropM > -0.1 || liftM < 0.1) {
            return Optional.empty();
        }
        String cold = any(random);
        String hot = random.nextBoolean() ? cold : any(random);
        String coil = random.nextBoolean() ? hot : any(random);
        double levelCold = random.nextInt(3) == 0 ? 0 : 0.3 * random.nextDouble();
        double levelHot = random.nextInt(3) == 0 ? 0 : 0.3 * random.nextDouble();
        boolean levelFirst = random.nextInt(3) == 0;
        List<String> edits = new ArrayList<>(List.of(
                "/tank/baseM",
                text(baseM),
                "/tank/returnPortM",
                text(returnPortM),
                "/coil/tube",
                quoted(coil),
                "/coil/lengthM",
                text(Math.abs(riseM) + 0.7 + 1.5 * random.nextDouble()),
                "/coil/inletM",
                text(inletM),
                "/coil/outletM",
                text(inletM + riseM),
                "/coil/heatKW",
                text(0.5 + 3.5 * random.nextDouble())));
        leg(edits, "/coldLegs/0", cold, dropM * (1 - levelCold), random);
        leg(edits, "/coldLegs/1", cold, dropM * levelCold, random);
        leg(edits, "/hotLegs/0", hot, liftM * (levelFirst ? levelHot : 1 - levelHot), random);
        leg(edits, "/hotLegs/1", hot, liftM * (levelFirst ? 1 - levelHot : levelHot), random);
        if (random.nextBoolean()) {
            edits.addAll(List.of("/hotLegs/0/aroundC", "19"));
        }
        try {
            return Optional.of(SafeBothy.edited(edits));
        } catch (RefusedException refused) {
            return Optional.empty();
        }
    }

    private static void leg(List<String> edits, String path, String tube, double riseM, Random random) {
        double lengthM = Math.abs(riseM) + 0.2 + 1.5 * random.nextDouble();
        boolean bare = random.nextInt(3) == 0;
        edits.addAll(
                List.of(path + "/tube", quoted(tube), path + "/riseM", text(riseM), path + "/lengthM", text(lengthM)));
        edits.addAll(
                bare
                        ? List.of(path + "/lagging", "null")
                        : List.of(path + "/lagging/thicknessMm", text(13 + 30 * random.nextDouble())));
    }

    private static String any(Random random) {
        return TUBES.get(random.nextInt(TUBES.size()));
    }

    private static String text(double value) {
        return Double.toString(value);
    }

    private static String quoted(String value) {
        return "\"" + value + "\"";
    }
}

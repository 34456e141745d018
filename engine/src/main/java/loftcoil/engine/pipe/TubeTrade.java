package loftcoil.engine.pipe;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Tubes as a merchant knows them: the size to ask for in the words of its standard, and the nearest size of the others, for who builds
 * where that standard is not sold. EN 1057 and ASTM B88M name a tube by its outer diameter in mm; ASTM B88 by a nominal size in inches,
 * an eighth less than the outer diameter; AS 1432 by a nominal diameter.
 */
public final class TubeTrade {

    /** A standard of copper tube, with what the names of its tubes begin with in a design. */
    private record Standard(Pattern name, String ask) {

        /** The size as asked for; empty for a tube of another standard. */
        Optional<String> asked(String tube) {
            Matcher found = name.matcher(tube);
            return found.matches() ? Optional.of(found.replaceFirst(ask)) : Optional.empty();
        }

        boolean holds(String tube) {
            return name.matcher(tube).matches();
        }
    }

    private static final Standard EN_1057 =
            new Standard(Pattern.compile("EN1057 ([\\d.]+)x([\\d.]+)"), "$1 × $2 mm to EN 1057");
    private static final Standard ASTM_B88 =
            new Standard(Pattern.compile("B88 ([KLM]) (.+)"), "$2 in type $1 to ASTM B88");
    private static final Standard AS_1432 =
            new Standard(Pattern.compile("AS1432 ([AB]) DN(\\d+)"), "DN $2 type $1 to AS 1432");
    private static final Standard ASTM_B88M =
            new Standard(Pattern.compile("B88M ([ABC]) (\\d+)"), "$2 mm type $1 to ASTM B88M");

    private static final List<Standard> STANDARDS = List.of(EN_1057, ASTM_B88, AS_1432, ASTM_B88M);

    /** Those of which a tube is looked for where its own is not sold: one for each part of the world. */
    private static final List<Standard> ELSEWHERE = List.of(EN_1057, ASTM_B88, AS_1432);

    /** How far another bore may be off and still be called near, a share of the own. */
    private static final double NEAR = 0.15;

    /** A wall that differs by a millimetre counts as much as a bore that differs by half of one: the bore decides. */
    private static final double WALL_COUNTS = 0.5;

    private TubeTrade() {}

    /** What to ask a merchant for; a tube by its size alone is asked for by that and its metal. */
    public static String asked(Tube tube) {
        return STANDARDS.stream()
                .flatMap(standard -> standard.asked(tube.name()).stream())
                .findFirst()
                .orElse(tube.name());
    }

    /**
     * The nearest size of each of the other standards, by bore first and wall second, where one is within 15 % of the bore. It is no
     * replacement without a new calculation.
     */
    public static List<Tube> elsewhere(Tube tube) {
        return ELSEWHERE.stream()
                .filter(standard -> !standard.holds(tube.name()))
                .flatMap(standard -> nearest(standard, tube).stream())
                .toList();
    }

    private static Optional<Tube> nearest(Standard standard, Tube tube) {
        return TubeTable.names().stream()
                .filter(standard::holds)
                .map(TubeTable::tube)
                .filter(other -> Math.abs(other.boreM() - tube.boreM()) <= NEAR * tube.boreM())
                .min(Comparator.comparingDouble(other ->
                        Math.abs(other.boreM() - tube.boreM()) + WALL_COUNTS * Math.abs(other.wallM() - tube.wallM())));
    }
}

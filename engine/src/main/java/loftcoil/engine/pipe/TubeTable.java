package loftcoil.engine.pipe;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.PlainText;
import loftcoil.engine.fault.RefusedException;

/**
 * Tubes by name. Of copper: EN 1057 (Europe, {@code EN1057 22x0.9}: outer diameter and wall in mm), ASTM B88 types K, L and M
 * (North America, {@code B88 L 3/4}), its metric types A, B and C ({@code B88M B 22}) and AS 1432 types A and B (Australia,
 * {@code AS1432 B DN20}). Dimensions are nominal; the walls of AS 1432 are from memory. Any other tube is named by its
 * outer diameter and wall in mm and its {@link TubeMetal}, {@code 22x1.5 stainless}; without a metal, {@code 35x1.0}, it is taken to
 * be of hard copper. Plastic is none of them: beside a fire it melts.
 */
public final class TubeTable {

    private static final NamedRows<Tube> ROWS = NamedRows.read(
            TubeTable.class,
            "tubes.csv",
            "tube",
            row -> new Tube(
                    row.getOrDefault("name", ""),
                    Double.parseDouble(row.getOrDefault("outer_mm", "")) / 1000,
                    Double.parseDouble(row.getOrDefault("wall_mm", "")) / 1000));

    /** Outer diameter x wall, both in mm, and a word. */
    private static final Pattern BY_SIZE =
            Pattern.compile("(\\d{1,3}(?:\\.\\d{1,3})?)x(\\d{1,2}(?:\\.\\d{1,3})?)(?: (.+))?");

    /** Plastics that water pipes are made of, as they are called over the counter. */
    private static final Pattern PLASTIC = Pattern.compile(
            "(?i)\\b(?:pe-?x|pe-?rt|c?pvc|pe|pb|pp-?r?|polybut(?:yl)?ene|poly(?:thene|ethylene)?|plastic|hose)\\b");

    private static final String METALS =
            Stream.of(TubeMetal.values()).map(TubeMetal::code).collect(Collectors.joining(", "));

    private TubeTable() {}

    /** The tube of a name, as in {@link #names} or by its size; empty too where no tube of that size can be. */
    public static Optional<Tube> find(String name) {
        return ROWS.find(name).or(() -> bySize(name));
    }

    /**
     * The tube of a name.
     *
     * @param name as in {@link #names} or by its size
     * @throws RefusedException where there is no such tube, naming the nearest
     */
    public static Tube tube(String name) {
        return require("tube", name);
    }

    private static Optional<Tube> bySize(String name) {
        Matcher size = BY_SIZE.matcher(name);
        return size.matches() ? metal(size).flatMap(metal -> made(name, size, metal)) : Optional.empty();
    }

    private static Optional<TubeMetal> metal(Matcher size) {
        return TubeMetal.find(namesMetal(size) ? size.group(3) : TubeMetal.COPPER.code());
    }

    private static boolean namesMetal(Matcher size) {
        return size.group(3) != null;
    }

    private static Optional<Tube> made(String name, Matcher size, TubeMetal metal) {
        try {
            double outerM = Double.parseDouble(size.group(1)) / 1000;
            return Optional.of(new Tube(name, outerM, Double.parseDouble(size.group(2)) / 1000, metal));
        } catch (RefusedException impossible) {
            return Optional.empty();
        }
    }

    /** Whether a name is a size that does not say its metal, so that hard copper is assumed. */
    public static boolean assumesCopper(String name) {
        Matcher size = BY_SIZE.matcher(name);
        return size.matches() && !namesMetal(size);
    }

    /**
     * The tube of a name.
     *
     * @param path where the name stands, for the refusal
     * @param name as in {@link #names}, or by its size
     * @throws RefusedException where there is no such tube, naming the nearest
     */
    public static Tube require(String path, String name) {
        return find(name).orElseThrow(() -> new RefusedException(List.of(unknown(path, name))));
    }

    /** All names: by standard, then type, then size. */
    public static List<String> names() {
        return ROWS.known().names();
    }

    /** The names most like a mistyped one, the likeliest first. */
    public static List<String> nearest(String name) {
        return ROWS.known().nearest(name);
    }

    /** The fault of an unknown name, for collecting. */
    public static Fault unknown(String path, String name) {
        Matcher size = BY_SIZE.matcher(name);
        if (!size.matches() && PLASTIC.matcher(name).find()) {
            return new Fault(
                    path,
                    quoted(name),
                    "a tube of metal, such as B88 L 3/4 or 22x1.0",
                    "plastic softens in the hottest water of such a tank, and beside a fire it melts");
        }
        if (!size.matches()) {
            Fault fault = ROWS.known().unknown(path, name);
            return new Fault(
                    path,
                    fault.given(),
                    fault.allowed(),
                    fault.why() + "; or outer diameter by wall in mm, such as 22x1.0");
        }
        return metal(size).isEmpty()
                ? new Fault(path, quoted(name), "a size and one of " + METALS, "plastic melts beside a fire")
                : new Fault(path, quoted(name), "outer diameter x wall in mm with a bore left, as 35x1.0", "");
    }

    private static String quoted(String name) {
        return '"' + PlainText.cut(name) + '"';
    }
}

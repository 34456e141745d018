package loftcoil.engine.caution;

import java.util.Locale;
import java.util.Optional;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Use;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;

/**
 * Lime that hard water leaves in the coil. All the water that is drawn hot passes the loop once as fresh water; what is harder than
 * {@value #SOFT_MG_PER_L} mg/L may fall out of it, and {@value #COIL_SHARE} of that settles where the water is hottest, in the coil.
 * Nobody has measured that share for such coils: a third or three times of it is as likely.
 *
 * @param kgPerYear lime that settles in the coil in a year, kg
 * @param mmPerYear thickness of the layer in the first year, mm
 * @param yearsToHalfBore years until the layer leaves half the bore; infinite where nothing settles
 */
public record Limescale(double kgPerYear, double mmPerYear, double yearsToHalfBore) {

    /** Water up to this hardness leaves next to nothing, mg/L as CaCO₃: "soft" of the US Geological Survey, from memory. */
    public static final double SOFT_MG_PER_L = 60;

    /** Share of what falls out that settles in the coil; common practice, no source. */
    public static final double COIL_SHARE = 0.1;

    /** Density of the layer, kg/m³: calcite has 2710, the layer pores; common practice, no source. */
    static final double KG_PER_M3 = 2400;

    private static final double HOT_C = 60;
    private static final double DAYS = 365;
    private static final double MG_PER_KG = 1e6;
    private static final double MM_PER_M = 1000;

    /** The lime of a design; empty where nobody said how hard its water is. */
    public static Optional<Limescale> of(Design design) {
        return design.site().hardnessMgPerL().isPresent()
                ? Optional.of(of(design, design.site().hardnessMgPerL().getAsDouble()))
                : Optional.empty();
    }

    private static Limescale of(Design design, double hardnessMgPerL) {
        double settles = Math.max(0, hardnessMgPerL - SOFT_MG_PER_L) / MG_PER_KG * COIL_SHARE;
        double kgPerYear = settles * hotLitresADay(design) * DAYS;
        Tube tube = TubeTable.require("coil.tube", design.coil().tube());
        double lengthM = design.coil().lengthM();
        double m3PerYear = kgPerYear / KG_PER_M3;
        double mm = m3PerYear / (Math.PI * tube.boreM() * lengthM) * MM_PER_M;
        // The ring between the bore and half of it has three quarters of the bore's section.
        return new Limescale(kgPerYear, mm, 0.75 * tube.areaM2() * lengthM / m3PerYear);
    }

    /** Water that leaves the tank hot on a day, L: what is mixed down counts by its hot part at 60 °C. */
    static double hotLitresADay(Design design) {
        double coldC = design.site().coldSupplyC();
        return design.use().stream()
                .mapToDouble(
                        (Use use) -> use.litres() * Math.min(Math.max((use.mixedC() - coldC) / (HOT_C - coldC), 0), 1))
                .sum();
    }

    /**
     * The design with lime in its coil, as smooth as the tube.
     *
     * @param boreLeft share of the bore that is left, over 0 to 1
     */
    public static Design narrowed(Design design, double boreLeft) {
        Tube tube = TubeTable.require("coil.tube", design.coil().tube());
        double wallM = tube.wallM() + tube.boreM() / 2 * (1 - boreLeft);
        return Changes.apply(
                design,
                "coil.tube",
                String.format(
                        Locale.ROOT,
                        "%.3fx%.3f %s",
                        tube.outerM() * MM_PER_M,
                        wallM * MM_PER_M,
                        tube.metal().code()));
    }
}

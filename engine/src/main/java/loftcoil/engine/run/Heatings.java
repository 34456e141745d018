package loftcoil.engine.run;

import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.design.Design;
import loftcoil.engine.fire.CoilInFire;
import loftcoil.engine.fire.CoilTable;
import org.jspecify.annotations.Nullable;

/** The heat of a design's coil, ready for the many questions of a table. */
public final class Heatings {

    /** Tables of coils in their fires; a search over pipes and tanks asks for one and the same again and again. */
    private static final Recent<CoilInFire, CoilTable> TABLES = new Recent<>(8);

    private Heatings() {}

    /** Heat of a design's coil, as stated where it is stated, else as best estimated; 0 without a fire. */
    public static CoilHeating of(Design design) {
        if (design.coil().heatKW().isPresent()) {
            return design.coilHeating();
        }
        return design.coilInFire().<CoilHeating>map(InFire::new).orElse(CoilHeating.stated(0));
    }

    /** The heat by a coil's table; alike where the coils in their fires are alike. */
    private static final class InFire implements CoilHeating {

        private final CoilInFire fire;
        private final CoilTable table;

        InFire(CoilInFire fire) {
            this.fire = fire;
            table = TABLES.of(fire, CoilTable::of);
        }

        @Override
        public double heatW(double flowKgPerS, double inletC) {
            return table.heatW(flowKgPerS, Math.min(Math.max(inletC, 0), 110));
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof InFire same && fire.equals(same.fire);
        }

        @Override
        public int hashCode() {
            return fire.hashCode();
        }
    }
}

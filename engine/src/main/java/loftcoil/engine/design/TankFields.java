package loftcoil.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.fault.Allowed;

/** The fields of {@link Tank}. */
final class TankFields {

    /** Lagging that a bare tank gets when only its material is named, mm. */
    static final double BARE_TANK_GETS_MM = 50;

    private static final Allowed IN_TANK = new Allowed(0, 5, "m");

    static final Field<Tank, Double> VOLUME = new Field<>(
            "volumeL",
            "Water the tank holds when full to the brim",
            "Fill it with a bucket of known size, or work it out from the inside measures.",
            Leaf.number(10, 5000, FieldUnit.L),
            Tank::volumeL);
    static final Field<Tank, Double> HEIGHT = new Field<>(
            "heightM",
            "Inside height of the tank",
            "From the bottom inside to the rim; of a lying cylinder its diameter.",
            Leaf.number(0.1, 5, FieldUnit.M),
            Tank::heightM);
    static final Field<Tank, Double> BASE = new Field<>(
            "baseM",
            "Tank base above the floor",
            "From the finished floor to the bottom of the tank inside.",
            Leaf.number(-10, 15, FieldUnit.M),
            Tank::baseM);
    static final Field<Tank, Double> WATERLINE = new Field<>(
            "waterlineM",
            "Waterline above the tank's base",
            "Where the cold tank is full; within the tank, above the return port and the draw port.",
            Leaf.fitting(IN_TANK, FieldUnit.M),
            Tank::waterlineM);
    static final Field<Tank, Double> COLD_PORT = new Field<>(
            "coldPortM",
            "Port to the coil above the tank's base",
            "Middle of the port that the cold pipe leaves by; below the return port.",
            Leaf.fitting(IN_TANK, FieldUnit.M),
            Tank::coldPortM);
    static final Field<Tank, Double> RETURN_PORT = new Field<>(
            "returnPortM",
            "Port of the hot pipe above the tank's base",
            "Middle of the port that the hot pipe comes in by; always covered by water.",
            Leaf.fitting(IN_TANK, FieldUnit.M),
            Tank::returnPortM);
    static final Field<Tank, Double> DRAW_PORT = new Field<>(
            "drawPortM",
            "Port to the taps above the tank's base",
            "Middle of the port that the taps draw from; below the waterline.",
            Leaf.fitting(IN_TANK, FieldUnit.M),
            Tank::drawPortM);
    static final Field<Tank, Optional<LaggingChoice>> LAGGING = new Field<>(
            "lagging",
            "Lagging round the tank",
            "Left out: a bare tank.",
            LaggingFields.startedAt(BARE_TANK_GETS_MM),
            Tank::lagging);
    private static final Field<Tank, Double> EMPTY_MASS = new Field<>(
            "emptyMassKg",
            "Mass of the empty tank",
            "With lid, legs and fittings; the water is added to it.",
            Leaf.number(0, 3000, FieldUnit.KG),
            Tank::emptyMassKg);
    private static final Field<Tank, Double> AROUND = new Field<>(
            "aroundC",
            "Temperature around the tank",
            "Of the loft in a usual winter.",
            Leaf.number(-30, 60, FieldUnit.C),
            Tank::aroundC);
    static final Field<Tank, OptionalDouble> REFILL = new Field<>(
            "refillAtH",
            "Hour at which the tank is filled by hand",
            "Only where somebody fills it up once a day.",
            Said.number(Leaf.number(0, 24, FieldUnit.CLOCK), "cold water follows every draw by itself"),
            Tank::refillAtH);

    private static final Field<Tank, Optional<Tank.Kind>> SHAPE = new Field<>(
            "shape",
            "Shape of the tank",
            "It says what the sun can see of it, how much is in it below a level, and what carries it. A lying one lies along the"
                    + " panes.",
            Said.of(Leaf.code("shape", Tank.Kind.class, Tank.Kind.UPRIGHT_CYLINDER), "an upright cylinder"),
            Tank::kind);
    private static final Field<Tank, OptionalDouble> LENGTH = new Field<>(
            "lengthM",
            "Inside length of a box along the panes",
            "Its width follows from what it holds. Of a round tank it is passed over: what that holds and its height say its length.",
            Said.number(Leaf.number(0.05, 10, FieldUnit.M), "as long as wide"),
            Tank::lengthM);
    private static final Field<Tank, Optional<Tank.Coat>> COAT = new Field<>(
            "coat",
            "How the lagging sits",
            "Close-fitting is foamed on, or cut and taped without a gap; mats and jackets tied round by hand lose more.",
            Said.of(Leaf.code("coat", Tank.Coat.class, Tank.Coat.CLOSE_FITTING), "close-fitting"),
            Tank::coat);

    private static final Field<Tank, OptionalDouble> RADIATOR = new Field<>(
            "radiatorKW",
            "Heat of a radiator joined to the tank",
            "A sink for heat that a fire gives beyond what is drawn: beside the tank, joined to it near its top and near its base, without a"
                    + " valve. As it is sold: with its water 50 °C warmer than the place.",
            Said.number(Leaf.number(0, 5, FieldUnit.KW), "no radiator"),
            Tank::radiatorKW);

    static final Table<Tank> TABLE = new Table<>(
            List.of(
                    VOLUME,
                    HEIGHT,
                    BASE,
                    WATERLINE,
                    COLD_PORT,
                    RETURN_PORT,
                    DRAW_PORT,
                    LAGGING,
                    EMPTY_MASS,
                    AROUND,
                    REFILL,
                    SHAPE,
                    LENGTH,
                    COAT,
                    RADIATOR),
            of -> new Tank(
                    of.of(VOLUME),
                    of.of(HEIGHT),
                    of.of(BASE),
                    of.of(WATERLINE),
                    of.of(COLD_PORT),
                    of.of(RETURN_PORT),
                    of.of(DRAW_PORT),
                    of.of(LAGGING),
                    of.of(EMPTY_MASS),
                    of.of(AROUND),
                    of.of(REFILL),
                    of.of(SHAPE),
                    of.of(LENGTH),
                    of.of(COAT),
                    of.of(RADIATOR)));

    private TankFields() {}
}

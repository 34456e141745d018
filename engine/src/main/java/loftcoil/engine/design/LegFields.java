package loftcoil.engine.design;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.fault.Allowed;

/** The fields of {@link Leg}. */
final class LegFields {

    /** Lagging that a bare leg gets when only its material is named, mm. */
    static final double BARE_LEG_GETS_MM = 19;

    /** Temperatures there are round a pipe, °C. */
    static final Allowed AROUND_RANGE = new Allowed(-30, 250, "°C");

    static final Field<Leg, String> NAME =
            new Field<>("name", "Name of the leg", "What you call it; no two legs alike.", Leaf.name(), Leg::name);
    static final Field<Leg, String> TUBE =
            new Field<>("tube", "Tube of the leg", CoilFields.TUBE_HELP, CoilFields.tube(), Leg::tube);
    static final Field<Leg, Double> LENGTH = new Field<>(
            "lengthM",
            "Length of the leg",
            "Along the tube, from fitting to fitting.",
            Leaf.number(0.01, 100, FieldUnit.M),
            Leg::lengthM);
    static final Field<Leg, Double> RISE = new Field<>(
            "riseM",
            "Rise of the leg",
            "Level of its far end above that of its near end, on the water's way; less than 0 where it falls. All rises of a side"
                    + " lead from port to coil, or from coil to port, within 5 mm.",
            Leaf.fitting(new Allowed(-100, 100, "m"), FieldUnit.M),
            Leg::riseM);
    static final Field<Leg, Map<String, Integer>> FITTINGS = new Field<>(
            "fittings",
            "Fittings of the leg",
            "How many of each kind, by a key of the fitting table.",
            CoilFields.fittings(),
            Leg::fittings);
    static final Field<Leg, Optional<LaggingChoice>> LAGGING = new Field<>(
            "lagging",
            "Lagging of the leg",
            "Left out: a bare tube.",
            LaggingFields.startedAt(BARE_LEG_GETS_MM),
            Leg::lagging);
    static final Field<Leg, Double> AROUND = new Field<>(
            "aroundC",
            "Warmth round the leg while the fire burns",
            "Room, loft, or the hot air beside the flue.",
            Leaf.number(AROUND_RANGE.low(), AROUND_RANGE.high(), FieldUnit.C),
            Leg::aroundC);
    static final Field<Leg, OptionalDouble> AROUND_FIRE_OUT = new Field<>(
            "aroundFireOutC",
            "Warmth round the leg with the fire out",
            "Only where it is not simply the room's.",
            Said.number(
                    Leaf.number(AROUND_RANGE.low(), AROUND_RANGE.high(), FieldUnit.C),
                    "the same as while the fire burns, but not above the room's"),
            Leg::aroundFireOutC);

    static final Field<Leg, Optional<Boolean>> OUTDOORS = new Field<>(
            "outdoors",
            "Leg runs outdoors",
            "Where the air of the place is round it, month by month; the two temperatures above are then passed over.",
            Said.of(Leaf.flag(), "false: it runs in the house"),
            Leg::outdoors);

    static final Table<Leg> TABLE = new Table<>(
            List.of(NAME, TUBE, LENGTH, RISE, FITTINGS, LAGGING, AROUND, AROUND_FIRE_OUT, OUTDOORS),
            of -> new Leg(
                    of.of(NAME),
                    of.of(TUBE),
                    of.of(LENGTH),
                    of.of(RISE),
                    of.of(FITTINGS),
                    of.of(LAGGING),
                    of.of(AROUND),
                    of.of(AROUND_FIRE_OUT),
                    of.of(OUTDOORS)));

    static final Form<List<Leg>> LIST = new Parts<>(TABLE, Optional.of(new Allowed(1, 20, "legs")), true);

    private LegFields() {}
}

package loftcoil.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.design.DesignField.Assumed;
import loftcoil.engine.fire.Burn;
import loftcoil.engine.fire.WoodTable;

/** The fields of {@link Fire}. */
final class FireFields {

    private static final Field<Fire, String> WOOD = new Field<>(
            "wood",
            "Wood",
            "Hardwood, softwood or a species of the table of woods.",
            Leaf.known(WoodTable.known()),
            Fire::wood);
    private static final Field<Fire, Double> MOISTURE = new Field<>(
            "moisturePct",
            "Water in the wood, of its whole weight",
            "Two summers under a roof bring split logs to some 18 %.",
            Leaf.number(0, 60, FieldUnit.PERCENT),
            Fire::moisturePct);
    private static final Field<Fire, Double> BURN = new Field<>(
            "burnKgPerH",
            "Wood burnt in an hour",
            "Weigh a basket and time it.",
            Leaf.number(0.1, 20, FieldUnit.KG_PER_H),
            Fire::burnKgPerH);
    static final Field<Fire, Double> LIT_FROM = new Field<>(
            "litFromH",
            "Hour at which the fire is lit",
            "On a usual day, by the clock.",
            Leaf.number(0, 24, FieldUnit.CLOCK),
            Fire::litFromH);
    private static final Field<Fire, Double> LIT_FOR = new Field<>(
            "litForH",
            "Hours the fire burns",
            "From lighting to embers.",
            Leaf.number(0, 24, FieldUnit.H),
            Fire::litForH);
    static final Field<Fire, OptionalDouble> LIT_AGAIN_FROM = new Field<>(
            "litAgainFromH",
            "Hour at which a second fire is lit",
            "Only where two fires burn on a usual day, such as one in the morning.",
            Said.number(Leaf.number(0, 24, FieldUnit.CLOCK), "one fire a day"),
            Fire::litAgainFromH);
    static final Field<Fire, OptionalDouble> LIT_AGAIN_FOR = new Field<>(
            "litAgainForH",
            "Hours the second fire burns",
            "From lighting to embers, with as much wood an hour as the first.",
            Said.number(Leaf.number(0, 24, FieldUnit.H), "one fire a day"),
            Fire::litAgainForH);
    static final Field<Fire, List<Integer>> MONTHS = new Field<>(
            "months", "Months in which the fire is lit", "In the others it stays cold.", Leaf.months(), Fire::months);

    private static final Field<Fire, OptionalDouble> EXCESS_AIR = new Field<>(
            "excessAir",
            "Air through the fire, over the least it needs",
            "From a flue gas test: 20.9 over 20.9 less the oxygen in percent. It stays in doubt by as much as without a test.",
            Said.number(Leaf.number(1.2, 4, FieldUnit.PLAIN), new Assumed(1.6, Burn.COMMON_EXCESS_AIR, 3.2)),
            Fire::excessAir);
    private static final Field<Fire, OptionalDouble> FIREBOX = new Field<>(
            "fireboxM2",
            "Inner surface of the firebox",
            "Walls, floor, roof and door. The larger, the less of the embers' glow the coil takes.",
            Said.number(Leaf.number(0.1, 10, FieldUnit.M2), "0.8 m², a room heater of 0.3 m by 0.35 m and 0.45 m high"),
            Fire::fireboxM2);
    private static final Field<Fire, OptionalDouble> PASSAGE = new Field<>(
            "passageCm2",
            "Free section for the gas at the coil",
            "What is left open beside the tube where the gas passes it. The narrower, the faster it sweeps over the tube.",
            Said.number(Leaf.number(20, 10_000, FieldUnit.CM2), new Assumed(100, 200, 400)),
            Fire::passageCm2);

    static final Table<Fire> TABLE = new Table<>(
            List.of(
                    WOOD,
                    MOISTURE,
                    BURN,
                    LIT_FROM,
                    LIT_FOR,
                    LIT_AGAIN_FROM,
                    LIT_AGAIN_FOR,
                    MONTHS,
                    EXCESS_AIR,
                    FIREBOX,
                    PASSAGE),
            of -> new Fire(
                    of.of(WOOD),
                    of.of(MOISTURE),
                    of.of(BURN),
                    of.of(LIT_FROM),
                    of.of(LIT_FOR),
                    of.of(LIT_AGAIN_FROM),
                    of.of(LIT_AGAIN_FOR),
                    of.of(MONTHS),
                    of.of(EXCESS_AIR),
                    of.of(FIREBOX),
                    of.of(PASSAGE)));

    static final Form<Optional<Fire>> FORM = Part.started(TABLE, FireFields::orStarted);

    private FireFields() {}

    /**
     * The fire; where there is none, the one it is started with: 1.5 kg/h of air-dry hardwood for four hours from 17:00 in the colder
     * seven months of that half of the earth.
     */
    static Fire orStarted(Design design) {
        List<Integer> colder =
                design.site().isSouthern() ? List.of(4, 5, 6, 7, 8, 9, 10) : List.of(1, 2, 3, 4, 10, 11, 12);
        return design.fire().orElse(new Fire("hardwood", 18, 1.5, 17, 4, colder));
    }
}

package loftcoil.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.design.DesignField.Assumed;

/** The fields of {@link Safety} and of what stands in it. */
final class SafetyFields {

    private static final String ASKED = "not said: it is asked for, and never taken as a danger";

    static final Field<Vent, Vent.Kind> VENT_KIND = new Field<>(
            "kind",
            "How the tank is open to the air",
            "A tank over a fire needs a way out for steam that nothing can shut.",
            Leaf.code("vent", Vent.Kind.class, Vent.Kind.NONE),
            Vent::kind);
    static final Field<Vent, Optional<String>> VENT_TUBE = new Field<>(
            "tube",
            "Tube of the open vent",
            CoilFields.TUBE_HELP + " An open pipe is judged by its bore.",
            Said.of(CoilFields.tube(), "only where the vent is no pipe"),
            Vent::tube);
    static final Field<Vent, OptionalDouble> VENT_ABOVE = new Field<>(
            "aboveWaterlineM",
            "Open end of the vent above the waterline",
            "Too low, and a tank that boils throws its water out of it.",
            Said.number(Leaf.number(0, 10, FieldUnit.M), "only where the vent is no pipe"),
            Vent::aboveWaterlineM);
    static final Field<Vent, Optional<Boolean>> VENT_VALVE = new Field<>(
            "valve",
            "Valve in the open vent",
            "Whether anything in it can shut it.",
            Said.of(Leaf.flag(), "only where the vent is no pipe"),
            Vent::valve);
    static final Table<Vent> VENT = new Table<>(
            List.of(VENT_KIND, VENT_TUBE, VENT_ABOVE, VENT_VALVE),
            of -> new Vent(of.of(VENT_KIND), of.of(VENT_TUBE), of.of(VENT_ABOVE), of.of(VENT_VALVE)));

    static final Field<ColdFeed, ColdFeed.Kind> FEED_KIND = new Field<>(
            "kind",
            "How cold water comes into the tank",
            "By bucket, by a float valve, or from a cistern that has one.",
            Leaf.code("cold feed", ColdFeed.Kind.class, ColdFeed.Kind.BY_HAND),
            ColdFeed::kind);
    static final Field<ColdFeed, Boolean> DRINKING = new Field<>(
            "drinkingWater",
            "Joined to drinking water",
            "Whether somebody drinks from the same pipe.",
            Leaf.flag(),
            ColdFeed::drinkingWater);
    static final Field<ColdFeed, OptionalDouble> FEED_BORE = new Field<>(
            "boreMm",
            "Bore of the cold inlet",
            "The air gap over it goes by its bore.",
            Said.number(Leaf.number(5, 100, FieldUnit.MM), "only where it is filled by hand"),
            ColdFeed::boreMm);
    static final Field<ColdFeed, OptionalDouble> AIR_GAP = new Field<>(
            "airGapMm",
            "Free fall of the cold water into the tank",
            "From the inlet to the highest level the water can reach.",
            Said.number(Leaf.number(0, 1000, FieldUnit.MM), ASKED),
            ColdFeed::airGapMm);
    static final Field<ColdFeed, Optional<Boolean>> FEED_VALVE = new Field<>(
            "valve",
            "Valve between feed cistern and tank",
            "Whether anything can shut that pipe.",
            Said.of(Leaf.flag(), "only where there is no feed cistern"),
            ColdFeed::valve);
    private static final Field<ColdFeed, OptionalDouble> OVERFLOW_BORE = new Field<>(
            "overflowBoreMm",
            "Bore of the tank's overflow",
            "Wider than the cold inlet, or a float valve that sticks floods the loft; 0 where there is none.",
            Said.number(Leaf.number(0, 200, FieldUnit.MM), ASKED),
            ColdFeed::overflowBoreMm);
    private static final Field<ColdFeed, Optional<Boolean>> PLASTIC_CISTERN = new Field<>(
            "plasticCistern",
            "Feed cistern of plastic",
            "Boiling water that the vent or the feed throws into it softens it.",
            Said.of(Leaf.flag(), ASKED),
            ColdFeed::plasticCistern);
    static final Table<ColdFeed> FEED = new Table<>(
            List.of(FEED_KIND, DRINKING, FEED_BORE, AIR_GAP, FEED_VALVE, OVERFLOW_BORE, PLASTIC_CISTERN),
            of -> new ColdFeed(
                    of.of(FEED_KIND),
                    of.of(DRINKING),
                    of.of(FEED_BORE),
                    of.of(AIR_GAP),
                    of.of(FEED_VALVE),
                    of.of(OVERFLOW_BORE),
                    of.of(PLASTIC_CISTERN)));

    private static final Field<PlasticPipe, String> PLASTIC_NAME =
            new Field<>("name", "Name of the plastic pipe", "What you call it.", Leaf.name(), PlasticPipe::name);
    private static final Field<PlasticPipe, Boolean> PLASTIC_IN_LOOP = new Field<>(
            "inLoop",
            "Plastic pipe in the loop",
            "Whether it is part of the loop between coil and tank.",
            Leaf.flag(),
            PlasticPipe::inLoop);
    private static final Field<PlasticPipe, Double> FROM_HEATER = new Field<>(
            "fromHeaterM",
            "Plastic pipe from the heater",
            "Distance along the pipe.",
            Leaf.number(0, 50, FieldUnit.M),
            PlasticPipe::fromHeaterM);
    private static final Field<PlasticPipe, Optional<Boolean>> HOT_WATER = new Field<>(
            "hotWater",
            "Plastic pipe with hot water",
            "Whether hot water or steam of the tank can come into it, as into a draw pipe, a vent or an overflow.",
            Said.of(Leaf.flag(), ASKED),
            PlasticPipe::hotWater);
    private static final Table<PlasticPipe> PLASTIC = new Table<>(
            List.of(PLASTIC_NAME, PLASTIC_IN_LOOP, FROM_HEATER, HOT_WATER),
            of -> new PlasticPipe(of.of(PLASTIC_NAME), of.of(PLASTIC_IN_LOOP), of.of(FROM_HEATER), of.of(HOT_WATER)));

    private static final Field<Materials, Materials.Metal> TANK_OF = new Field<>(
            "tank",
            "What the tank is made of",
            "Where the water touches it.",
            Leaf.code("material", Materials.Metal.class, Materials.Metal.STAINLESS_STEEL),
            Materials::tank);
    private static final Field<Materials, List<Materials.Metal>> IN_LOOP = new Field<>(
            "inLoop",
            "Other metals in the loop",
            "Of nipples, unions and whatever else its water touches besides the copper tube.",
            Leaf.codes("material", Materials.Metal.class, Materials.Metal.STAINLESS_STEEL),
            Materials::inLoop);
    private static final Field<Materials, List<PlasticPipe>> PLASTIC_PIPES = new Field<>(
            "plasticPipes",
            "Plastic pipes",
            "Every one that carries this water; an empty list where there is none.",
            new Parts<>(PLASTIC, Optional.empty(), true),
            Materials::plasticPipes);
    private static final Table<Materials> MATERIALS = new Table<>(
            List.of(TANK_OF, IN_LOOP, PLASTIC_PIPES),
            of -> new Materials(of.of(TANK_OF), of.of(IN_LOOP), of.of(PLASTIC_PIPES)));

    private static final Field<Wheels, Double> MASS = new Field<>(
            "massKg",
            "Mass of the dwelling",
            "On the weighbridge, without the tank.",
            Leaf.number(50, 20_000, FieldUnit.KG),
            Wheels::massKg);
    private static final Field<Wheels, Double> CENTRE_HEIGHT = new Field<>(
            "centreHeightM",
            "Centre of mass above the road",
            "Of the dwelling without the tank.",
            Leaf.number(0.1, 4, FieldUnit.M),
            Wheels::centreHeightM);
    private static final Field<Wheels, Double> CENTRE_AHEAD = new Field<>(
            "centreAheadM",
            "Centre of mass ahead of the axle",
            "Less than 0 behind it.",
            Leaf.number(-5, 10, FieldUnit.M),
            Wheels::centreAheadM);
    private static final Field<Wheels, Double> HITCH_AHEAD = new Field<>(
            "hitchAheadM",
            "Hitch ahead of the axle",
            "From the middle of the axle, or of the axles, to the ball.",
            Leaf.number(0.5, 15, FieldUnit.M),
            Wheels::hitchAheadM);
    private static final Field<Wheels, Double> TRACK = new Field<>(
            "trackM",
            "Track",
            "Between the middles of left and right tyres.",
            Leaf.number(0.5, 3, FieldUnit.M),
            Wheels::trackM);
    private static final Field<Wheels, Double> AXLE_LIMIT = new Field<>(
            "axleLimitKg",
            "What the axle may carry",
            "By its plate.",
            Leaf.number(50, 40_000, FieldUnit.KG),
            Wheels::axleLimitKg);
    private static final Field<Wheels, Double> FLOOR_ABOVE_ROAD = new Field<>(
            "floorAboveRoadM",
            "Floor above the road",
            "The finished floor, the dwelling standing level.",
            Leaf.number(0, 2, FieldUnit.M),
            Wheels::floorAboveRoadM);
    private static final Field<Wheels, Double> TANK_AHEAD = new Field<>(
            "tankAheadM",
            "Middle of the tank ahead of the axle",
            "Less than 0 behind it.",
            Leaf.number(-10, 15, FieldUnit.M),
            Wheels::tankAheadM);
    private static final Field<Wheels, Double> TANK_ASIDE = new Field<>(
            "tankAsideM",
            "Middle of the tank off the middle line",
            "To the one side more than 0, to the other less.",
            Leaf.number(-2, 2, FieldUnit.M),
            Wheels::tankAsideM);
    private static final Table<Wheels> WHEELS_TABLE = new Table<>(
            List.of(
                    MASS,
                    CENTRE_HEIGHT,
                    CENTRE_AHEAD,
                    HITCH_AHEAD,
                    TRACK,
                    AXLE_LIMIT,
                    FLOOR_ABOVE_ROAD,
                    TANK_AHEAD,
                    TANK_ASIDE),
            of -> new Wheels(
                    of.of(MASS),
                    of.of(CENTRE_HEIGHT),
                    of.of(CENTRE_AHEAD),
                    of.of(HITCH_AHEAD),
                    of.of(TRACK),
                    of.of(AXLE_LIMIT),
                    of.of(FLOOR_ABOVE_ROAD),
                    of.of(TANK_AHEAD),
                    of.of(TANK_ASIDE)));

    private static final Field<Structure, Double> LOAD_LIMIT = new Field<>(
            "loadLimitKg",
            "What the structure may carry there",
            "From somebody competent to say.",
            Leaf.number(0, 20_000, FieldUnit.KG),
            Structure::loadLimitKg);
    private static final Field<Structure, Integer> BEARERS = new Field<>(
            "bearers",
            "Bearers under the tank",
            "That hand its weight on to walls or frame; 0 where it stands on boards alone.",
            Leaf.whole(0, 20, FieldUnit.BEARERS),
            Structure::bearers);
    private static final Field<Structure, Optional<Wheels>> WHEELS = new Field<>(
            "wheels",
            "The dwelling's wheels",
            "Left out: it has none.",
            Part.toldWhole(WHEELS_TABLE),
            Structure::wheels);
    private static final Table<Structure> STRUCTURE = new Table<>(
            List.of(LOAD_LIMIT, BEARERS, WHEELS),
            of -> new Structure(of.of(LOAD_LIMIT), of.of(BEARERS), of.of(WHEELS)));

    private static final Field<Absence, List<Integer>> EMPTY_MONTHS = new Field<>(
            "months",
            "Months in which the dwelling stands empty",
            "An empty list where it is lived in all year.",
            Leaf.months(),
            Absence::months);
    private static final Field<Absence, Boolean> DRAINED = new Field<>(
            "drained", "Drained while it stands empty", "Tank, loop and taps.", Leaf.flag(), Absence::drained);
    private static final Table<Absence> ABSENCE_TABLE =
            new Table<>(List.of(EMPTY_MONTHS, DRAINED), of -> new Absence(of.of(EMPTY_MONTHS), of.of(DRAINED)));

    private static final Field<Flue, Double> FLUE_CLEAR = new Field<>(
            "flueToCombustibleMm",
            "Flue pipe to what burns",
            "The least distance to wood, cloth or thatch anywhere along it.",
            Leaf.number(0, 5000, FieldUnit.MM),
            Flue::flueToCombustibleMm);
    private static final Field<Flue, Double> HEATER_CLEAR = new Field<>(
            "heaterToCombustibleMm",
            "Heater to what burns",
            "The least distance on any side.",
            Leaf.number(0, 5000, FieldUnit.MM),
            Flue::heaterToCombustibleMm);
    private static final Field<Flue, Double> ABOVE_ROOF = new Field<>(
            "topAboveRoofM",
            "Top of the flue above the roof",
            "Above where it leaves the roof.",
            Leaf.number(0, 20, FieldUnit.M),
            Flue::topAboveRoofM);
    /**
     * Single-wall flue pipe to what burns, mm: 18 in, NFPA 211, as restated in public; behind a shield as little as 6 in, from memory.
     */
    static final Assumed FLUE_DISTANCE_MM = new Assumed(152, 457, 457);
    /** Heater without a plate to what burns, mm: 36 in, NFPA 211, as restated in public; behind a shield as little as 12 in, from memory. */
    static final Assumed HEATER_DISTANCE_MM = new Assumed(305, 914, 914);

    private static final Field<Flue, OptionalDouble> FLUE_NEEDS = new Field<>(
            "flueNeedsMm",
            "Distance asked for at the flue",
            "By the maker's plate or the local code.",
            Said.number(Leaf.number(0, 5000, FieldUnit.MM), FLUE_DISTANCE_MM),
            Flue::flueNeedsMm);
    private static final Field<Flue, OptionalDouble> HEATER_NEEDS = new Field<>(
            "heaterNeedsMm",
            "Distance asked for at the heater",
            "By the maker's plate or the local code.",
            Said.number(Leaf.number(0, 5000, FieldUnit.MM), HEATER_DISTANCE_MM),
            Flue::heaterNeedsMm);
    static final Field<Flue, OptionalDouble> FLUE_HEIGHT = new Field<>(
            "heightM",
            "Height of the flue",
            "From heater to top; with it the gas at the top is worked out.",
            Said.number(Leaf.number(0, 30, FieldUnit.M), "the cooling of the gas is not worked out"),
            Flue::heightM);
    static final Field<Flue, OptionalDouble> FLUE_BORE = new Field<>(
            "diameterMm",
            "Inner diameter of the flue",
            "Needed with a height.",
            Said.number(Leaf.number(50, 600, FieldUnit.MM), "only where no height is said"),
            Flue::diameterMm);
    private static final Field<Flue, Optional<Boolean>> INSULATED = new Field<>(
            "insulated",
            "Insulated flue",
            "Needed with a height.",
            Said.of(Leaf.flag(), "only where no height is said"),
            Flue::insulated);
    private static final Table<Flue> FLUE = new Table<>(
            List.of(FLUE_CLEAR, HEATER_CLEAR, ABOVE_ROOF, FLUE_NEEDS, HEATER_NEEDS, FLUE_HEIGHT, FLUE_BORE, INSULATED),
            of -> new Flue(
                    of.of(FLUE_CLEAR),
                    of.of(HEATER_CLEAR),
                    of.of(ABOVE_ROOF),
                    of.of(FLUE_NEEDS),
                    of.of(HEATER_NEEDS),
                    of.of(FLUE_HEIGHT),
                    of.of(FLUE_BORE),
                    of.of(INSULATED)));

    private static final Field<FireRoom, Boolean> CO_ALARM = new Field<>(
            "carbonMonoxideAlarm",
            "Carbon monoxide alarm",
            "Whether there is one in the room of the fire.",
            Leaf.flag(),
            FireRoom::carbonMonoxideAlarm);
    private static final Field<FireRoom, Double> AIR_OPENING = new Field<>(
            "airOpeningCm2",
            "Openings for air",
            "Free area to the outside that cannot be shut.",
            Leaf.number(0, 5000, FieldUnit.CM2),
            FireRoom::airOpeningCm2);
    private static final Field<FireRoom, Boolean> FAN = new Field<>(
            "extractFan",
            "Extract fan",
            "Whether one draws air out of the same room.",
            Leaf.flag(),
            FireRoom::extractFan);
    private static final Table<FireRoom> FIRE_ROOM_TABLE = new Table<>(
            List.of(CO_ALARM, AIR_OPENING, FAN), of -> new FireRoom(of.of(CO_ALARM), of.of(AIR_OPENING), of.of(FAN)));

    static final Field<Safety, Optional<Vent>> VENT_PART =
            new Field<>("vent", "Vent", "Left out: " + ASKED, Part.started(VENT, SafetyFields::openPipe), Safety::vent);
    static final Field<Safety, Optional<ColdFeed>> FEED_PART = new Field<>(
            "coldFeed", "Cold feed", "Left out: " + ASKED, Part.started(FEED, SafetyFields::feed), Safety::coldFeed);
    private static final Field<Safety, Optional<Materials>> MATERIALS_PART =
            new Field<>("materials", "Materials", "Left out: " + ASKED, Part.toldWhole(MATERIALS), Safety::materials);
    private static final Field<Safety, Optional<Structure>> STRUCTURE_PART = new Field<>(
            "structure", "What carries the tank", "Left out: " + ASKED, Part.toldWhole(STRUCTURE), Safety::structure);
    static final Field<Safety, Optional<Absence>> ABSENCE = new Field<>(
            "absence", "Away from home", "Left out: " + ASKED, Part.toldWhole(ABSENCE_TABLE), Safety::absence);
    private static final Field<Safety, Optional<Boolean>> ANTIFREEZE = new Field<>(
            "antifreeze",
            "Antifreeze in the water",
            "Whether any is to be put into the water of the loop.",
            Said.of(Leaf.flag(), "none"),
            Safety::antifreeze);
    private static final Field<Safety, Optional<Flue>> FLUE_PART =
            new Field<>("flue", "Flue", "Left out: " + ASKED, Part.toldWhole(FLUE), Safety::flue);
    private static final Field<Safety, Optional<FireRoom>> FIRE_ROOM = new Field<>(
            "fireRoom", "Room of the fire", "Left out: " + ASKED, Part.toldWhole(FIRE_ROOM_TABLE), Safety::fireRoom);
    private static final Field<Safety, Optional<Boolean>> FRAIL = new Field<>(
            "childrenOrFrail",
            "Children, old or ill people at the taps",
            "Whether they use them.",
            Said.of(Leaf.flag(), ASKED),
            Safety::childrenOrFrail);
    private static final Field<Safety, Optional<Boolean>> SIGNED = new Field<>(
            "signedNotForDrinking",
            "Signs at the taps: not for drinking or cooking",
            "Whether there is one at each tap.",
            Said.of(Leaf.flag(), ASKED),
            Safety::signedNotForDrinking);

    static final Table<Safety> TABLE = new Table<>(
            List.of(
                    VENT_PART,
                    FEED_PART,
                    MATERIALS_PART,
                    STRUCTURE_PART,
                    ABSENCE,
                    ANTIFREEZE,
                    FLUE_PART,
                    FIRE_ROOM,
                    FRAIL,
                    SIGNED),
            of -> new Safety(
                    of.of(VENT_PART),
                    of.of(FEED_PART),
                    of.of(MATERIALS_PART),
                    of.of(STRUCTURE_PART),
                    of.of(ABSENCE),
                    of.of(ANTIFREEZE),
                    of.of(FLUE_PART),
                    of.of(FIRE_ROOM),
                    of.of(FRAIL),
                    of.of(SIGNED)));

    private SafetyFields() {}

    /** What is said, if only nothing. */
    static Safety said(Design design) {
        return design.safety().orElse(Safety.UNSAID);
    }

    /** The vent as an open pipe; where nothing is said of one: 22 mm copper, its end 0.30 m above the waterline, no valve. */
    static Vent openPipe(Design design) {
        Optional<Vent> vent = said(design).vent();
        return new Vent(
                Vent.Kind.OPEN_PIPE,
                Optional.of(vent.flatMap(Vent::tube).orElse("EN1057 22x0.9")),
                OptionalDouble.of(vent.map(Vent::aboveWaterlineM)
                        .orElse(OptionalDouble.empty())
                        .orElse(0.30)),
                Optional.of(vent.flatMap(Vent::valve).orElse(false)));
    }

    /** The cold feed with every part said; where nothing is: a float valve of 15 mm bore, falling 30 mm, not drunk from. */
    static ColdFeed feed(Design design) {
        Optional<ColdFeed> feed = said(design).coldFeed();
        return new ColdFeed(
                feed.map(ColdFeed::kind).orElse(ColdFeed.Kind.FLOAT_VALVE),
                feed.map(ColdFeed::drinkingWater).orElse(false),
                OptionalDouble.of(feed.map(ColdFeed::boreMm)
                        .orElse(OptionalDouble.empty())
                        .orElse(15)),
                OptionalDouble.of(feed.map(ColdFeed::airGapMm)
                        .orElse(OptionalDouble.empty())
                        .orElse(30)),
                Optional.of(feed.flatMap(ColdFeed::valve).orElse(false)),
                feed.map(ColdFeed::overflowBoreMm).orElse(OptionalDouble.empty()),
                feed.flatMap(ColdFeed::plasticCistern));
    }
}

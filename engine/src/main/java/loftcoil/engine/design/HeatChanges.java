package loftcoil.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The named changes of what heats: the fire, where the coil's heat is taken from, and the panes. */
final class HeatChanges {

    /** Where the coil's heat is taken from. */
    private enum HeatFrom implements Coded {
        WORKED_OUT("worked out from the fire"),
        STATED("as stated");

        private final String code;

        HeatFrom(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    /** Months in which the fire is lit, by a name that can be chosen. */
    private enum Season implements Coded {
        ALL_YEAR("all year"),
        COLD_NINE("September to May"),
        COLD_SEVEN("October to April"),
        COLD_FIVE("November to March"),
        AWAY_IN_WINTER("October to December, March and April"),
        SOUTHERN_NINE("March to November"),
        SOUTHERN_EIGHT("March to October"),
        SOUTHERN_SEVEN("April to October"),
        SOUTHERN_FIVE("May to September"),
        AWAY_IN_SOUTHERN_WINTER("April to June, September and October"),
        /** Others than those that can be chosen; choosing it leaves them as they are. */
        OTHER("other months, as the design says");

        private final String code;

        Season(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }

        /** The months, 1 to 12 in order; none for {@link #OTHER}. */
        List<Integer> months() {
            return switch (this) {
                case ALL_YEAR -> List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12);
                case COLD_NINE -> List.of(1, 2, 3, 4, 5, 9, 10, 11, 12);
                case COLD_SEVEN -> List.of(1, 2, 3, 4, 10, 11, 12);
                case COLD_FIVE -> List.of(1, 2, 3, 11, 12);
                case AWAY_IN_WINTER -> List.of(3, 4, 10, 11, 12);
                case SOUTHERN_NINE -> List.of(3, 4, 5, 6, 7, 8, 9, 10, 11);
                case SOUTHERN_EIGHT -> List.of(3, 4, 5, 6, 7, 8, 9, 10);
                case SOUTHERN_SEVEN -> List.of(4, 5, 6, 7, 8, 9, 10);
                case SOUTHERN_FIVE -> List.of(5, 6, 7, 8, 9);
                case AWAY_IN_SOUTHERN_WINTER -> List.of(4, 5, 6, 9, 10);
                case OTHER -> List.of();
            };
        }

        static Season of(Design design) {
            List<Integer> lit = FireFields.orStarted(design).months().stream()
                    .sorted()
                    .distinct()
                    .toList();
            return Stream.of(values())
                    .filter(season -> season != OTHER && season.months().equals(lit))
                    .findFirst()
                    .orElse(OTHER);
        }
    }

    /** How often a fire is lit on a usual day. */
    private enum FiresADay implements Coded {
        ONCE("once"),
        TWICE("twice");

        private final String code;

        FiresADay(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    private static final double MORNING_H = 6;
    private static final double DAY_H = 24;

    /** What is over the panes at night. */
    private enum Board implements Coded {
        NONE("none"),
        FOAM("40 mm of foam board");

        private final String code;

        Board(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    /** The glass of the unit next to the tank. */
    private enum Unit implements Coded {
        PLAIN("plain glass", Optional.empty()),
        HARD("a hard coat", Optional.of(Window.Coating.HARD)),
        SOFT("a soft coat", Optional.of(Window.Coating.SOFT));

        private final String code;
        private final Optional<Window.Coating> coating;

        Unit(String code, Optional<Window.Coating> coating) {
            this.code = code;
            this.coating = coating;
        }

        @Override
        public String code() {
            return code;
        }

        static Unit of(Design design) {
            Optional<Window.Coating> now = WindowFields.orStarted(design).coating();
            return Stream.of(values())
                    .filter(unit -> unit.coating.equals(now))
                    .findFirst()
                    .orElse(PLAIN);
        }
    }

    private HeatChanges() {}

    static void into(ChangeTable table) {
        table.choice("coil.heat", "Where the coil's heat is taken from", HeatFrom.class, "coil.heatKW")
                .as(
                        design -> design.coil().heatKW().isPresent() ? HeatFrom.STATED : HeatFrom.WORKED_OUT,
                        HeatChanges::heatFrom);
        table.fields("fire.wood", "fire.moisturePct", "fire.burnKgPerH", "fire.litFromH", "fire.litForH");
        table.choice(
                        "fire.aDay",
                        "How often a fire is lit on a usual day",
                        FiresADay.class,
                        "fire.litAgainFromH",
                        "fire.litAgainForH")
                .as(
                        design ->
                                FireFields.orStarted(design).lightings().size() > 1 ? FiresADay.TWICE : FiresADay.ONCE,
                        HeatChanges::lit);
        table.choice("fire.months", "Months in which the fire is lit", Season.class, "fire.months")
                .as(Season::of, HeatChanges::lit);
        table.fields(
                "window.panes",
                "window.areaM2",
                "window.tiltDeg",
                "window.azimuthDeg",
                "window.gapMm",
                "window.absorptance",
                "window.reflectorShare",
                "window.toughened");
        table.choice("window.unit", "Glass of the unit next to the tank", Unit.class, "window.coating")
                .as(Unit::of, HeatChanges::glazed);
        table.choice(
                        "window.shutter",
                        "Board over the panes at night",
                        Board.class,
                        "window.shutter.resistanceM2KPerW",
                        "window.shutter.shutFromH",
                        "window.shutter.shutForH")
                .as(
                        design -> WindowFields.orStarted(design).shutter().isPresent() ? Board.FOAM : Board.NONE,
                        HeatChanges::shaded);
    }

    /** The heat of the coil as stated, else as worked out at a usual flow with the water coming in at 40 °C, kW. */
    static double statedOrWorkedOutKW(Design design) {
        double usualKgPerS = 0.02;
        double usualInletC = 40;
        return design.coilHeating().heatW(usualKgPerS, usualInletC) / 1000;
    }

    /** Where the heat was worked out, the statement begins with the present best estimate, to 0.1 kW. */
    private static Design heatFrom(Design design, HeatFrom from) {
        if (from == HeatFrom.WORKED_OUT) {
            Design fired = DesignTable.with(design, DesignTable.FIRE, Optional.of(FireFields.orStarted(design)));
            return fired.with(
                    DesignTable.COIL, CoilFields.TABLE.with(design.coil(), CoilFields.HEAT, OptionalDouble.empty()));
        }
        if (design.coil().heatKW().isPresent()) {
            return design.checked();
        }
        OptionalDouble estimate = OptionalDouble.of(Math.rint(statedOrWorkedOutKW(design) * 10) / 10);
        return design.with(DesignTable.COIL, CoilFields.TABLE.with(design.coil(), CoilFields.HEAT, estimate));
    }

    /** A second fire is started at 6:00, or where the first burns then, twelve hours after it; for two hours, or as long as the first. */
    private static Design lit(Design design, FiresADay often) {
        Fire fire = FireFields.orStarted(design);
        boolean twice = often == FiresADay.TWICE;
        if (twice == fire.lightings().size() > 1) {
            return design.with(DesignTable.FIRE, Optional.of(fire));
        }
        double forH = Math.min(2, fire.litForH());
        boolean morningFree =
                apartH(fire.litFromH(), MORNING_H) >= fire.litForH() && apartH(MORNING_H, fire.litFromH()) >= forH;
        double fromH = morningFree ? MORNING_H : (fire.litFromH() + DAY_H / 2) % DAY_H;
        Fire from = FireFields.TABLE.with(
                fire, FireFields.LIT_AGAIN_FROM, twice ? OptionalDouble.of(fromH) : OptionalDouble.empty());
        Fire changed = FireFields.TABLE.with(
                from, FireFields.LIT_AGAIN_FOR, twice ? OptionalDouble.of(forH) : OptionalDouble.empty());
        return design.with(DesignTable.FIRE, Optional.of(changed));
    }

    /** Hours from one time of day to the next time it is another. */
    private static double apartH(double fromH, double toH) {
        return (toH - fromH + DAY_H) % DAY_H;
    }

    private static Design lit(Design design, Season season) {
        Fire fire = FireFields.orStarted(design);
        List<Integer> months = season == Season.OTHER ? fire.months() : season.months();
        return design.with(DesignTable.FIRE, Optional.of(FireFields.TABLE.with(fire, FireFields.MONTHS, months)));
    }

    private static Design glazed(Design design, Unit unit) {
        Window window = WindowFields.orStarted(design);
        return design.with(
                DesignTable.WINDOW, Optional.of(WindowFields.TABLE.with(window, WindowFields.COATING, unit.coating)));
    }

    private static Design shaded(Design design, Board board) {
        Window window = WindowFields.orStarted(design);
        Optional<ShutterChoice> shutter = board == Board.NONE
                ? Optional.empty()
                : Optional.of(window.shutter().orElse(WindowFields.NEW_BOARD));
        return design.with(
                DesignTable.WINDOW, Optional.of(WindowFields.TABLE.with(window, WindowFields.SHUTTER, shutter)));
    }
}

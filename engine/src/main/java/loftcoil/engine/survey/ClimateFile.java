package loftcoil.engine.survey;

import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import loftcoil.engine.design.Monthly;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/**
 * Sun and air of a year from the text of a weather file: hours in the open EPW form (of each data line the dry bulb in field 7 and the
 * sun on the level in field 14, by the data dictionary of its publisher; 99.9 and 9999 stand for what is missing), or twelve lines with a
 * month's sun in kWh/m² a day and air in °C.
 *
 * @param monthly the twelve months, January first
 * @param place where the file says it was measured; empty where it does not
 */
public record ClimateFile(Monthly monthly, Optional<Spot> place) {

    private static final String PATH = "file";
    private static final int HEADER_LINES = 8;
    private static final int MONTHS = 12;
    private static final int LETTERS = 3;
    private static final int MONTH_FIELD = 1;
    private static final int DRY_BULB_FIELD = 6;
    private static final int SUN_FIELD = 13;
    private static final double NO_AIR = 99;
    private static final double NO_SUN = 9999;
    private static final double HOURS_A_DAY = 24;
    private static final double W_PER_KW = 1000;

    /** A month with fewer hours than these tells no mean. */
    private static final int LEAST_HOURS = 600;

    private static final int[] LOCATION_FIELDS = {6, 7, 8, 9};

    /**
     * A place on the map.
     *
     * @param latitudeDeg latitude, degrees, north positive
     * @param longitudeDeg longitude, degrees, east positive
     * @param utcOffsetH clock ahead of UTC, h
     * @param altitudeM above the sea, m
     */
    public record Spot(double latitudeDeg, double longitudeDeg, double utcOffsetH, double altitudeM) {}

    /**
     * Reads the text of a weather file.
     *
     * @param text all of it
     * @throws RefusedException where it is neither form, or lacks months; the path says the line
     */
    public static ClimateFile read(String text) {
        // Some editors put a mark before a text, which is no part of it.
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        List<String> lines =
                plain.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
        return !lines.isEmpty() && lines.get(0).toUpperCase(Locale.ROOT).startsWith("LOCATION,")
                ? hours(lines)
                : new ClimateFile(months(lines), Optional.empty());
    }

    private static ClimateFile hours(List<String> lines) {
        double[] sun = new double[MONTHS];
        double[] air = new double[MONTHS];
        int[] sunHours = new int[MONTHS];
        int[] airHours = new int[MONTHS];
        for (int i = HEADER_LINES; i < lines.size(); i++) {
            String[] fields = lines.get(i).split(",", -1);
            if (fields.length <= SUN_FIELD) {
                throw refused(i, "a line of " + fields.length + " fields", "an hour with at least 14 fields");
            }
            int month = (int) number(fields[MONTH_FIELD], i) - 1;
            if (month < 0 || month >= MONTHS) {
                throw refused(i, fields[MONTH_FIELD], "a month, 1 to 12");
            }
            double airC = number(fields[DRY_BULB_FIELD], i);
            double sunW = number(fields[SUN_FIELD], i);
            if (airC < NO_AIR) {
                air[month] += airC;
                airHours[month]++;
            }
            if (sunW < NO_SUN) {
                sun[month] += sunW;
                sunHours[month]++;
            }
        }
        List<Double> sunMeans = new ArrayList<>();
        List<Double> airMeans = new ArrayList<>();
        for (int month = 0; month < MONTHS; month++) {
            int least = Math.min(sunHours[month], airHours[month]);
            if (least < LEAST_HOURS) {
                throw RefusedException.of(
                        PATH + ": month " + (month + 1),
                        least + " hours",
                        "at least " + LEAST_HOURS + " hours of sun and air");
            }
            sunMeans.add(rounded(sun[month] / sunHours[month] * HOURS_A_DAY / W_PER_KW, 1000));
            airMeans.add(rounded(air[month] / airHours[month], 100));
        }
        return new ClimateFile(new Monthly(sunMeans, airMeans), Optional.of(spot(lines.get(0))));
    }

    private static Spot spot(String line) {
        String[] fields = line.split(",", -1);
        if (fields.length <= LOCATION_FIELDS[3]) {
            throw refused(
                    0,
                    "a first line of " + fields.length + " fields",
                    "LOCATION with latitude, longitude, clock and altitude");
        }
        return new Spot(
                number(fields[LOCATION_FIELDS[0]], 0),
                number(fields[LOCATION_FIELDS[1]], 0),
                number(fields[LOCATION_FIELDS[2]], 0),
                number(fields[LOCATION_FIELDS[3]], 0));
    }

    /**
     * A line of a table.
     *
     * @param month the month it says it is of, 1 to 12; 0 where it says none
     * @param sun kWh/m² a day
     * @param airC °C
     */
    private record Row(int month, double sun, double airC) {}

    /** Twelve lines; one of headings before them is passed over. Where they name their months these are put in order. */
    private static Monthly months(List<String> lines) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Optional<Row> row = row(lines.get(i), i);
            if (row.isPresent()) {
                rows.add(row.get());
            } else if (i > 0) {
                throw refused(i, "“" + lines.get(i) + "”", "a month's sun in kWh/m² a day and air in °C");
            }
        }
        if (rows.size() != MONTHS) {
            throw RefusedException.of(PATH, rows.size() + " months", "12 lines, or hours in the EPW form");
        }
        if (rows.stream().anyMatch(row -> row.month() > 0)) {
            rows.sort(Comparator.comparingInt(Row::month));
            for (int month = 1; month <= MONTHS; month++) {
                if (rows.get(month - 1).month() != month) {
                    throw RefusedException.of(
                            PATH, "no line of month " + month, "each month once, or no months at all");
                }
            }
        }
        return new Monthly(
                rows.stream().map(Row::sun).toList(),
                rows.stream().map(Row::airC).toList());
    }

    /** The last two numbers of a line; a comma parts them, or is their decimal mark where a semicolon, tab or blank parts them. */
    private static Optional<Row> row(String line, int at) {
        boolean commas = line.contains(",") && !line.matches(".*[;\t].*") && !line.matches(".*\\d,\\d+\\s+-?\\d.*");
        String[] fields = line.split(commas ? "," : line.matches(".*[;\t].*") ? "[;\t]" : "\\s+", -1);
        if (fields.length < 2) {
            return Optional.empty();
        }
        int last = fields.length - 1;
        Optional<Double> air = parsed(fields[last]);
        Optional<Double> sun = parsed(fields[last - 1]);
        long before = Stream.of(fields)
                .limit(last - 1)
                .filter(field -> parsed(field).isPresent())
                .count();
        if (commas && air.isPresent() && sun.isPresent() && before > 1) {
            throw refused(at, "“" + line + "”", "two numbers; those with a decimal comma parted by a semicolon");
        }
        int month = last > 1 ? month(fields[0]) : 0;
        return sun.flatMap(kwh -> air.map(degrees -> new Row(month, kwh, degrees)));
    }

    /** The month of a name, of at least three letters, or of a number; 0 where it is none. */
    private static int month(String text) {
        String name = text.strip().toLowerCase(Locale.ROOT);
        if (name.matches("0?[1-9]|1[0-2]")) {
            return Integer.parseInt(name);
        }
        return Stream.of(Month.values())
                .filter(month -> name.length() >= LETTERS
                        && month.name().toLowerCase(Locale.ROOT).startsWith(name.replaceFirst("\\.$", "")))
                .map(Month::getValue)
                .findFirst()
                .orElse(0);
    }

    private static Optional<Double> parsed(String text) {
        try {
            double value = Double.parseDouble(text.strip().replace(',', '.'));
            return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
        } catch (NumberFormatException noNumber) {
            return Optional.empty();
        }
    }

    private static double number(String text, int line) {
        return parsed(text).orElseThrow(() -> refused(line, "“" + text.strip() + "”", "a number"));
    }

    private static RefusedException refused(int line, String given, String allowed) {
        return new RefusedException(List.of(new Fault(PATH + ": line " + (line + 1), given, allowed, "")));
    }

    private static double rounded(double value, double parts) {
        return Math.round(value * parts) / parts;
    }
}

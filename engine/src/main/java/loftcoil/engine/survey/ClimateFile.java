package loftcoil.engine.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
        List<String> lines =
                text.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
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

    /** Twelve lines; one of headings before them is passed over, and the number or name of the month at their beginning. */
    private static Monthly months(List<String> lines) {
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Optional<double[]> row = row(lines.get(i));
            if (row.isPresent()) {
                rows.add(row.get());
            } else if (i > 0) {
                throw refused(i, "“" + lines.get(i) + "”", "a month's sun in kWh/m² a day and air in °C");
            }
        }
        if (rows.size() != MONTHS) {
            throw RefusedException.of(PATH, rows.size() + " months", "12 lines, or hours in the EPW form");
        }
        return new Monthly(
                rows.stream().map(row -> row[0]).toList(),
                rows.stream().map(row -> row[1]).toList());
    }

    /** The last two numbers of a line; a comma parts them, or is their decimal mark where a semicolon or tab parts them. */
    private static Optional<double[]> row(String line) {
        boolean commas = !line.contains(";") && !line.contains("\t");
        String[] fields = line.split(commas ? "," : "[;\t]", -1);
        if (fields.length < 2) {
            return Optional.empty();
        }
        Optional<Double> air = parsed(fields[fields.length - 1]);
        return parsed(fields[fields.length - 2]).flatMap(sun -> air.map(degrees -> new double[] {sun, degrees}));
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

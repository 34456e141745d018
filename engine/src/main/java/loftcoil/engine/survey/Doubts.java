package loftcoil.engine.survey;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import loftcoil.engine.design.Absence;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Fire;
import loftcoil.engine.design.Safety;
import loftcoil.engine.design.Site;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;

/** What looks like a slip of whoever told a house: a clock of another longitude, panes that face away, a year of the other half. */
public final class Doubts {

    /** Clocks that law sets stand up to some three hours from the sun. */
    private static final double CLOCK_H = 3;

    private static final double DEGREES_AN_HOUR = 15;

    /** Nearer to the equator the noon sun stands on either side, and the year has no winter. */
    private static final double TROPIC_DEG = 23.5;

    /** Panes to the east or west still see half of the noon sun. */
    private static final double AWAY_DEG = 100;

    private static final List<Integer> NORTHERN_SUMMER = List.of(6, 7, 8);
    private static final List<Integer> SOUTHERN_SUMMER = List.of(12, 1, 2);
    private static final int MONTHS = 12;

    private Doubts() {}

    /**
     * What looks like a slip.
     *
     * @param kind which, by which other programs know it: {@code clock}, {@code panes}, {@code seasons}, {@code fire} or {@code absence}
     * @param field path of the field of the design to look at first
     * @param words the question
     */
    public record Slip(String kind, String field, MeasuredText words) {}

    /** The questions to ask about a design, the place first; none where nothing looks like a slip. */
    public static List<MeasuredText> of(Design design) {
        return slips(design).stream().map(Slip::words).toList();
    }

    /** The same, each with its kind and its field. */
    public static List<Slip> slips(Design design) {
        List<Slip> doubts = new ArrayList<>();
        clock(design.site(), doubts);
        if (Math.abs(design.site().latitudeDeg()) > TROPIC_DEG) {
            panes(design, doubts);
            seasons(design.site(), doubts);
        }
        design.fire().ifPresent(fire -> fire(design.site(), fire, doubts));
        design.safety().flatMap(Safety::absence).ifPresent(absence -> absence(design.site(), absence, doubts));
        return List.copyOf(doubts);
    }

    private static void clock(Site site, List<Slip> doubts) {
        double sunH = site.longitudeDeg() / DEGREES_AN_HOUR;
        double apart = Math.abs(site.utcOffsetH() - sunH);
        if (Math.min(apart, 24 - apart) > CLOCK_H) {
            doubts.add(slip(
                    "clock",
                    "site.utcOffsetH",
                    "clock",
                    new Measure(site.utcOffsetH(), MeasureKind.TIME_H),
                    "sun",
                    new Measure(Math.rint(sunH), MeasureKind.TIME_H)));
        }
    }

    private static void panes(Design design, List<Slip> doubts) {
        boolean north = design.site().latitudeDeg() > 0;
        design.window().ifPresent(window -> {
            double off = Math.abs(window.azimuthDeg() - (north ? 180 : 0)) % 360;
            if (Math.min(off, 360 - off) > AWAY_DEG) {
                doubts.add(slip(
                        "panes",
                        "window.azimuthDeg",
                        "noon",
                        SurveyWords.say(north ? "doubt.panes.south" : "doubt.panes.north")));
            }
        });
    }

    private static void seasons(Site site, List<Slip> doubts) {
        double june = meanC(site, NORTHERN_SUMMER);
        double december = meanC(site, SOUTHERN_SUMMER);
        if (site.latitudeDeg() > 0 ? june < december : june > december) {
            doubts.add(slip("seasons", "site.latitudeDeg"));
        }
    }

    private static void fire(Site site, Fire fire, List<Slip> doubts) {
        List<Integer> dark = IntStream.rangeClosed(1, MONTHS)
                .boxed()
                .filter(month -> !fire.months().contains(month))
                .toList();
        if (fire.months().isEmpty() || dark.isEmpty()) {
            return;
        }
        double litC = meanC(site, fire.months());
        double darkC = meanC(site, dark);
        if (litC > darkC) {
            doubts.add(slip("fire", "fire.months", "lit", Measure.celsius(litC), "dark", Measure.celsius(darkC)));
        }
    }

    /** Who drains a house does it for the frost. */
    private static void absence(Site site, Absence absence, List<Slip> doubts) {
        if (!absence.drained() || absence.months().isEmpty()) {
            return;
        }
        double emptyC = meanC(site, absence.months());
        double yearC = meanC(site, IntStream.rangeClosed(1, MONTHS).boxed().toList());
        if (emptyC > yearC) {
            doubts.add(slip(
                    "absence",
                    "safety.absence.months",
                    "empty",
                    Measure.celsius(emptyC),
                    "year",
                    Measure.celsius(yearC)));
        }
    }

    private static Slip slip(String kind, String field, Object... filling) {
        return new Slip(kind, field, SurveyWords.say("doubt." + kind, filling));
    }

    private static double meanC(Site site, Collection<Integer> months) {
        return months.stream()
                .mapToDouble(month -> site.monthly().meanAirC().get(month - 1))
                .average()
                .orElse(Double.NaN);
    }
}

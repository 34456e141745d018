package loftcoil.engine.build;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.caution.Ask;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Grounds;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.Headings;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.survey.Doubts;
import loftcoil.engine.words.MeasuredText;

/**
 * The build sheet of a design.
 *
 * @param design the design
 * @param sheet its figures
 * @param buildable whether no danger is known and no value is borrowed any more; where not, {@link #verdict} says why
 * @param verdict the finding in a few words
 * @param reasons why it must not be built as drawn; empty where it may
 * @param figures figures with their doubt
 * @param drawing elevation and plan to scale
 * @param parts what to buy
 * @param cuts what to cut
 * @param fixings how pipes are held and bent, and the room of the coil
 * @param loads what it weighs
 * @param filling filling and first fire, step by step
 * @param firstHour what to expect in the first hour; empty where the loop stands still or boils
 * @param upkeep what to look after
 * @param logs forms to fill in
 */
public record BuildSheet(
        Design design,
        Sheet sheet,
        boolean buildable,
        MeasuredText verdict,
        List<MeasuredText> reasons,
        List<BuildFigure> figures,
        Drawing drawing,
        PartsList parts,
        CutList cuts,
        Fixings fixings,
        Loads loads,
        Filling filling,
        Optional<FirstHour> firstHour,
        Upkeep upkeep,
        List<LogForm> logs) {

    /** Keeps copies of the lists. */
    public BuildSheet {
        reasons = List.copyOf(reasons);
        figures = List.copyOf(figures);
        logs = List.copyOf(logs);
    }

    /**
     * Makes the sheet; the years in it take a second or two.
     *
     * @param design a design
     * @throws loftcoil.engine.fault.RefusedException where the design cannot be computed
     */
    public static BuildSheet of(Design design) {
        return of(Sheet.whole(design, Sheet.USUAL_TANK_C));
    }

    /**
     * Makes the sheet from figures that are known already.
     *
     * @param sheet a whole sheet, the tank at {@link Sheet#USUAL_TANK_C}
     */
    public static BuildSheet of(Sheet sheet) {
        return of(sheet, Headings.UNKNOWN);
    }

    /**
     * The same of a house whose pipes were surveyed.
     *
     * @param sheet a whole sheet, the tank at {@link Sheet#USUAL_TANK_C}
     * @param headings which way its level runs lead
     */
    public static BuildSheet of(Sheet sheet, Headings headings) {
        return BuildMaker.of(sheet, headings);
    }

    /** How many of the values that it all rests on are yours, assumed and borrowed. */
    public Grounds grounds() {
        return sheet.grounds();
    }

    /** What looks like a slip of whoever told the house, a question each. */
    public List<MeasuredText> doubts() {
        return Doubts.of(design);
    }

    /** What can hurt somebody. */
    public List<Caution> cautions() {
        return sheet.cautions();
    }

    /** What the design does not say and that decides over a danger. */
    public List<Ask> asks() {
        return sheet.asks();
    }
}

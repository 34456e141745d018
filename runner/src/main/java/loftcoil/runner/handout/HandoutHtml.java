package loftcoil.runner.handout;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.clear.Clears;
import loftcoil.runner.show.Html;

/** The build sheet as a file of its own: HTML for screen and printer, or PDF. */
public final class HandoutHtml {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private HandoutHtml() {}

    /** The build sheet as one HTML file that needs no other and runs no script; it says that nobody searched what clears a danger. */
    public static String buildSheet(BuildSheet sheet, SheetSetting setting) {
        return buildSheet(sheet, Optional.empty(), setting);
    }

    /** The same, with what would clear its dangers where that was searched. */
    public static String buildSheet(BuildSheet sheet, Optional<Clears> clears, SheetSetting setting) {
        return frame(sheet, setting).forBrowser(body(sheet, clears, setting));
    }

    /** The build sheet as PDF, with what would clear its dangers where that was searched. */
    public static byte[] buildSheetPdf(BuildSheet sheet, Optional<Clears> clears, SheetSetting setting) {
        return HandoutPdf.of(frame(sheet, setting).forPdf(body(sheet, clears, setting)));
    }

    private static Frame frame(BuildSheet sheet, SheetSetting setting) {
        String name = sheet.design().name();
        return new Frame(
                "Build sheet: " + name,
                "Parts, cuts, weights, filling and first fire of a hot-water loop that runs without a pump.",
                new Frame.Head(name, day(setting)),
                setting.paper());
    }

    private static String body(BuildSheet sheet, Optional<Clears> clears, SheetSetting setting) {
        MeasureText measures = new MeasureText(setting.units());
        return SheetTop.of(sheet, clears, measures, day(setting))
                + FiguresPart.of(sheet, measures)
                + ElevationPart.of(sheet, measures, setting.paper())
                + PartsPart.of(sheet, measures)
                + CutsPart.of(sheet.cuts(), measures)
                + FixingsPart.of(sheet.fixings(), measures)
                + LoadsPart.of(sheet, measures)
                + settle(sheet, measures)
                + FillingPart.of(sheet, measures)
                + FirstHourPart.of(sheet, measures)
                + UpkeepPart.of(sheet, measures)
                + LogsPart.of(sheet.logs(), measures)
                + ConductPart.of(sheet, measures);
    }

    /** What would still have to be asked with this sheet alone in the hand. */
    private static String settle(BuildSheet sheet, MeasureText measures) {
        return Html.element("h3", "Still to be settled on the spot")
                + EvenColumns.of(
                        "steps notes",
                        sheet.toSettle().stream()
                                .map(words -> Html.TICK + " " + Prose.inline(measures.words(words)))
                                .toList());
    }

    static String day(SheetSetting setting) {
        return DAY.format(setting.date());
    }
}

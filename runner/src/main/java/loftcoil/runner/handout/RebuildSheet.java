package loftcoil.runner.handout;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.DrawingChange;
import loftcoil.engine.sheet.FigureGroup;
import loftcoil.runner.show.ChangeSvg;
import loftcoil.runner.show.HouseSvg;
import loftcoil.runner.show.Html;
import loftcoil.runner.show.RebuildView;
import loftcoil.runner.show.View;

/** A rebuild on paper: both houses in one frame, what is kept, cut out and added, parts of the difference, and what changes by it. */
public final class RebuildSheet {

    /** What stands round the drawing on its page, mm: half of it is for what differs. */
    private static final double ROUND_DRAWING_MM = 140;

    private final RebuildView.SideBySide both;
    private final SheetSetting setting;

    private RebuildSheet(RebuildView.SideBySide both, SheetSetting setting) {
        this.both = both;
        this.setting = setting;
    }

    /** For a browser, and its printer. */
    public static String html(Design before, Design after, RebuildView.SideBySide both, SheetSetting setting) {
        return frame(after, setting).forBrowser(new RebuildSheet(both, setting).body(before, after));
    }

    /** As PDF. */
    public static byte[] pdf(Design before, Design after, RebuildView.SideBySide both, SheetSetting setting) {
        return HandoutPdf.of(frame(after, setting).forPdf(new RebuildSheet(both, setting).body(before, after)));
    }

    private static Frame frame(Design after, SheetSetting setting) {
        return new Frame(
                "Rebuild: " + after.name(),
                "What a rebuild keeps, cuts out and adds, its parts, and what changes by it.",
                new Frame.Head("Rebuild: " + after.name(), HandoutHtml.day(setting)),
                setting.paper());
    }

    private String body(Design before, Design after) {
        return Html.element("p", "kicker", "Rebuild")
                + Html.element(
                        "h1",
                        Html.text(
                                before.name().equals(after.name())
                                        ? after.name()
                                        : before.name() + " → " + after.name()))
                + Html.element(
                        "p",
                        "small",
                        Html.text(
                                HandoutHtml.day(setting)
                                        + ". Computed with Loftcoil. This sheet says what differs; the build sheet of the new design says all the"
                                        + " rest, and its cautions come first. Before you cut: no fire, all cold, and the loop drained."))
                + safety()
                + parts()
                + drawing(DrawingChange.between(Drawing.of(before), Drawing.of(after)))
                + differences()
                + figures();
    }

    private String safety() {
        View.Safety safety = both.safety();
        String found = safety.findings().stream()
                .map(finding -> Html.element(
                        "div",
                        "warn " + finding.severity(),
                        Html.element(
                                "p",
                                Html.element("strong", Html.text(finding.label() + "."))
                                                .strip()
                                        + " " + Html.text(finding.text()))))
                .collect(Collectors.joining());
        return Html.section(
                "cautions",
                "The new design: " + safety.label(),
                open(safety.open())
                        + Html.element(
                                "p", Html.text((safety.words() + " " + both.heat()).strip() + " " + both.afterWords()))
                        + found);
    }

    private static String open(String open) {
        return open.isEmpty() ? "" : Html.element("p", Html.element("strong", Html.text(open)));
    }

    private String drawing(DrawingChange change) {
        MeasureText measures = new MeasureText(setting.units());
        DrawingScale.Room room = new DrawingScale.Room(
                setting.paper().widthMm() - 2 * Frame.MARGIN_MM - 2 * ElevationSvg.MARGIN_MM,
                setting.paper().heightMm() - ROUND_DRAWING_MM);
        DrawingScale scale = DrawingScale.fitting(ChangeSvg.frame(change), room, setting.units());
        HouseSvg.Drawn drawn = ChangeSvg.draw(change, ElevationSvg.pen(change.after(), Map.of(), measures, scale));
        String svg = HouseSvg.picture(
                drawn,
                ElevationSvg.sized(drawn),
                "What is kept, cut out and added",
                String.join(". ", ChangeSvg.says(change)) + ".");
        return Html.section(
                "frame",
                "Before and after in one frame, " + scale.words(),
                "<div class=\"drawing\">" + svg + "</div>\n"
                        + Html.list(
                                ChangeSvg.says(change).stream().map(Html::text).toList()));
    }

    private String parts() {
        String lists = both.parts().stream()
                .map(RebuildView.PartLine::fate)
                .distinct()
                .map(this::parts)
                .collect(Collectors.joining());
        return Html.section(
                "parts",
                "Parts of the difference",
                (lists.isEmpty() ? Html.element("p", "No part differs.") : lists)
                        + Html.element("p", "small", Html.text(both.partsKept() + " lines of the parts list stay.")));
    }

    private String parts(String fate) {
        return Html.element("h3", Html.text(fate))
                + EvenColumns.of(
                        "steps",
                        both.parts().stream()
                                .filter(line -> line.fate().equals(fate))
                                .map(line -> Html.TICK + " "
                                        + Html.element("strong", Html.text(line.amount() + (counted(line) ? " ×" : "")))
                                                .strip()
                                        + " "
                                        + Prose.inline(line.part()))
                                .toList());
    }

    /** Pieces, of which the list names one. */
    private static boolean counted(RebuildView.PartLine line) {
        return line.amount().chars().allMatch(Character::isDigit);
    }

    private String differences() {
        List<List<String>> rows = both.differences().stream()
                .map(each -> List.of(
                        Html.text(each.part()),
                        Html.text(each.label().isEmpty() ? "all of it" : each.label()),
                        Html.text(each.before()),
                        Html.text(each.after())))
                .toList();
        return Html.section(
                "differences",
                "What differs",
                Html.table("differences", List.of("where", "what", "before", "after"), rows));
    }

    private String figures() {
        List<List<String>> rows = both.groups().stream()
                .filter(group -> !group.words().equals(FigureGroup.MONTHS.words()))
                .flatMap(group -> group.lines().stream())
                .filter(line -> !line.turn().equals("same"))
                .map(line -> List.of(
                        Html.text(line.label() + (line.unit().isEmpty() ? "" : " [" + line.unit() + "]")),
                        Html.text(line.before()),
                        Html.text(line.after()),
                        Html.text(line.difference()),
                        Html.text(line.turn().equals("different") ? "" : line.turn())))
                .toList();
        return rows.isEmpty()
                ? ""
                : Html.section(
                        "figures",
                        "Figures that change",
                        Html.table(
                                        "changed",
                                        List.of("figure", "before", "after", "difference", "better or worse"),
                                        rows)
                                + Html.element("p", "small", "The months one by one are on the page, under Rebuild."));
    }
}

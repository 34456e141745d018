package loftcoil.runner.cli;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import loftcoil.engine.build.BuildSheet;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.handout.HandoutHtml;
import loftcoil.runner.handout.Paper;
import loftcoil.runner.handout.SheetSetting;
import loftcoil.runner.handout.ShoppingList;
import loftcoil.runner.handout.SurveyForm;
import loftcoil.runner.page.BuildSheetPrinter;
import loftcoil.runner.show.LearnerApp;

/** Prints the build sheet of the learner's own design for the page, with today's date, and the form to measure a house with. */
final class HandoutPrinter implements BuildSheetPrinter {

    private static final int LONGEST_NAME = 40;

    private final LearnerApp bench;

    HandoutPrinter(LearnerApp bench) {
        this.bench = bench;
    }

    @Override
    public Printed print(Asked asked) {
        Paper paper =
                Paper.named(asked.paper()).orElseThrow(() -> RefusedException.of("paper", asked.paper(), "a4, letter"));
        if (asked.form() == Form.FORM) {
            return new Printed("measuring-a-house.pdf", SurveyForm.pdf(paper, bench.units()));
        }
        SheetSetting setting = new SheetSetting(paper, bench.units(), LocalDate.now(ZoneId.systemDefault()));
        BuildSheet sheet = asked.half() ? bench.halfBuild() : bench.build();
        return switch (asked.form()) {
            case PDF ->
                new Printed(
                        name("build-sheet", sheet) + ".pdf",
                        HandoutHtml.buildSheetPdf(sheet, bench.foundClears(), setting));
            case HTML ->
                new Printed(
                        name("build-sheet", sheet) + ".html",
                        HandoutHtml.buildSheet(sheet, bench.foundClears(), setting)
                                .getBytes(StandardCharsets.UTF_8));
            case CSV ->
                new Printed(
                        name("shopping-list", sheet) + ".csv",
                        ShoppingList.csv(sheet.parts(), bench.units()).getBytes(StandardCharsets.UTF_8));
            case FORM -> throw new IllegalStateException("needs no sheet");
        };
    }

    private static String name(String what, BuildSheet sheet) {
        String plain =
                (what + "-" + sheet.design().name()).toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        return plain.substring(0, Math.min(LONGEST_NAME, plain.length())).replaceAll("-$", "");
    }
}

package loftcoil.runner.cli;

import loftcoil.runner.page.BuildSheetPrinter;
import loftcoil.runner.page.LiveCourseCase;
import loftcoil.runner.show.CourseApp;

/** A course on the real page that prints its sheets too. */
abstract class PrintedCourseCase extends LiveCourseCase {

    @Override
    protected BuildSheetPrinter press(CourseApp opened) {
        return new HandoutPrinter(opened);
    }
}

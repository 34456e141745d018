package loftcoil.runner.chart;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** A chart as a file, where there is no page to draw it on, as in the JDK's own shell. */
final class PlotFile {

    private static final String FOLDER = "loftcoil-plots";
    private static final int LONGEST_NAME = 60;

    private PlotFile() {}

    /**
     * Draws the chart into a file of the folder {@value #FOLDER} here; a plot of the same title replaces the one before.
     *
     * @return a line that says where; where no file can be written, the chart as text
     */
    static String write(ChartOrder order) {
        Path folder = Path.of(FOLDER).toAbsolutePath();
        Path file = folder.resolve(name(order.title()) + ".svg");
        try {
            Files.createDirectories(folder);
            Files.writeString(
                    file,
                    "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                            + ChartDrawer.draw(order).svg() + "\n");
            return "Plot \"" + order.title() + "\" is drawn in " + file + "\n";
        } catch (IOException noFile) {
            return "No file can be written in " + folder + ", so here are the numbers.\n" + ChartText.of(order);
        }
    }

    /** The title as a file name that every system takes. */
    private static String name(String title) {
        String plain =
                title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String cut = plain.substring(0, Math.min(LONGEST_NAME, plain.length())).replaceAll("-$", "");
        return cut.isEmpty() ? "plot" : cut;
    }
}

package loftcoil.runner.chart;

import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import de.erichseifert.vectorgraphics2d.intermediate.commands.Command;
import de.erichseifert.vectorgraphics2d.intermediate.commands.DrawShapeCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.FillShapeCommand;
import de.erichseifert.vectorgraphics2d.intermediate.commands.SetColorCommand;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * Has XChart draw the curves, and nothing else, to the size of the plotting area, and takes the shapes it draws. Axes
 * and words are added elsewhere as lines and text: XChart would draw words as outlines, which cannot be read aloud,
 * searched, or kept legible on a narrow screen.
 */
final class CurveShapes {

    private static final int DOT = 8;

    /** A curve of no more points than this shows each of them. */
    static final int FEW = 12;

    /** Blue part of the colours that mark our curves; no other colour of a bare chart has it. */
    private static final int TAG = 7;

    private static final int TAG_BASE = 250;

    static {
        Screen.leaveIfGone();
    }

    private CurveShapes() {}

    /**
     * What XChart drew of a curve, in order.
     *
     * @param index which curve, from 0
     * @param dot true for a filled shape, false for a line
     * @param shape in the units of the plotting area, from its upper left corner
     */
    record Drawn(int index, boolean dot, Shape shape) {}

    static List<Drawn> draw(ChartOrder order, ChartFrame frame) {
        XYChart chart = new XYChartBuilder()
                .width(frame.plotWidth())
                .height(ChartFrame.PLOT_HEIGHT)
                .build();
        bare(chart.getStyler(), frame);
        for (int i = 0; i < order.curves().size(); i++) {
            add(chart, order.curves().get(i), i);
        }
        VectorGraphics2D graphics = new VectorGraphics2D();
        chart.paint(graphics, frame.plotWidth(), ChartFrame.PLOT_HEIGHT);
        List<Drawn> drawn = new ArrayList<>();
        int curve = -1;
        for (Command<?> command : graphics.getCommands()) {
            if (command instanceof SetColorCommand colour) {
                curve = indexOf(colour.getValue());
            } else if (curve >= 0 && command instanceof DrawShapeCommand line) {
                drawn.add(new Drawn(curve, false, line.getValue()));
            } else if (curve >= 0 && command instanceof FillShapeCommand dot) {
                drawn.add(new Drawn(curve, true, dot.getValue()));
            }
        }
        return drawn;
    }

    private static Color tag(int index) {
        return new Color(1 + index / TAG_BASE, 1 + index % TAG_BASE, TAG);
    }

    private static int indexOf(Color colour) {
        return colour.getBlue() == TAG ? (colour.getRed() - 1) * TAG_BASE + colour.getGreen() - 1 : -1;
    }

    private static void bare(XYStyler styler, ChartFrame frame) {
        styler.setLegendVisible(false);
        styler.setChartTitleVisible(false);
        styler.setChartPadding(0);
        styler.setAxisTicksVisible(false);
        styler.setAxisTitlesVisible(false);
        styler.setPlotGridLinesVisible(false);
        styler.setPlotBorderVisible(false);
        styler.setPlotContentSize(1);
        styler.setPlotMargin(0);
        styler.setMarkerSize(DOT);
        styler.setXAxisMin(frame.low());
        styler.setXAxisMax(frame.high());
        styler.setYAxisMin(frame.up().low());
        styler.setYAxisMax(frame.up().high());
    }

    private static void add(XYChart chart, ChartOrder.Curve curve, int index) {
        Points points = Points.of(curve);
        if (points.isEmpty()) {
            return;
        }
        if (!curve.dots()) {
            double[] ys = curve.ys().stream()
                    .mapToDouble(y -> Double.isFinite(y) ? y : Double.NaN)
                    .toArray();
            series(chart, "line " + index, array(curve.xs()), ys, index, XYSeriesRenderStyle.Line);
        }
        // A point between two gaps has no neighbour to draw a line to.
        // Few points are sizes one can buy, or measurements: each is shown, as nothing lies between them.
        Points alone = curve.dots() || curve.ys().size() <= FEW ? points : points.alone();
        if (!alone.isEmpty()) {
            double[] xs = new double[alone.size()];
            double[] ys = new double[alone.size()];
            for (int i = 0; i < xs.length; i++) {
                xs[i] = alone.x(i);
                ys[i] = alone.y(i);
            }
            series(chart, "dots " + index, xs, ys, index, XYSeriesRenderStyle.Scatter);
        }
    }

    private static void series(
            XYChart chart, String name, double[] xs, double[] ys, int index, XYSeriesRenderStyle kind) {
        XYSeries series = chart.addSeries(name, xs, ys);
        series.setXYSeriesRenderStyle(kind);
        series.setMarker(kind == XYSeriesRenderStyle.Line ? SeriesMarkers.NONE : SeriesMarkers.CIRCLE);
        series.setMarkerColor(tag(index));
        series.setLineColor(tag(index));
        series.setLineStyle(new BasicStroke());
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}

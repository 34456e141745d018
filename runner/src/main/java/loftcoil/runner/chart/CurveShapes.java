package loftcoil.runner.chart;

import java.awt.BasicStroke;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.knowm.xchart.VectorGraphicsEncoder;
import org.knowm.xchart.VectorGraphicsEncoder.VectorGraphicsFormat;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;
import org.w3c.dom.Document;
import org.xml.sax.SAXException;

/**
 * Has XChart draw the curves, and nothing else, to the size of the plotting area. Axes and words are added afterwards as
 * lines and text: XChart would draw words as outlines, which cannot be read aloud, searched, or kept legible on a narrow
 * screen.
 */
final class CurveShapes {

    private static final float LINE = 2.4f;
    private static final int DOT = 8;

    private CurveShapes() {}

    /** XChart's own SVG of the curves; each has the colour {@link CurveStyle#tagOf}. */
    static Document draw(ChartOrder order, ChartFrame frame) {
        XYChart chart = new XYChartBuilder()
                .width(frame.plotWidth())
                .height(ChartFrame.PLOT_HEIGHT)
                .build();
        bare(chart.getStyler(), frame);
        for (int i = 0; i < order.curves().size(); i++) {
            ChartOrder.Curve curve = order.curves().get(i);
            if (!curve.xs().isEmpty() && curve.ys().stream().anyMatch(Double::isFinite)) {
                add(chart, curve, i);
            }
        }
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            VectorGraphicsEncoder.saveVectorGraphic(chart, out, VectorGraphicsFormat.SVG);
            return parse(out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException("a chart could not be drawn", e);
        }
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
        styler.setXAxisMin(frame.low());
        styler.setXAxisMax(frame.high());
        styler.setYAxisMin(frame.up().low());
        styler.setYAxisMax(frame.up().high());
    }

    private static void add(XYChart chart, ChartOrder.Curve curve, int index) {
        double[] ys = curve.ys().stream()
                .mapToDouble(y -> Double.isFinite(y) ? y : Double.NaN)
                .toArray();
        XYSeries series = chart.addSeries("curve " + index, array(curve.xs()), ys);
        boolean dots = curve.dots() || Points.of(curve).size() == 1;
        series.setXYSeriesRenderStyle(dots ? XYSeriesRenderStyle.Scatter : XYSeriesRenderStyle.Line);
        series.setMarker(dots ? SeriesMarkers.CIRCLE : SeriesMarkers.NONE);
        series.setMarkerColor(CurveStyle.tagOf(index));
        series.setLineColor(CurveStyle.tagOf(index));
        series.setLineStyle(new BasicStroke(LINE, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        chart.getStyler().setMarkerSize(DOT);
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static Document parse(byte[] svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            // The drawing names a document type on the web, which must never be fetched.
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
            factory.setFeature(javax.xml.XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setNamespaceAware(true);
            factory.setXIncludeAware(false);
            factory.setExpandEntityReferences(false);
            return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException("XChart's drawing cannot be read", e);
        } catch (IOException e) {
            throw new UncheckedIOException("XChart's drawing cannot be read", e);
        }
    }
}

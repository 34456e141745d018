package loftcoil.runner.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class ChartDrawerTest {

    private static final double[] XS = Plot.steps(-1, 3, 0.05);

    private static final ChartOrder ORDER = Plot.plot("Flow against <height> & more")
            .across("Tank base", "m", XS)
            .up("Flow", "L/min")
            .curve("forward", Plot.each(XS, x -> x < 0.5 ? Double.NaN : 2 * x - 2))
            .curve("night", Plot.each(XS, x -> -x))
            .points("measured", new double[] {1, 2}, new double[] {0.5, 2.5})
            .mark(2.5, "boils")
            .order();

    private static Element svg(ChartOrder order) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        String text = ChartDrawer.draw(order).svg();
        return factory.newDocumentBuilder()
                .parse(new InputSource(new StringReader(text)))
                .getDocumentElement();
    }

    private static List<Element> all(Element svg, String name) {
        List<Element> found = new ArrayList<>();
        var list = svg.getElementsByTagNameNS("http://www.w3.org/2000/svg", name);
        for (int i = 0; i < list.getLength(); i++) {
            found.add((Element) list.item(i));
        }
        return found;
    }

    private static List<String> texts(Element svg) {
        return all(svg, "text").stream().map(Element::getTextContent).toList();
    }

    @Test
    void aCurveThatEndsBeforeTheAxisSaysWhyBesideItsEnd() throws Exception {
        ChartOrder order = Plot.plot("Out of the coil")
                .across("Bore", "mm", XS)
                .up("Temperature", "°C")
                .curve("small", Plot.each(XS, x -> 60 - 5 * x))
                .curve("large", Plot.each(XS, x -> x < 1 ? Double.NaN : 95 - 5 * x))
                .until("boils")
                .curve("larger", Plot.each(XS, x -> x > 2 ? Double.NaN : 75 - 5 * x))
                .order();
        assertEquals(
                List.of("boils", ""),
                ChartPlaces.ends(order).stream().map(ChartPlaces.End::words).toList());
        assertEquals(1, texts(svg(order)).stream().filter("boils"::equals).count());
        assertTrue(
                ChartDrawer.draw(order).says().contains("Large begins only at 1: boils."),
                ChartDrawer.draw(order).says());
        assertEquals(order, ChartJson.read(ChartJson.write(order)));
    }

    @Test
    void wordsOfAnEndStandOnNoCurveAndWithinTheAxes() throws Exception {
        ChartOrder crowded = Plot.plot("Crowded")
                .across("x", "m", XS)
                .up("y", "m")
                .curve("a", Plot.each(XS, x -> x > 2.9 ? Double.NaN : x))
                .until("a reason that finds no room to the right of its end")
                .order();
        for (Element text : all(svg(crowded), "text")) {
            if (text.getTextContent().startsWith("a reason")) {
                double x = Double.parseDouble(text.getAttribute("x"));
                assertTrue(x > 0 && x + 50 * 7 < ChartFrame.WIDTH, "at " + x);
            }
        }
        assertThrows(RefusedException.class, () -> Plot.plot("none").until("boils"));
    }

    @ParameterizedTest
    @CsvSource({
        "-1.7e308, 1.7e308, too far apart",
        "1e308, 1.1e308, too far apart",
        "0, 1.1e100, too far apart",
        "4.9e-324, 0, too close together",
        "-9e-101, 9e-101, too close together"
    })
    void numbersThatCannotBeDrawnAreANote(double low, double high, String why) throws Exception {
        double[] ends = {low, high};
        double[] plain = {1, 2};
        for (Plot plot : List.of(
                Plot.plot("T").across("X", "m", plain).curve("c", ends),
                Plot.plot("T").across("X", "m", ends).curve("c", plain),
                Plot.plot("T").across("X", "m", plain).points("p", ends, plain))) {
            ChartPicture picture = ChartDrawer.draw(plot.order());
            assertTrue(picture.says().contains(why), picture.says());
            assertEquals(List.of(), picture.rows());
            assertTrue(String.join(" ", texts(svg(plot.order()))).contains(why));
        }
    }

    @Test
    void allOtherNumbersAreDrawnWithinTheFrame() throws Exception {
        areDrawn(60);
    }

    @Test
    @Tag("thorough")
    void manyOtherNumbersAreDrawnWithinTheFrame() throws Exception {
        areDrawn(400);
    }

    private static void areDrawn(int charts) throws Exception {
        List<Double> sizes = new ArrayList<>(List.of(0.0, Double.MIN_VALUE, Double.MIN_NORMAL));
        for (int power = -100; power <= 100; power++) {
            sizes.add(Math.pow(10, power));
        }
        Random random = new Random(8);
        for (int i = 0; i < charts; i++) {
            double[] xs = new double[4];
            double[] ys = new double[4];
            for (int k = 0; k < 4; k++) {
                xs[k] = (random.nextDouble() - 0.5) * sizes.get(random.nextInt(sizes.size()));
                ys[k] = (random.nextDouble() - 0.5) * sizes.get(random.nextInt(sizes.size()));
            }
            ChartOrder order = Plot.plot("T")
                    .across("X", "m", xs)
                    .curve("c", ys)
                    .points("p", xs, ys)
                    .mark(xs[0], "here")
                    .order();
            if (ChartDrawer.notDrawn(order).isEmpty()) {
                String label = texts(svg(order)).stream()
                        .max(Comparator.comparingInt(String::length))
                        .orElse("");
                assertTrue(label.length() < 16, label);
                assertFalse(
                        ChartDrawer.draw(order).says().matches(".*\\d{20}.*"),
                        ChartDrawer.draw(order).says());
            }
        }
    }

    @Test
    void veryLargeNumbersAreWrittenAsPowersOfTen() throws Exception {
        ChartOrder order = Plot.plot("T")
                .across("X", "m", new double[] {0, 4e-20})
                .curve("c", new double[] {0, 3e60})
                .order();
        assertTrue(
                texts(svg(order)).containsAll(List.of("2 × 10⁶⁰", "3 × 10⁶⁰", "1 × 10⁻²⁰")),
                texts(svg(order)).toString());
        assertEquals("3 × 10⁶⁰", ChartDrawer.draw(order).rows().get(1).get(1));
    }

    @Test
    void itCanStandInAStrictPage() {
        String text = ChartDrawer.draw(ORDER).svg();
        assertFalse(text.contains("style"), "no style attribute or element");
        assertFalse(text.contains("<script") || text.contains("href") || text.contains("DOCTYPE"));
        assertTrue(text.length() < 20_000, "size " + text.length());
    }

    @Test
    void itIsNamedForThoseWhoDoNotSeeIt() throws Exception {
        Element svg = svg(ORDER);
        assertEquals("img", svg.getAttribute("role"));
        assertEquals("Flow against <height> & more", all(svg, "title").get(0).getTextContent());
        assertEquals(ChartDrawer.draw(ORDER).says(), all(svg, "desc").get(0).getTextContent());
        String ids = all(svg, "title").get(0).getAttribute("id") + " "
                + all(svg, "desc").get(0).getAttribute("id");
        assertEquals(ids, svg.getAttribute("aria-labelledby"));
        assertEquals("", svg.getAttribute("width"));
    }

    @Test
    void twoChartsOnAPageShareNoId() throws Exception {
        assertNotEquals(
                all(svg(ORDER), "clipPath").get(0).getAttribute("id"),
                all(svg(ORDER), "clipPath").get(0).getAttribute("id"));
    }

    @Test
    void axesAreNamedWithUnitsAndNumberedRoundly() throws Exception {
        List<String> texts = texts(svg(ORDER));
        assertTrue(
                texts.containsAll(List.of("Tank base [m]", "Flow [L/min]", "forward", "night", "measured", "boils")));
        assertTrue(texts.containsAll(List.of("−1", "0", "1", "2", "3", "−4", "4")), texts.toString());
    }

    @Test
    void curvesLieWhereTheirNumbersSay() throws Exception {
        Element svg = svg(ORDER);
        ChartFrame frame = ChartFrame.of(ORDER, 0, 0);
        Element night = all(svg, "path").stream()
                .filter(path -> path.getAttribute("class").equals("lc-curve-2-stroke"))
                .findFirst()
                .orElseThrow();
        List<Double> numbers = new ArrayList<>();
        Matcher matcher = Pattern.compile("-?[0-9.]+").matcher(night.getAttribute("d"));
        while (matcher.find()) {
            numbers.add(Double.valueOf(matcher.group()));
        }
        assertEquals(2 * XS.length, numbers.size(), "one path, one point a number");
        for (int i = 0; i < XS.length; i++) {
            assertEquals(frame.x(XS[i]) - frame.left(), numbers.get(2 * i), 0.06);
            assertEquals(frame.y(-XS[i]), numbers.get(2 * i + 1), 0.06);
        }
        assertFalse(night.getAttribute("stroke-dasharray").isEmpty());
        assertEquals(
                2 + 1,
                all(svg, "circle").size(),
                "two measured points and the sample beside their name; no ring where nobody says what it means");
    }

    @Test
    void aGapBreaksTheLineAndALonePointIsADot() throws Exception {
        double nan = Double.NaN;
        ChartOrder order = Plot.plot("gaps")
                .across("x", "", new double[] {0, 1, 2, 3, 4, 5})
                .up("y", "")
                .curve("c", new double[] {1, 2, nan, 3, nan, nan})
                .order();
        Element svg = svg(order);
        assertEquals(1, all(svg, "path").size());
        assertEquals(
                1,
                all(svg, "path")
                        .get(0)
                        .getAttribute("d")
                        .chars()
                        .filter(c -> c == 'M')
                        .count());
        assertEquals(3, all(svg, "circle").size(), "of few sizes each is shown");
    }

    @Test
    void aLonePointOfManyIsADot() throws Exception {
        double[] many = Plot.steps(0, 20, 1);
        ChartOrder order = Plot.plot("gaps")
                .across("x", "", many)
                .up("y", "")
                .curve("c", Plot.each(many, x -> x < 5 || x == 9 ? x : Double.NaN))
                .order();
        assertEquals(1, all(svg(order), "circle").size());
    }

    @Test
    void anEmptyStretchIsShadedAndSaysWhatItMeans() throws Exception {
        ChartOrder order = Plot.plot("Flow")
                .across("Height", "m", new double[] {0, 1, 2, 3})
                .up("Flow", "L/min")
                .curve("forward", new double[] {Double.NaN, Double.NaN, 1, 2})
                .empty("stands still or boils")
                .order();
        assertTrue(
                ChartDrawer.draw(order).says().contains("From 0 to 2 there is no value: stands still or boils."),
                ChartDrawer.draw(order).says());
        Element svg = svg(order);
        assertTrue(
                String.join(" ", texts(svg)).contains("stands still or boils"),
                texts(svg).toString());
        ChartOrder silent = Plot.plot("Flow")
                .across("Height", "m", new double[] {0, 1})
                .up("Flow", "L/min")
                .curve("forward", new double[] {Double.NaN, 1})
                .order();
        assertEquals(List.of(), ChartPlaces.empty(silent));
        assertEquals(order, ChartJson.read(ChartJson.write(order)));
    }

    @Test
    void aCrossingIsFoundAndSaid() {
        double[] flows = IntStream.rangeClosed(0, 15).mapToDouble(i -> i / 5.0).toArray();
        Plot plot = Plot.plot("Drive and resistance")
                .across("Flow", "L/min", flows)
                .up("Pressure", "Pa")
                .curve("drive", Arrays.stream(flows).map(flow -> 30 - 10 * flow).toArray())
                .curve("resistance", Arrays.stream(flows).map(flow -> 10 * flow).toArray());
        ChartOrder order = plot.order();
        assertEquals(List.of(new ChartPlaces.Crossing(0, 1, 1.5, 15)), ChartPlaces.crossings(order));
        String says = ChartDrawer.draw(order).says();
        assertTrue(says.contains("Drive and resistance cross at 1.5, at a value of 15."), says);
        assertFalse(ChartDrawer.draw(order).svg().contains("lc-crossing"), "nobody says what a ring would mean");
        ChartPicture ringed = ChartDrawer.draw(plot.crossing("runs here").order());
        assertTrue(ringed.svg().contains("lc-crossing"));
        assertTrue(ringed.svg().contains(">runs here<"), ringed.svg());
        assertTrue(ringed.says().contains("at a value of 15: runs here."), ringed.says());
    }

    @Test
    void theValuesUnderAPointerAreThoseOfTheOrder() throws Exception {
        JsonNode data = JsonMapper.builder().build().readTree(svg(ORDER).getAttribute("data-readout"));
        assertEquals(
                List.of("forward", "night", "measured"),
                List.of(
                        data.get("curves").get(0).asText(),
                        data.get("curves").get(1).asText(),
                        data.get("curves").get(2).asText()));
        ChartFrame frame = ChartFrame.of(ORDER, data.get("top").asInt(), 0);
        for (JsonNode row : data.get("at")) {
            JsonNode night = row.get(3);
            if (night.isArray()) {
                double x = frame.low()
                        + (row.get(0).asDouble() - frame.left()) / frame.plotWidth() * (frame.high() - frame.low());
                assertEquals(frame.y(-x), night.get(0).asDouble(), 0.2);
                assertTrue(night.get(1).asText().endsWith("\u00a0L/min"), night.toString());
            }
        }
        assertEquals(XS.length, data.get("at").size());
    }

    @Test
    void itSaysHighestLowestAndCrossings() {
        String says = ChartDrawer.draw(ORDER).says();
        assertTrue(says.contains("Across: Tank base in m, from −1 to 3. Up: Flow in L/min."), says);
        assertTrue(
                says.contains(
                        "Forward: highest 4.0 at 3.00; lowest −1.0 at 0.50; crosses zero near 1.00; 30 positions have no value."),
                says);
        assertTrue(says.contains("Night: highest 1.00 at −1.00; lowest −3.00 at 3.00; crosses zero near 0.00."), says);
        assertTrue(says.contains("Marked at 2.5: boils."), says);
    }

    @Test
    void theTableIsShortAndRound() {
        ChartPicture picture = ChartDrawer.draw(ORDER);
        assertEquals(
                List.of("Tank base [m]", "forward [L/min]", "night [L/min]", "measured [L/min]"), picture.columns());
        assertEquals(List.of("−1.0", "–", "1.00", ""), picture.rows().get(0));
        assertEquals(List.of("1.0", "0.0", "−1.00", "0.5"), picture.rows().get(4));
        assertTrue(picture.rows().size() <= 16, "" + picture.rows().size());
    }

    @Test
    void oddRangesAreDrawn() throws Exception {
        for (double[] ys : new double[][] {{5, 5}, {0, 0}, {-3e-9, 2e-9}, {1e12, 3e12}, {-7, -6.5}, {Double.NaN, 2}}) {
            ChartOrder order = Plot.plot("odd")
                    .across("x", "m", new double[] {1, 1.5})
                    .up("y", "m")
                    .curve("c", ys)
                    .order();
            List<String> texts = texts(svg(order));
            assertTrue(texts.size() > 7, texts.toString());
            assertFalse(texts.toString().contains("NaN"), texts.toString());
        }
    }
}

package loftcoil.runner.page;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import loftcoil.runner.show.View;

/** Pictures for page tests: true SVG of a plain kind, with inline styles and names as drawing libraries write them. */
final class FakeDrawn {

    private FakeDrawn() {}

    /** A line that rises with height and whose steepness follows the tank height. */
    static View.Picture chart(String title, double tankBaseM) {
        StringBuilder points = new StringBuilder();
        for (int n = 0; n <= 20; n++) {
            double flow = Math.sqrt(Math.max(0, n / 20.0 * (0.5 + tankBaseM)));
            points.append(String.format(Locale.ROOT, "%d,%.1f ", 60 + 28 * n, 300 - 120 * flow));
        }
        String svg =
                """
                <svg xmlns="http://www.w3.org/2000/svg" width="680" height="360" viewBox="0 0 680 360">
                <defs><clipPath id="frame"><rect x="60" y="20" width="600" height="280"/></clipPath></defs>
                <rect class="lc-ground" width="680" height="360" fill="white"/>
                <path class="lc-axis" d="M60 20V300H660" fill="none" stroke="black"/>
                <g clip-path="url(#frame)"><polyline class="lc-curve lc-curve-1" style="stroke:#9c4318;stroke-width:2.5;fill:none" points="%s"/></g>
                <text class="lc-text" x="360" y="345" text-anchor="middle" font-size="15">Tank base above the floor (m)</text>
                <text class="lc-text" x="20" y="160" text-anchor="middle" font-size="15" transform="rotate(-90 20 160)">Flow (L/min)</text>
                </svg>"""
                        .formatted(points);
        List<List<String>> rows = IntStream.rangeClosed(0, 20)
                .mapToObj(n -> List.of(
                        String.format(Locale.ROOT, "%.2f", n * 0.15),
                        String.format(Locale.ROOT, "%.2f", Math.sqrt(n / 20.0 * (0.5 + tankBaseM)))))
                .toList();
        String says = String.format(
                Locale.ROOT, "The flow rises from 0 to %.2f litres a minute.", Math.sqrt(0.5 + tankBaseM));
        return new View.Picture(title, svg, says, List.of("Tank base above the floor, m", "Flow, L/min"), rows);
    }

    /** A loop: coil below, tank above. */
    static View.Picture loop(String tankBaseM) {
        double base = Double.parseDouble(tankBaseM);
        String svg = String.format(
                Locale.ROOT,
                """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 320">
                <rect class="lc-ground" width="300" height="320" fill="white"/>
                <path class="lc-level" d="M10 300H290" stroke="#777"/>
                <rect class="lc-tank" x="150" y="%1$.0f" width="90" height="60" fill="none" stroke="black" stroke-width="2"/>
                <path class="lc-pipe lc-cold" d="M170 %2$.0fV270H80" fill="none" stroke="#1c5a85" stroke-width="4"/>
                <path class="lc-pipe lc-hot" d="M80 240L120 230V%3$.0fH150" fill="none" stroke="#9c4318" stroke-width="4"/>
                <text class="lc-text" x="20" y="295" font-size="12">floor 0.00 m</text>
                <text class="lc-text" x="20" y="%2$.0f" font-size="12">tank base %4$.2f m</text>
                </svg>""",
                300 - 70 * base - 60,
                300 - 70 * base,
                300 - 70 * base - 40,
                base);
        return new View.Picture(
                "Your loop, to scale",
                svg,
                "The coil is near the floor; the tank's base is " + tankBaseM + " m above it.",
                List.of("Level", "Height, m"),
                List.of(List.of("floor", "0.00"), List.of("tank base", tankBaseM)));
    }
}

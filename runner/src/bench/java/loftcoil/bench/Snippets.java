package loftcoil.bench;

import java.util.ArrayList;
import java.util.List;

/** Snippets of the kind that lessons have, each of three to six statements. */
final class Snippets {

    /** A snippet that draws what depends on a dragged value. */
    static final String DRAGGED =
            """
            double[] rises = steps(0, 3.5, 0.05);
            double[] heads = each(rises, rise -> 9.80665 * rise * (992.2 - 983.2 + draggedM));
            plot("Head against rise")
                .across("Rise", "m", rises)
                .up("Head", "Pa")
                .curve("head", heads)
                .mark(draggedM, "here")
                .show();
            """;

    private static final List<String> KINDS = List.of(
            """
            double hot%d = 983.2;
            double cold%d = 992.2;
            double head%d = 9.80665 * 2.5 * (cold%d - hot%d);
            System.out.println(head%d);
            head%d
            """,
            """
            double sum%d = 0;
            for (int i = 0; i < 100; i++) {
                sum%d += i * 0.1;
            }
            sum%d / 100
            """,
            """
            double area%d(double bore) {
                return PI * bore * bore / 4;
            }
            double[] bores%d = {0.0136, 0.0202, 0.0262};
            Arrays.stream(bores%d).map(bore -> area%d(bore)).sum()
            """,
            """
            double[] xs%d = steps(0, 3, 0.1);
            double[] ys%d = each(xs%d, x -> sqrt(x));
            ys%d[10]
            """,
            """
            record Leg%d(double length, double bore) {}
            var legs%d = List.of(new Leg%d(2, 0.02), new Leg%d(3, 0.026));
            double all%d = legs%d.stream().mapToDouble(Leg%d::length).sum();
            all%d
            """);

    private Snippets() {}

    static List<String> twenty() {
        List<String> snippets = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            snippets.add(KINDS.get(i % KINDS.size()).replace("%d", "" + i));
        }
        return snippets;
    }
}

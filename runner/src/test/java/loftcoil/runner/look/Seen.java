package loftcoil.runner.look;

import java.util.List;

/**
 * A colour as an eye sees it.
 *
 * <p>Light of a screen's colour: IEC 61966-2-1 (sRGB). Contrast: WCAG 2.2, definitions of relative luminance and contrast ratio.
 * Other eyes: Machado, Oliveira and Fernandes, “A Physiologically-based Model for Simulation of Color Vision Deficiency”, IEEE
 * Transactions on Visualization and Computer Graphics 15(6), 2009, the matrices of severity 1.0, applied to linear light.
 * Difference: CIE 1976 L*a*b* (ISO/CIE 11664-4), white D65.
 *
 * @param red linear light, 0 to 1
 * @param green linear light, 0 to 1
 * @param blue linear light, 0 to 1
 */
record Seen(double red, double green, double blue) {

    /** Whose eye. */
    enum Eye {
        USUAL(List.of(1.0, 0.0, 0.0, 0.0, 1.0, 0.0, 0.0, 0.0, 1.0)),
        WITHOUT_RED_CONES(
                List.of(0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998)),
        WITHOUT_GREEN_CONES(
                List.of(0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881)),
        WITHOUT_BLUE_CONES(
                List.of(1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900));

        @SuppressWarnings("ImmutableEnumChecker") // made by List.of and never changed
        private final List<Double> matrix;

        Eye(List<Double> matrix) {
            this.matrix = matrix;
        }

        private double row(int row, Seen light) {
            double sum = matrix.get(3 * row) * light.red
                    + matrix.get(3 * row + 1) * light.green
                    + matrix.get(3 * row + 2) * light.blue;
            return Math.min(1, Math.max(0, sum));
        }
    }

    /** Of {@code #rrggbb}. */
    static Seen of(String hex) {
        return new Seen(light(hex, 1), light(hex, 3), light(hex, 5));
    }

    private static double light(String hex, int at) {
        double value = Integer.parseInt(hex.substring(at, at + 2), 16) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }

    Seen by(Eye eye) {
        return new Seen(eye.row(0, this), eye.row(1, this), eye.row(2, this));
    }

    double luminance() {
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    }

    double contrastWith(Seen other) {
        double lighter = Math.max(luminance(), other.luminance());
        double darker = Math.min(luminance(), other.luminance());
        return (lighter + 0.05) / (darker + 0.05);
    }

    double differenceFrom(Seen other) {
        Lab mine = lab();
        Lab theirs = other.lab();
        return Math.hypot(Math.hypot(mine.l - theirs.l, mine.a - theirs.a), mine.b - theirs.b);
    }

    Lab lab() {
        double x = step((0.4124564 * red + 0.3575761 * green + 0.1804375 * blue) / 0.95047);
        double y = step(0.2126729 * red + 0.7151522 * green + 0.0721750 * blue);
        double z = step((0.0193339 * red + 0.1191920 * green + 0.9503041 * blue) / 1.08883);
        return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z));
    }

    private static double step(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    /** Lightness and the two opposed hues. */
    record Lab(double l, double a, double b) {
        double chroma() {
            return Math.hypot(a, b);
        }

        double hueDeg() {
            return (Math.toDegrees(Math.atan2(b, a)) + 360) % 360;
        }
    }
}

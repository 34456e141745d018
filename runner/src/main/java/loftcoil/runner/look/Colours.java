package loftcoil.runner.look;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The colours of one scheme, by name. They stand in one style sheet, which the page loads and our own files carry; what cannot
 * follow a variable, such as paper or a picture that stands alone, is given the values of the light scheme.
 */
public final class Colours {

    /** Where the style sheets stand on the class path. */
    public static final String FOLDER = "/loftcoil/runner/look/";

    private static final String COLOURS = "colours.css";
    private static final String DRAWING = "drawing.css";

    /** Names of the style sheets in the folder. */
    public static final List<String> STYLES = List.of(COLOURS, DRAWING);

    private static final Pattern DECLARED = Pattern.compile("--([a-z0-9-]+):\\s*(#[0-9a-f]{6});");
    private static final Pattern USED = Pattern.compile("var\\(--([a-z0-9-]+)\\)");
    private static final String DARK_BEGINS = "@media";

    private static final String SHEET = read(COLOURS);
    private static final Colours LIGHT = new Colours(declared(SHEET.substring(0, SHEET.indexOf(DARK_BEGINS))));
    private static final Colours DARK = new Colours(declared(SHEET.substring(SHEET.indexOf(DARK_BEGINS))));

    private final Map<String, String> values;

    private Colours(Map<String, String> values) {
        this.values = values;
    }

    /** On light grounds, and on paper. */
    public static Colours light() {
        return LIGHT;
    }

    /** On dark grounds. */
    public static Colours dark() {
        return DARK;
    }

    /** The style sheet itself, both schemes. */
    public static String sheet() {
        return SHEET;
    }

    /** The style sheet of charts and drawings: which of their classes has which colour. */
    public static String drawing() {
        return read(DRAWING);
    }

    /** Names and values, as {@code #rrggbb}. */
    public Map<String, String> values() {
        return Map.copyOf(values);
    }

    /**
     * A colour as {@code #rrggbb}.
     *
     * @param name its name without dashes before it, such as {@code ink}
     * @throws IllegalArgumentException where no colour has that name
     */
    public String of(String name) {
        String value = values.get(name);
        if (value == null) {
            throw new IllegalArgumentException("no colour is called " + name + "; there are " + values.keySet());
        }
        return value;
    }

    /** A style sheet with each variable replaced by its colour, for readers that know no variables. */
    public String fill(String css) {
        return USED.matcher(css).replaceAll(used -> Matcher.quoteReplacement(of(used.group(1))));
    }

    private static Map<String, String> declared(String css) {
        Map<String, String> values = new LinkedHashMap<>();
        Matcher matcher = DECLARED.matcher(css);
        while (matcher.find()) {
            values.put(matcher.group(1), matcher.group(2));
        }
        return values;
    }

    private static String read(String file) {
        try (InputStream in = Colours.class.getResourceAsStream(FOLDER + file)) {
            if (in == null) {
                throw new IllegalStateException(FOLDER + file + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(FOLDER + file, failure);
        }
    }
}

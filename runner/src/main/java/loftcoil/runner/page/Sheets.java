package loftcoil.runner.page;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.runner.page.BuildSheetPrinter.Form;

/**
 * The build sheet at addresses of its own: {@code /sheet/show/PAPER} to look at within the page, {@code /sheet/half/…}
 * as much of it as there is at once, {@code /sheet/html/…}, {@code /sheet/pdf/…}, the shopping list {@code /sheet/csv/…} and the form to
 * measure with, {@code /sheet/form/…}, to keep. It brings its own style, so it has rules of its own; it may run nothing.
 */
final class Sheets {

    private static final Pattern ADDRESS = Pattern.compile("/sheet/(show|half|html|pdf|csv|form)/([a-z0-9]{1,20})");
    private static final Map<String, String> OWN_RULES = Map.of(
            "Content-Security-Policy",
            "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'; "
                    + "frame-ancestors 'self'",
            "X-Frame-Options",
            "SAMEORIGIN");

    private final BuildSheetPrinter press;

    Sheets(BuildSheetPrinter press) {
        this.press = press;
    }

    /** What answers at that path, if it is one of a sheet. */
    Optional<Supplier<Reply>> find(String path) {
        Matcher address = ADDRESS.matcher(path);
        if (!address.matches()) {
            return Optional.empty();
        }
        boolean half = address.group(1).equals("half");
        boolean kept = !half && !address.group(1).equals("show");
        Form form = kept ? Form.valueOf(address.group(1).toUpperCase(Locale.ROOT)) : Form.HTML;
        BuildSheetPrinter.Asked asked = new BuildSheetPrinter.Asked(form, address.group(2), half);
        return Optional.of(() -> reply(asked, kept));
    }

    private Reply reply(BuildSheetPrinter.Asked asked, boolean kept) {
        BuildSheetPrinter.Printed printed = press.print(asked);
        Map<String, String> headers = new HashMap<>(OWN_RULES);
        if (kept) {
            headers.put("Content-Disposition", "attachment; filename=\"" + printed.name() + "\"");
        }
        return new Reply(200, asked.form().mediaType(), printed.bytes(), headers);
    }
}

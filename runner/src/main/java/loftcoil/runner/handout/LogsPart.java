package loftcoil.runner.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import loftcoil.engine.build.LogForm;
import loftcoil.runner.show.Html;

/** Forms to fill in by hand. */
final class LogsPart {

    private LogsPart() {}

    static String of(List<LogForm> forms, MeasureText measures) {
        String inside = forms.stream().map(form -> form(form, measures)).collect(Collectors.joining());
        return forms.isEmpty() ? "" : Html.section("logs", "Log", inside);
    }

    private static String form(LogForm form, MeasureText measures) {
        List<String> headings =
                form.columns().stream().map(column -> heading(column, measures)).toList();
        List<List<String>> rows = form.rows().stream()
                .map(first -> {
                    List<String> row = new ArrayList<>(List.of(Prose.inline(measures.words(first))));
                    while (row.size() < headings.size()) {
                        row.add("");
                    }
                    return row;
                })
                .map(List::copyOf)
                .toList();
        return Html.element(
                "div",
                "form",
                Html.element("h3", Prose.inline(measures.words(form.title())))
                        + Html.element("p", Prose.inline(measures.words(form.how())))
                        + Html.table("log", headings, rows));
    }

    private static String heading(LogForm.Column column, MeasureText measures) {
        String unit = column.kind().map(measures::unitToWrite).orElse("");
        return Prose.inline(measures.words(column.heading()))
                + (unit.isEmpty()
                        ? ""
                        : " " + Html.element("span", "unit", Html.text(unit)).strip());
    }
}

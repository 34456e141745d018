package loftcoil.runner.show;

import java.util.List;
import java.util.stream.Stream;
import loftcoil.engine.caution.Conduct;
import loftcoil.engine.words.Units;

/** The table of conduct as every face shows it. */
public final class ConductWords {

    /** What it is called, by who looks for it in a hurry. */
    public static final String TITLE = "In an emergency";

    private ConductWords() {}

    /** The table in those units. */
    public static View.ConductTable table(Units units) {
        return new View.ConductTable(
                TITLE,
                Stream.of(Conduct.values())
                        .map(rule ->
                                new View.ConductRule(rule.code(), units.words(rule.when()), units.words(rule.act())))
                        .toList(),
                units.words(Conduct.worth()));
    }

    /** As lines of plain text; they may be long. */
    public static List<String> lines(View.ConductTable table) {
        return Stream.concat(
                        Stream.concat(
                                Stream.of(table.title()),
                                table.rules().stream().map(rule -> "- " + rule.when() + ": " + rule.act())),
                        Stream.of(table.worth()))
                .toList();
    }
}

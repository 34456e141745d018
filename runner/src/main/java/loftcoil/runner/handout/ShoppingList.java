package loftcoil.runner.handout;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.engine.build.PartsList;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Units;

/**
 * The parts list as a table of comma-separated values (RFC 4180, with a byte-order mark so that table programs read its signs), with a
 * column for what each line cost; and the sum of such a table when it has been filled in.
 *
 * @param sum of the prices
 * @param priced lines with a price
 * @param open what has none yet
 */
public record ShoppingList(BigDecimal sum, int priced, List<String> open) {

    private static final String MARK = "\uFEFF";
    private static final String PART = "part";
    private static final String PRICE = "price of the line";
    private static final List<String> COLUMNS = List.of("group", "amount", PART, "what for", PRICE);

    /** A sum of money as people write it: sign of the money before or behind, spaces or marks between thousands. */
    private static final Pattern MONEY =
            Pattern.compile("[^\\d+\\-.,]*(\\d{1,3}(?:[ \u00a0\u202f'’]\\d{3})+|\\d{1,9})(?:[.,](\\d{1,2}))?[^\\d.,]*");

    /** Keeps a copy of what is open. */
    public ShoppingList {
        open = List.copyOf(open);
    }

    /** The parts of a design, a line each, the price empty. */
    public static String csv(PartsList parts, Units units) {
        List<List<String>> rows = parts.parts().stream()
                .map(part -> List.of(
                        part.group().label(),
                        units.of(part.amount()),
                        units.words(part.what()),
                        units.words(part.why()),
                        ""))
                .toList();
        try {
            CsvSchema.Builder columns = CsvSchema.builder();
            COLUMNS.forEach(columns::addColumn);
            return MARK
                    + new CsvMapper()
                            .writer(columns.build().withHeader().withLineSeparator("\r\n"))
                            .writeValueAsString(rows);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("strings that cannot be written", impossible);
        }
    }

    /**
     * Adds up a list that was filled in.
     *
     * @param text the table, its columns parted by commas, semicolons or tabs
     * @throws RefusedException where a column is missing or a price cannot be read; all faults at once, each with its line
     */
    public static ShoppingList filledIn(String text) {
        String table = text.startsWith(MARK) ? text.substring(1) : text;
        List<List<String>> lines = lines(table);
        List<String> headings = lines.isEmpty() ? List.of() : lines.get(0);
        int part = headings.indexOf(PART);
        int price = headings.indexOf(PRICE);
        if (part < 0 || price < 0) {
            throw RefusedException.of(
                    "line 1",
                    String.join(", ", headings),
                    "a first line with the columns “" + PART + "” and “" + PRICE
                            + "”, as in a list that Loftcoil wrote");
        }
        List<Fault> faults = new ArrayList<>();
        List<String> open = new ArrayList<>();
        BigDecimal sum = BigDecimal.ZERO;
        int priced = 0;
        for (int i = 1; i < lines.size(); i++) {
            String what = cell(lines.get(i), part);
            String written = cell(lines.get(i), price);
            if (written.isEmpty()) {
                if (!what.isEmpty()) {
                    open.add(what);
                }
                continue;
            }
            Matcher money = MONEY.matcher(written);
            if (money.matches()) {
                String cents = money.group(2) == null ? "" : "." + money.group(2);
                sum = sum.add(new BigDecimal(money.group(1).replaceAll("\\D", "") + cents));
                priced++;
            } else {
                faults.add(new Fault(
                        "line " + (i + 1) + ", " + PRICE, written, "a price such as 12.50, 12,50 or 1 250", ""));
            }
        }
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
        return new ShoppingList(sum, priced, open);
    }

    private static String cell(List<String> line, int column) {
        return column < line.size() ? line.get(column).strip() : "";
    }

    private static List<List<String>> lines(String table) {
        String first = table.lines().findFirst().orElse("");
        char separator = first.contains(";") ? ';' : first.contains("\t") ? '\t' : ',';
        try (MappingIterator<List<String>> rows = new CsvMapper()
                .readerForListOf(String.class)
                .with(CsvParser.Feature.WRAP_AS_ARRAY)
                .with(CsvParser.Feature.SKIP_EMPTY_LINES)
                .with(CsvSchema.emptySchema().withColumnSeparator(separator))
                .readValues(table)) {
            return rows.readAll();
        } catch (JsonProcessingException broken) {
            int line = broken.getLocation() == null ? 1 : broken.getLocation().getLineNr();
            throw RefusedException.of(
                    "line " + line, "no columns can be made of it", "a table of comma-separated values");
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}

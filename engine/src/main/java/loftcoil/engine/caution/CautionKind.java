package loftcoil.engine.caution;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import loftcoil.engine.pipe.ResourceTable;

/**
 * What is the same each time a caution is raised.
 *
 * @param code code of our own
 * @param severity how bad it can get
 * @param decides whose rules and word come before this program's
 * @param source published source, or "common practice, no source"
 */
public record CautionKind(String code, Severity severity, String decides, String source) {

    private static final Map<String, CautionKind> ALL = read();

    /** Every caution there is, in the order of the table. */
    public static List<CautionKind> all() {
        return List.copyOf(ALL.values());
    }

    /** The kind of a code; a code without a row is a fault of the program. */
    static CautionKind of(String code) {
        CautionKind kind = ALL.get(code);
        if (kind == null) {
            throw new IllegalStateException("cautions.csv has no row for " + code);
        }
        return kind;
    }

    Caution raised(String words) {
        return new Caution(code, severity, words + " Ask first: " + decides + ".", source);
    }

    private static Map<String, CautionKind> read() {
        Map<String, CautionKind> kinds = new LinkedHashMap<>();
        for (Map<String, String> row :
                ResourceTable.read(CautionKind.class, "cautions.csv").rows()) {
            String code = row.getOrDefault("code", "");
            Severity severity =
                    Severity.valueOf(row.getOrDefault("severity", "").toUpperCase(Locale.ROOT));
            CautionKind kind =
                    new CautionKind(code, severity, row.getOrDefault("decides", ""), row.getOrDefault("source", ""));
            if (kinds.put(code, kind) != null) {
                throw new IllegalStateException("cautions.csv has " + code + " twice");
            }
        }
        return kinds;
    }
}

package loftcoil.engine.design;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.json.JsonFields;
import loftcoil.engine.json.JsonText;

/**
 * Reads and writes a design as JSON. Reading reports everything that is wrong in one go. Any object may carry a text
 * {@code notes}; any other field that is not of the design is refused, since it is most often a misspelt one.
 */
public final class DesignJson {

    private static final JsonText TEXT = new JsonText(20_000);

    private DesignJson() {}

    /**
     * Reads a design.
     *
     * @param json the text of the file, with or without a byte-order mark
     * @return a design in which nothing is wrong
     * @throws RefusedException with every fault found, each with the path of its field
     */
    public static Design read(String json) {
        JsonFields in = JsonFields.noted(TEXT.object("design", json));
        Map<String, Origin> origins = Origins.read(in);
        Design design = DesignTable.TABLE.read(in).noted(in.notes(), origins);
        List<Fault> faults = new ArrayList<>(in.faults());
        Set<String> told = faults.stream().map(Fault::path).collect(Collectors.toSet());
        // What was told to be missing or no number would be told again for the placeholder that stands in for it.
        DesignFaults.of(design).stream()
                .filter(fault -> told.stream().noneMatch(path -> isWithin(fault.path(), path)))
                .forEach(faults::add);
        if (!faults.isEmpty()) {
            throw new RefusedException(faults.stream().map(FaultHints::hinted).toList());
        }
        return design.noted(design.notes(), Origins.trimmed(design, origins));
    }

    /** The design as JSON, in the order of the record, absent parts left out. */
    public static String write(Design design) {
        ObjectNode out = DesignTable.TABLE.object("", design, design.notes());
        Origins.write(design, out);
        return out.toPrettyString() + "\n";
    }

    private static boolean isWithin(String path, String told) {
        return path.equals(told) || path.startsWith(told + ".") || path.startsWith(told + "[");
    }
}

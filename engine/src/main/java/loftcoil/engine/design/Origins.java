package loftcoil.engine.design;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.json.JsonFields;

/**
 * Where the values of a design are from, by path of a field or of a part, which stands for all fields in it. Only what goes without
 * saying is left out: what stands in a design is yours, what a default fills is assumed.
 */
final class Origins {

    static final String NAME = "origin";

    private static final KnownNames CODES = new KnownNames("origin", Coded.codes(Origin.class));

    private Origins() {}

    /** Where a value is from: as said of its field, else of the nearest part round it, else as goes without saying. */
    static Origin of(Map<String, Origin> origins, String path, boolean stands) {
        Optional<String> at = Optional.of(path);
        while (at.isPresent()) {
            Origin said = origins.get(at.get());
            if (said != null) {
                return said;
            }
            at = DesignFields.owner(at.get());
        }
        return stands ? Origin.YOURS : Origin.ASSUMED;
    }

    /** Reads the origins; paths no design has and words that are no origin are noted. */
    static Map<String, Origin> read(JsonFields in) {
        Map<String, Origin> origins = new TreeMap<>();
        in.ask(NAME).map(node -> in.section(NAME, node)).ifPresent(section -> section.names()
                .forEach(path -> one(section, path, origins)));
        return origins;
    }

    private static void one(JsonFields in, String path, Map<String, Origin> origins) {
        if (!DesignFields.exists(path)) {
            in.fault(new KnownNames("field", DesignFields.paths()).unknown(in.at(path), path));
            return;
        }
        String code = in.text(path);
        Coded.find(Origin.class, code).ifPresentOrElse(origin -> origins.put(path, origin), () -> {
            if (in.ask(path).filter(JsonNode::isTextual).isPresent()) {
                in.fault(CODES.unknown(in.at(path), code));
            }
        });
    }

    static void write(Design design, ObjectNode out) {
        Map<String, Origin> said = trimmed(design, design.origins());
        if (!said.isEmpty()) {
            ObjectNode origins = JsonNodeFactory.instance.objectNode();
            said.forEach((path, origin) -> origins.put(path, origin.code()));
            out.set(NAME, origins);
        }
    }

    /** The origins without those that go without saying and those of what the design does not have. */
    static Map<String, Origin> trimmed(Design design, Map<String, Origin> origins) {
        if (origins.isEmpty()) {
            return origins;
        }
        Map<String, Optional<String>> texts = DesignFields.texts(design);
        Set<String> there = new HashSet<>(texts.keySet());
        for (String path : texts.keySet()) {
            Optional<String> owner = DesignFields.owner(path);
            while (owner.isPresent() && there.add(owner.get())) {
                owner = DesignFields.owner(owner.get());
            }
        }
        Map<String, Origin> kept = new TreeMap<>();
        origins.keySet().stream()
                .filter(there::contains)
                .sorted(Comparator.comparingInt(String::length))
                .forEach(path -> {
                    boolean stands = !texts.containsKey(path) || texts.get(path).isPresent();
                    Origin said = origins.getOrDefault(path, Origin.YOURS);
                    if (of(kept, path, stands) != said) {
                        kept.put(path, said);
                    }
                });
        return kept;
    }

    /**
     * The changed design with the fields that were decided marked as yours, and what they started besides as assumed.
     *
     * @param before the design before the change
     * @param after the changed design
     * @param decided paths of the fields that were decided, {@code []} for each item of a list
     */
    static Design decided(Design before, Design after, List<String> decided) {
        Map<String, Origin> origins = new TreeMap<>(after.origins());
        Set<String> partsBefore = DesignFields.partsOf(before);
        DesignFields.partsOf(after).stream()
                .filter(part -> !partsBefore.contains(part))
                .filter(part -> of(origins, part, true) == Origin.YOURS)
                .forEach(part -> origins.put(part, Origin.ASSUMED));
        DesignFields.texts(after).forEach((path, text) -> {
            if (decided.contains(path) || decided.contains(DesignFields.general(path))) {
                origins.put(path, text.isPresent() ? Origin.YOURS : Origin.ASSUMED);
            }
        });
        return after.noted(after.notes(), trimmed(after, origins));
    }

    /**
     * Where the values of a merged design are from: what was followed, decided anew or borrowed until now has the origin that the other
     * gives it, what stayed has one's own.
     */
    static Design merged(Design merged, Design base, Design ours, Design theirs) {
        Map<String, Optional<String>> before = DesignFields.texts(ours);
        Map<String, Optional<String>> after = DesignFields.texts(theirs);
        Map<String, Origin> origins = new TreeMap<>(ours.origins());
        DesignFields.texts(merged).forEach((path, text) -> {
            boolean there = text.isPresent();
            Origin own = of(ours.origins(), path, there);
            Origin other = of(theirs.origins(), path, there);
            boolean followed = !text.equals(before.get(path)) || other != of(base.origins(), path, there);
            boolean theirText = text.equals(after.get(path));
            Origin wanted = theirText && (followed || own == Origin.BORROWED) ? other : own;
            if (of(origins, path, there) != wanted) {
                origins.put(path, wanted);
            }
        });
        return merged.noted(merged.notes(), trimmed(merged, origins));
    }

    /** The design with all its values borrowed; its name is its own. */
    static Design borrowed(Design design) {
        Map<String, Origin> origins = new TreeMap<>();
        for (String path : DesignFields.texts(design).keySet()) {
            String part = path.replaceFirst("[.\\[].*", "");
            if (!part.equals("name")) {
                origins.put(part, Origin.BORROWED);
            }
        }
        return design.noted(design.notes(), origins);
    }
}

package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loftcoil.engine.design.Change;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.study.NamedValue;

/** The named changes of a design as levers, by the part of the system they belong to. */
final class Levers {

    private static final Map<String, String> PARTS = parts();

    private Levers() {}

    /** Names of changes begin with their part. */
    private static Map<String, String> parts() {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("tank", "Tank");
        parts.put("loop", "Whole loop");
        parts.put("legs", "Whole loop");
        parts.put("coldLegs", "Cold pipe, tank to coil");
        parts.put("hotLegs", "Hot pipe, coil to tank");
        parts.put("coil", "Coil");
        parts.put("fire", "Fire");
        parts.put("window", "Sun and panes");
        parts.put("taps", "Taps");
        parts.put("vent", "Vent");
        parts.put("coldFeed", "Cold feed");
        parts.put("safety", "Cold feed");
        parts.put("absence", "Away from home");
        parts.put("site", "Site");
        return parts;
    }

    /** All changes, each with the value the design has now. */
    static List<RebuildView.Part> of(Design design) {
        Map<String, List<RebuildView.Lever>> grouped = new LinkedHashMap<>();
        PARTS.values().forEach(words -> grouped.put(words, new ArrayList<>()));
        for (String name : Changes.names()) {
            String part = PARTS.getOrDefault(name.replaceFirst("\\..*", ""), "Other");
            grouped.computeIfAbsent(part, words -> new ArrayList<>()).add(lever(design, name));
        }
        return grouped.entrySet().stream()
                .filter(group -> !group.getValue().isEmpty())
                .map(group -> new RebuildView.Part(group.getKey(), group.getValue()))
                .toList();
    }

    private static RebuildView.Lever lever(Design design, String name) {
        Change change = Changes.describe(name);
        return new RebuildView.Lever(
                name, change.label(), change.unit(), Changes.current(design, name), change.allowed(), change.options());
    }

    /**
     * The values that are not the design's own already, in the order of the named changes.
     *
     * @throws loftcoil.engine.fault.RefusedException where there is no change of one of the names
     */
    static List<NamedValue> changed(Design design, Map<String, String> values) {
        values.keySet().forEach(Changes::describe);
        return Changes.names().stream()
                .filter(values::containsKey)
                .map(name -> new NamedValue(name, values.getOrDefault(name, "").strip()))
                .filter(change -> !change.value().equals(Changes.current(design, change.name())))
                .toList();
    }
}

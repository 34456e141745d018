package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loftcoil.engine.design.Change;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.study.NamedValue;
import loftcoil.engine.survey.FittingCounts;

/** The named changes of a design as levers, by the part of the system they belong to. */
final class Levers {

    private static final String WHOLE_LOOP = "Whole loop";
    private static final Map<String, String> PARTS = parts();

    private Levers() {}

    /** Names of changes begin with their part. */
    private static Map<String, String> parts() {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("tank", "Tank");
        parts.put("loop", WHOLE_LOOP);
        parts.put("legs", WHOLE_LOOP);
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
    static List<RebuildView.Part> of(Design design, Shown shown) {
        Map<String, List<RebuildView.Lever>> grouped = new LinkedHashMap<>();
        PARTS.values().forEach(words -> grouped.put(words, new ArrayList<>()));
        for (String name : Changes.names()) {
            String part = PARTS.getOrDefault(name.replaceFirst("\\..*", ""), "Other");
            grouped.computeIfAbsent(part, words -> new ArrayList<>()).add(lever(design, name, shown));
        }
        return grouped.entrySet().stream()
                .filter(group -> !group.getValue().isEmpty())
                .map(group ->
                        new RebuildView.Part(group.getKey(), group.getValue(), counts(group.getKey(), design, shown)))
                .toList();
    }

    private static List<String> counts(String part, Design design, Shown shown) {
        return part.equals(WHOLE_LOOP)
                ? FittingCounts.inLoop(design).stream()
                        .map(shown.units()::words)
                        .toList()
                : List.of();
    }

    private static RebuildView.Lever lever(Design design, String name, Shown shown) {
        Change change = Changes.describe(name);
        return new RebuildView.Lever(
                name,
                change.label(),
                shown.unit(name, change.unit()),
                shown.number(name, Changes.current(design, name), change.unit()),
                shown.option(change.allowed()),
                shown.options(change.options()));
    }

    /**
     * The values that are not the design's own already, in the order of the named changes.
     *
     * @param values as typed, in any fitting unit
     * @throws loftcoil.engine.fault.RefusedException where there is no change of one of the names, or a value cannot be read
     */
    static List<NamedValue> changed(Design design, Map<String, String> values, Shown shown) {
        values.keySet().forEach(Changes::describe);
        List<Fault> faults = new ArrayList<>();
        List<NamedValue> changed = new ArrayList<>();
        for (String name : Changes.names()) {
            try {
                String value = values.containsKey(name)
                        ? read(design, name, values.getOrDefault(name, "").strip(), shown)
                        : Changes.current(design, name);
                if (!value.equals(Changes.current(design, name))) {
                    changed.add(new NamedValue(name, value));
                }
            } catch (RefusedException refused) {
                faults.addAll(refused.faults());
            }
        }
        if (!faults.isEmpty()) {
            throw new RefusedException(faults);
        }
        return List.copyOf(changed);
    }

    /** What was typed, as a change takes it; what was left as it was shown is as it stands. */
    private static String read(Design design, String name, String typed, Shown shown) {
        Change change = Changes.describe(name);
        String now = Changes.current(design, name);
        if (typed.equals(now) || typed.equals(shown.number(name, now, change.unit()))) {
            return now;
        }
        boolean number = change.range().isPresent()
                && change.options().isEmpty()
                && !change.allowed().contains(",");
        return number && !typed.equals(Changes.NOT_SAID)
                ? shown.typed(name, typed, change.unit())
                : shown.chosen(change.options(), typed);
    }
}

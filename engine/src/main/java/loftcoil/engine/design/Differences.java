package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import loftcoil.engine.words.MeasuredText;

/**
 * All in which two designs differ, in words: each field, each month of the climate, pipes, taps and draws that are new or gone, notes,
 * and where values are from. Pipes and taps are known by their names, so that one more at the front does not make all others differ.
 */
public final class Differences {

    private static final MeasuredText NONE = MeasuredText.of("none");

    private final Design before;
    private final Design after;
    private final List<Said> found = new ArrayList<>();

    private Differences(Design before, Design after) {
        this.before = before;
        this.after = after;
    }

    /**
     * One difference.
     *
     * @param path where it stands, in the later design where that has it
     * @param part what it belongs to, such as {@code Tank} or {@code Hot pipe “riser”}
     * @param label what it is; empty where the whole part is new or gone
     * @param before what stands in the earlier design
     * @param after what stands in the later one
     */
    public record Said(String path, String part, String label, MeasuredText before, MeasuredText after) {

        /** The difference in one line, its part first. */
        public MeasuredText words() {
            String named = label.isEmpty() || label.equals(part) ? part : part + ": " + label;
            return MeasuredText.of(named + ", ", before, " → ", after);
        }
    }

    /** All differences, in the order of the file; empty where there is none. */
    public static List<Said> between(Design before, Design after) {
        Differences differences = new Differences(before, after);
        differences.find();
        return List.copyOf(differences.found);
    }

    /**
     * What moved with changes without being named by them, such as the pipe that is stretched where a tank is raised.
     *
     * @param before the design before the changes
     * @param after the design after them
     * @param changes the names of the changes, or paths of fields
     * @throws loftcoil.engine.fault.RefusedException where there is no change of one of the names
     */
    public static List<Said> moved(Design before, Design after, List<String> changes) {
        List<String> decided = changes.stream()
                .flatMap(change -> Changes.decides(change).stream())
                .toList();
        Predicate<Said> named = said -> decided.stream()
                .anyMatch(path -> path.equals(said.path())
                        || DesignFields.general(said.path()).equals(DesignFields.general(path)));
        return between(before, after).stream()
                .filter(said -> DesignFields.at(said.path()).isPresent())
                .filter(named.negate())
                .toList();
    }

    private void find() {
        Map<String, Optional<String>> old = DesignFields.texts(before);
        Map<String, Optional<String>> now = DesignFields.texts(after);
        List<ListMatch> lists = Arrays.stream(Listed.values())
                .map(listed -> ListMatch.of(listed, old, now))
                .toList();
        Map<String, String> paths = new LinkedHashMap<>();
        old.keySet().forEach(path -> paths.put(later(path, lists), path));
        now.keySet().forEach(path -> paths.putIfAbsent(path, ""));
        for (String path : inOrder(now, paths)) {
            String was = paths.getOrDefault(path, "");
            boolean whole = lists.stream().anyMatch(list -> list.isWhole(path));
            if (!whole) {
                field(path, old.getOrDefault(was, Optional.empty()), now.getOrDefault(path, Optional.empty()));
            }
        }
        lists.forEach(list -> list.items(old, now, found));
        notes();
        origins();
    }

    /** Those of the later design first, in its order; then those that it does not have. */
    private static List<String> inOrder(Map<String, Optional<String>> now, Map<String, String> paths) {
        List<String> order = new ArrayList<>(now.keySet());
        paths.keySet().stream().filter(path -> !now.containsKey(path)).forEach(order::add);
        return order;
    }

    /** The path that a field of the earlier design has in the later one. */
    private static String later(String path, List<ListMatch> lists) {
        return lists.stream()
                .filter(list -> list.owns(path))
                .findFirst()
                .map(list -> list.later(path))
                .orElse(path);
    }

    private void field(String path, Optional<String> was, Optional<String> is) {
        DesignField field = DesignFields.at(path).orElse(null);
        if (field == null || was.equals(is)) {
            return;
        }
        String part = DifferenceWords.part(path, after, before);
        if (DifferenceWords.isYear(field) && was.isPresent() && is.isPresent()) {
            months(path, part, field, was.get(), is.get());
            return;
        }
        found.add(new Said(
                path,
                part,
                field.label(),
                DifferenceWords.value(field, was, is),
                DifferenceWords.value(field, is, was)));
    }

    private void months(String path, String part, DesignField field, String was, String is) {
        String[] old = was.split(", ", -1);
        String[] now = is.split(", ", -1);
        for (int month = 0; month < Math.min(old.length, now.length); month++) {
            if (!old[month].equals(now[month])) {
                Optional<String> one = Optional.of(old[month]);
                Optional<String> other = Optional.of(now[month]);
                found.add(new Said(
                        path,
                        part,
                        field.label().replace(", by month", "") + " in " + DifferenceWords.month(month + 1),
                        DifferenceWords.value(field, one, other),
                        DifferenceWords.value(field, other, one)));
            }
        }
    }

    private void notes() {
        TreeSet<String> places = new TreeSet<>(before.notes().keySet());
        places.addAll(after.notes().keySet());
        for (String place : places) {
            String was = before.notes().getOrDefault(place, "");
            String is = after.notes().getOrDefault(place, "");
            if (!was.equals(is)) {
                String path = place.isEmpty() ? "notes" : place + ".notes";
                found.add(new Said(path, "Notes", place, quoted(was), quoted(is)));
            }
        }
    }

    private static MeasuredText quoted(String note) {
        return note.isEmpty() ? NONE : MeasuredText.of(new MeasuredText.Name("“" + note + "”"));
    }

    private void origins() {
        if (!before.origins().equals(after.origins())) {
            found.add(new Said(Origins.NAME, "Where values are from", "", counted(before), counted(after)));
        }
    }

    private static MeasuredText counted(Design design) {
        Map<Origin, Integer> counts = new EnumMap<>(Origin.class);
        DesignFields.of(design).forEach(value -> counts.merge(value.origin(), 1, Integer::sum));
        return MeasuredText.of(counts.entrySet().stream()
                .map(count -> count.getValue() + " " + count.getKey().code())
                .collect(Collectors.joining(", ")));
    }
}

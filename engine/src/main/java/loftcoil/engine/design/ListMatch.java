package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loftcoil.engine.words.MeasuredText;

/**
 * Which item of a list is which in a later design: by name first, then by being alike, then by place.
 *
 * @param listed the list
 * @param to for each item of the earlier design its number in the later one; -1 where it is gone
 * @param count items of the later design
 */
record ListMatch(Listed listed, List<Integer> to, int count) {

    private static final String NAME = ".name";
    private static final int GONE = -1;

    ListMatch {
        to = List.copyOf(to);
    }

    static ListMatch of(Listed listed, Map<String, Optional<String>> old, Map<String, Optional<String>> now) {
        List<Map<String, Optional<String>>> before = items(listed, old);
        List<Map<String, Optional<String>>> after = items(listed, now);
        Integer[] to = new Integer[before.size()];
        Arrays.fill(to, GONE);
        if (listed.named()) {
            pair(to, before, after, (one, other) -> Objects.equals(one.get(NAME), other.get(NAME)));
        }
        pair(to, before, after, Map::equals);
        if (!listed.named() || before.size() == after.size()) {
            pair(to, before, after, (one, other) -> true);
        }
        return new ListMatch(listed, List.of(to), after.size());
    }

    /** Pairs what is without a fellow still, the first with the first. */
    private static void pair(
            Integer[] to,
            List<Map<String, Optional<String>>> before,
            List<Map<String, Optional<String>>> after,
            BiPredicate<Map<String, Optional<String>>, Map<String, Optional<String>>> fellows) {
        for (int i = 0; i < to.length; i++) {
            for (int j = 0; j < after.size() && to[i] == GONE; j++) {
                if (!Arrays.asList(to).contains(j) && fellows.test(before.get(i), after.get(j))) {
                    to[i] = j;
                }
            }
        }
    }

    private static List<Map<String, Optional<String>>> items(Listed listed, Map<String, Optional<String>> texts) {
        Map<Integer, Map<String, Optional<String>>> items = new TreeMap<>();
        texts.forEach((path, text) -> {
            if (listed.holds(path)) {
                items.computeIfAbsent(listed.number(path), number -> new LinkedHashMap<>())
                        .put(listed.rest(path), text);
            }
        });
        return List.copyOf(items.values());
    }

    boolean owns(String path) {
        return listed.holds(path);
    }

    /** The path in the later design; of an item that is gone, one past its end. */
    String later(String path) {
        int number = listed.number(path);
        int now = to.get(number);
        return listed.at(now == GONE ? count + number : now, listed.rest(path));
    }

    /** Whether a path of the later design belongs to an item that is told as a whole, since it is new or gone. */
    boolean isWhole(String path) {
        return owns(path) && !to.contains(listed.number(path));
    }

    /** Tells items that are new or gone, and another order. */
    void items(Map<String, Optional<String>> old, Map<String, Optional<String>> now, List<Differences.Said> found) {
        for (int i = 0; i < to.size(); i++) {
            if (to.get(i) == GONE) {
                found.add(said(i, old, true));
            }
        }
        for (int j = 0; j < count; j++) {
            if (!to.contains(j)) {
                found.add(said(j, now, false));
            }
        }
        List<Integer> stays = to.stream().filter(number -> number != GONE).toList();
        if (!stays.equals(stays.stream().sorted().toList())) {
            found.add(new Differences.Said(
                    listed.path(), listed.item(), "order", order(old, to.size()), order(now, count)));
        }
    }

    private Differences.Said said(int number, Map<String, Optional<String>> texts, boolean gone) {
        List<Object> values = new ArrayList<>();
        texts.forEach((path, text) -> {
            if (listed.holds(path) && listed.number(path) == number && text.isPresent()) {
                DesignFields.at(path).ifPresent(field -> {
                    values.add((values.isEmpty() ? "" : "; ") + field.label() + " ");
                    values.add(DifferenceWords.value(field, text, Optional.empty()));
                });
            }
        });
        MeasuredText all = MeasuredText.of(values.toArray());
        MeasuredText none = MeasuredText.of("none");
        return new Differences.Said(
                listed.path() + "[" + number + "]",
                DifferenceWords.item(listed, number, texts),
                "",
                gone ? all : none,
                gone ? none : all);
    }

    private MeasuredText order(Map<String, Optional<String>> texts, int items) {
        return MeasuredText.of(IntStream.range(0, items)
                .mapToObj(number -> DifferenceWords.item(listed, number, texts))
                .collect(Collectors.joining(", ")));
    }
}

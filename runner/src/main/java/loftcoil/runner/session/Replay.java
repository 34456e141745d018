package loftcoil.runner.session;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What must be done again in a fresh Java machine to have the learner's names back. Each step counts once, where it
 * first ran and with its latest text; of its earlier texts only declarations stay that the latest no longer has.
 */
final class Replay {

    private final Map<String, List<DonePiece>> steps = new LinkedHashMap<>();

    /** Keeps the pieces of a step that ran to their end. */
    synchronized void keep(String step, List<DonePiece> pieces) {
        Set<String> again = new HashSet<>();
        pieces.forEach(piece -> again.addAll(piece.declares()));
        List<DonePiece> kept = new ArrayList<>();
        for (DonePiece old : steps.getOrDefault(step, List.of())) {
            if (!old.declares().isEmpty() && !again.containsAll(old.declares())) {
                kept.add(old);
            }
        }
        kept.addAll(pieces);
        steps.put(step, kept);
    }

    /** What the pieces of a step declare. */
    synchronized Set<String> declaredBy(String step) {
        Set<String> names = new HashSet<>();
        steps.getOrDefault(step, List.of()).forEach(piece -> names.addAll(piece.declares()));
        return names;
    }

    /** Leaves out of a step the pieces that declare those names. */
    synchronized void forget(String step, Set<String> names) {
        steps.computeIfPresent(step, (same, pieces) -> pieces.stream()
                .filter(piece -> piece.declares().stream().noneMatch(names::contains))
                .toList());
    }

    /** All pieces in order. */
    synchronized List<DonePiece> pieces() {
        return steps.values().stream().flatMap(List::stream).toList();
    }

    /** Leaves a piece out for good, as one that ends the machine. */
    synchronized void drop(DonePiece piece) {
        steps.replaceAll((step, pieces) ->
                pieces.stream().filter(kept -> !kept.equals(piece)).toList());
    }

    synchronized void clear() {
        steps.clear();
    }
}

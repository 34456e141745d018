package loftcoil.runner.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.runner.chart.Plot;
import loftcoil.runner.session.words.Unfinished;

/** Ways to go on typing, from JShell's own analysis of the piece at the cursor. */
final class Completion {

    private static final int MOST = 60;
    private static final Set<String> OF_EVERY_OBJECT = Set.of(
            "class", "equals(", "getClass()", "hashCode()", "notify()", "notifyAll()", "toString()", "wait(", "wait()");

    private static final Pattern BEFORE_DOT = Pattern.compile("(\\w+)\\.\\w*$");

    private final Shell shell;

    Completion(Shell shell) {
        this.shell = shell;
    }

    /** Suggestions, best first; none where the Java is nested too deeply to be read. */
    List<Suggestion> suggest(String source, int cursor) {
        shell.openEveryRoom();
        return readable(source, () -> suggestions(source, cursor), List.of());
    }

    private static <T> T readable(String source, Supplier<T> read, T otherwise) {
        if (Unfinished.tooDeep(source, 0).isPresent()) {
            return otherwise;
        }
        try {
            return read.get();
        } catch (StackOverflowError | InternalError e) {
            if (!TooDeep.is(e)) {
                throw e;
            }
            return otherwise;
        }
    }

    private List<Suggestion> suggestions(String source, int cursor) {
        AtCursor here = AtCursor.in(shell.analysis(), source, within(source, cursor));
        int[] anchor = new int[1];
        String owner = owner(here.text());
        Map<String, Suggestion> found = new LinkedHashMap<>();
        for (var raw :
                shell.analysis().completionSuggestions(here.text(), here.text().length(), anchor)) {
            Suggestion suggestion = new Suggestion(
                    raw.continuation(),
                    here.toSource(anchor[0]),
                    raw.matchesType(),
                    Meanings.of(owner, nameOf(raw.continuation())));
            found.merge(suggestion.text(), suggestion, (a, b) -> a.fits() ? a : b);
        }
        for (String name : here.declared()) {
            if (name.startsWith(here.word())) {
                int from = here.toSource(here.text().length() - here.word().length());
                found.putIfAbsent(name, new Suggestion(name, from, true, ""));
            }
        }
        List<Suggestion> sorted = new ArrayList<>(found.values());
        Set<String> ours = ours(here);
        sorted.sort(Comparator.comparingInt((Suggestion s) -> rank(s, ours)).thenComparing(Suggestion::text));
        return sorted.size() > MOST ? List.copyOf(sorted.subList(0, MOST)) : List.copyOf(sorted);
    }

    private static int within(String source, int cursor) {
        return Math.max(0, Math.min(cursor, source.length()));
    }

    private static int rank(Suggestion suggestion, Set<String> ours) {
        String text = suggestion.text();
        if (OF_EVERY_OBJECT.contains(text)) {
            return 4;
        }
        int own = !suggestion.meaning().isEmpty() || ours.contains(nameOf(text)) ? 0 : 2;
        return own + (suggestion.fits() ? 0 : 1);
    }

    private static String nameOf(String suggested) {
        return suggested.replaceFirst("[^\\w].*", "");
    }

    /** The word before the dot that the cursor stands behind; empty where there is none. */
    private static String owner(String text) {
        Matcher before = BEFORE_DOT.matcher(text);
        return before.find() ? before.group(1) : "";
    }

    private Set<String> ours(AtCursor here) {
        return Stream.of(
                        shell.known().stream(),
                        here.declared().stream(),
                        Stream.of(Plot.class.getMethods()).map(method -> method.getName()),
                        shell.jshell().variables().map(v -> v.name()),
                        shell.jshell().methods().map(m -> m.name()),
                        shell.jshell().types().map(t -> t.name()))
                .flatMap(names -> names)
                .collect(Collectors.toSet());
    }
}

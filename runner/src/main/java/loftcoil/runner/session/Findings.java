package loftcoil.runner.session;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.Snippet;
import loftcoil.runner.session.words.Finding;
import loftcoil.runner.session.words.PlainWords;
import loftcoil.runner.session.words.Unfinished;

/** What the compiler found in a piece, at the learner's own line and column and in plain words. */
final class Findings {

    private static final Pattern IN_TYPE =
            Pattern.compile("location:\\s+(?:class |interface |variable \\w+ of type )([\\w.]+)");

    private final Shell shell;
    private final LineIndex places;

    Findings(Shell shell, LineIndex places) {
        this.shell = shell;
        this.places = places;
    }

    /** Problems of a piece the compiler refused; at least one. */
    List<Outcome.Problem> of(Snippet snippet, Piece piece) {
        Map<String, Outcome.Problem> problems = new LinkedHashMap<>();
        for (Diag diag : shell.problems(snippet)) {
            int at = piece.offset() + (int) Math.max(0, diag.getPosition());
            Outcome.Problem problem = problem(at, diag.getCode(), diag.getMessage(Locale.ENGLISH));
            problems.putIfAbsent(problem.line() + ":" + problem.column(), problem);
        }
        if (problems.isEmpty()) {
            List<Outcome.Problem> unresolved = unresolved(snippet, piece);
            return unresolved.isEmpty()
                    ? List.of(problem(piece.offset(), "", "this cannot be read as Java"))
                    : unresolved;
        }
        return List.copyOf(problems.values());
    }

    /** Names a declaration uses that nothing declares; the compiler alone would let it pass until it is used. */
    List<Outcome.Problem> unresolved(Snippet snippet, Piece piece) {
        if (!(snippet instanceof DeclarationSnippet declaration)) {
            return List.of();
        }
        List<Outcome.Problem> problems = new ArrayList<>();
        for (String missing : shell.jshell().unresolvedDependencies(declaration).toList()) {
            String name = missing.replaceFirst("^\\w+ ", "").replaceFirst("\\(.*", "");
            Matcher matcher =
                    Pattern.compile("\\b" + Pattern.quote(name) + "\\b").matcher(piece.source());
            int at = piece.offset() + (matcher.find() ? matcher.start() : 0);
            problems.add(problem(at, "compiler.err.cant.resolve", "cannot find symbol\n  symbol:   " + missing));
        }
        return problems;
    }

    /** The one problem of a piece that the snippet ends within. */
    List<Outcome.Problem> unfinished(Piece piece) {
        String source = places.source();
        Unfinished.Open open = Unfinished.in(source, piece.offset());
        int at = open.offset();
        String words = open.words(places.line(at));
        int end = source.stripTrailing().length();
        return List.of(
                new Outcome.Problem(places.line(end), places.column(end), words, "reached end of file while parsing"));
    }

    /** The one problem of Java that is nested deeper than the compiler can follow. */
    List<Outcome.Problem> tooDeep(int at) {
        return List.of(problem(at, TooDeep.CODE, "nested too deeply"));
    }

    private Outcome.Problem problem(int at, String code, String message) {
        Set<String> known = knownNames();
        known.addAll(membersOf(message));
        Finding finding = new Finding(code, message, places.source(), at, known);
        return new Outcome.Problem(places.line(at), places.column(at), PlainWords.of(finding), message);
    }

    /** Names of what a type of the engine offers, where the compiler looked for a name in it. */
    private Set<String> membersOf(String message) {
        Matcher type = IN_TYPE.matcher(message);
        if (!type.find()) {
            return Set.of();
        }
        String simple = type.group(1).substring(type.group(1).lastIndexOf('.') + 1);
        Set<String> names = new TreeSet<>();
        for (String room : shell.roomsOf(simple)) {
            try {
                Class<?> found = Class.forName(room + "." + simple, false, Findings.class.getClassLoader());
                Stream.of(found.getMethods()).map(Method::getName).forEach(names::add);
            } catch (ClassNotFoundException | LinkageError e) {
                // Then there are no names to offer.
            }
        }
        return names;
    }

    private Set<String> knownNames() {
        Set<String> names = new TreeSet<>(shell.known());
        Stream.of(
                        shell.jshell().variables().map(v -> v.name()),
                        shell.jshell().methods().map(m -> m.name()),
                        shell.jshell().types().map(t -> t.name()))
                .flatMap(s -> s)
                .filter(name -> !name.startsWith("$"))
                .forEach(names::add);
        return names;
    }
}

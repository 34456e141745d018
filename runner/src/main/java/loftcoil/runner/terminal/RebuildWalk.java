package loftcoil.runner.terminal;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.progress.FolderException;
import loftcoil.runner.progress.TextFile;
import loftcoil.runner.show.ComparisonText;
import loftcoil.runner.show.RebuildApp;
import loftcoil.runner.show.RebuildView;

/** The rebuild in the terminal: values are set by name, and old and new are shown side by side. */
final class RebuildWalk {

    private static final int HELP_TEXT_AT = 19;
    private static final int LONGEST_BYTES = 1_000_000;

    private static final String HELP =
            """
            list               all that can be changed, with its value now
            tank.baseM = 2.6 m changes that one thing; the old value puts it back
            show               before and after, figure by figure
            year               the same with the year, which takes some seconds and can be stopped
            old                start from a design that your folder keeps from before; old PATH from one in a file
            take               make it your design; the one from before is kept
            ?                  this list
            q                  leave; what was not taken over is dropped""";

    private final RebuildApp rebuild;
    private final Console console;
    private final Map<String, String> changes = new LinkedHashMap<>();
    private RebuildView.Start start;

    RebuildWalk(RebuildApp rebuild, Console console) {
        this.rebuild = rebuild;
        this.console = console;
        this.start = rebuild.own();
    }

    /** Until the learner leaves. */
    void walk() {
        console.head("Rebuild: " + start.name() + " (" + start.from() + ")");
        help();
        while (true) {
            Optional<String> typed = console.ask("Rebuild: ").map(String::strip);
            if (typed.isEmpty() || typed.get().equals("q")) {
                return;
            }
            try {
                carryOut(typed.get());
            } catch (RefusedException refused) {
                refused.lines().forEach(console::warn);
            } catch (FolderException unsaved) {
                console.warn("NOT SAVED: " + unsaved.getMessage());
            }
        }
    }

    private void carryOut(String typed) {
        switch (typed) {
            case "", "?" -> help();
            case "list" -> list();
            case "show" -> show(false);
            case "year" -> show(true);
            case "old" -> old();
            case "take" -> take();
            default -> {
                if (typed.startsWith("old ")) {
                    begin(file(typed.substring("old ".length()).strip()));
                } else {
                    set(typed);
                }
            }
        }
    }

    private void help() {
        console.say(Wrap.hangingEach(HELP, HELP_TEXT_AT, console.width()));
    }

    private void list() {
        for (RebuildView.Part part : start.parts()) {
            console.say(part.words());
            for (RebuildView.Lever lever : part.levers()) {
                String changed = changes.containsKey(lever.name()) ? " -> " + changes.get(lever.name()) : "";
                String line =
                        "  " + lever.name() + " = " + lever.current() + changed + unit(lever) + ": " + lever.label();
                Wrap.lines(line, console.width()).forEach(console::say);
            }
            part.counts()
                    .forEach(count -> Wrap.lines("  " + count, console.width()).forEach(console::say));
        }
    }

    /** Feet and inches have their units within. */
    private static String unit(RebuildView.Lever lever) {
        return lever.unit().isEmpty() || !lever.current().matches(".*\\d") ? "" : " " + lever.unit();
    }

    private void set(String typed) {
        int equals = typed.indexOf('=');
        Optional<RebuildView.Lever> lever =
                equals < 0 ? Optional.empty() : lever(typed.substring(0, equals).strip());
        if (lever.isEmpty()) {
            Wrap.lines("“" + typed + "” means nothing here. What you can type:", console.width())
                    .forEach(console::say);
            help();
            return;
        }
        String name = lever.get().name();
        String value = typed.substring(equals + 1).strip();
        Optional<String> before = Optional.ofNullable(changes.put(name, value));
        try {
            rebuild.compare(start.json(), changes, false);
            console.say(lever.get().label() + ": was " + lever.get().current() + ", now " + value
                    + ". show sets before and after side by side.");
        } catch (RefusedException refused) {
            before.ifPresentOrElse(old -> changes.put(name, old), () -> changes.remove(name));
            throw refused;
        }
    }

    private Optional<RebuildView.Lever> lever(String name) {
        return start.parts().stream()
                .flatMap(part -> part.levers().stream())
                .filter(lever -> lever.name().equals(name))
                .findFirst();
    }

    private void show(boolean year) {
        RebuildView.SideBySide both = year ? marched() : rebuild.compare(start.json(), changes, false);
        ComparisonText.lines(both, console.width()).stream()
                .flatMap(line -> line.length() > console.width()
                        ? Wrap.lines(line, console.width()).stream()
                        : List.of(line).stream())
                .forEach(console::say);
    }

    /** Marches until it is done or the learner stops it; leaving the prompt stops it too. */
    private RebuildView.SideBySide marched() {
        Map<String, String> asked = Map.copyOf(changes);
        CompletableFuture<RebuildView.SideBySide> work =
                CompletableFuture.supplyAsync(() -> rebuild.compare(start.json(), asked, true));
        boolean stopped = false;
        while (!work.isDone() && !stopped) {
            RebuildView.Far far = rebuild.far();
            String how = far.of() == 0 ? "" : ", " + far.done() + " of " + far.of();
            Optional<String> typed = console.ask("Marching the years" + how + ". Enter looks again, s stops: ");
            stopped = typed.isEmpty() || typed.get().strip().equals("s");
        }
        if (stopped) {
            rebuild.stop();
        }
        try {
            return work.join();
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof RuntimeException refused) {
                throw refused;
            }
            throw failed;
        }
    }

    private void old() {
        List<String> kept = start.kept();
        for (int i = 0; i < kept.size(); i++) {
            console.say("%3d  %s".formatted(i + 1, kept.get(i)));
        }
        String typed = console.ask("Number of the design, or Enter for your own as it stands: ")
                .orElse("")
                .strip();
        for (int i = 0; i < kept.size(); i++) {
            if (typed.equals(Integer.toString(i + 1))) {
                begin(rebuild.kept(kept.get(i)));
                return;
            }
        }
        begin(rebuild.own());
    }

    private RebuildView.Start file(String path) {
        try {
            return rebuild.from(TextFile.read(Path.of(path), LONGEST_BYTES), path);
        } catch (IOException | InvalidPathException cannot) {
            throw RefusedException.of(path, TextFile.why(cannot), "a file with a design that can be read");
        }
    }

    private void begin(RebuildView.Start other) {
        start = other;
        changes.clear();
        console.say("The old design: " + other.name() + " (" + other.from() + ").");
    }

    private void take() {
        if (changes.isEmpty()) {
            console.say("Nothing is changed yet.");
            return;
        }
        console.say(rebuild.takeOver(start.json(), changes).words());
        begin(rebuild.own());
    }
}

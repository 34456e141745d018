package loftcoil.runner.terminal;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.progress.FolderException;
import loftcoil.runner.progress.TextFile;
import loftcoil.runner.show.DesignsApp;
import loftcoil.runner.show.DesignsView;
import loftcoil.runner.show.RebuildView;
import loftcoil.runner.show.UnknownNameException;

/** The learner's designs in the terminal: the one that is taken up, its history, and the shelf. */
final class DesignsWalk {

    private static final int HELP_TEXT_AT = 19;
    private static final int LONGEST_BYTES = 1_000_000;
    private static final int MOMENTS = 12;

    private static final String HELP =
            """
            list               all designs, each with its number
            history            how the one that is taken up came to be; history all for the oldest too
            undo               takes the last change back
            redo               makes it again
            back 7             brings the state of that number in the history back, as a change
            differs 2          all in which the design of that number differs from the one that is taken up
            up 2               takes up the design of that number; the one until now goes to the shelf
            new                begins another from an example dwelling
            name 2             gives a design another name; 0 is the one that is taken up
            copy 0             puts a copy on the shelf
            save 0 PATH        writes a design to a file that is not there yet
            open PATH          takes up the design of a file
            remove 2           removes a design of the shelf; bring 1 brings back what was removed
            ?                  this list
            q                  leave; all is kept""";

    private final DesignsApp designs;
    private final Console console;

    DesignsWalk(DesignsApp designs, Console console) {
        this.designs = designs;
        this.console = console;
    }

    /** Until the learner leaves. */
    void walk() {
        console.head("Designs");
        list(designs.shelf());
        help();
        while (true) {
            Optional<String> typed = console.ask("Designs: ").map(String::strip);
            if (typed.isEmpty() || typed.get().equals("q")) {
                return;
            }
            try {
                carryOut(typed.get());
            } catch (RefusedException refused) {
                refused.lines().forEach(this::warn);
            } catch (UnknownNameException unknown) {
                warn(String.valueOf(unknown.getMessage()));
            } catch (FolderException unsaved) {
                warn("NOT SAVED: " + unsaved.getMessage());
            }
        }
    }

    private void carryOut(String typed) {
        String[] words = typed.split("\\s+", 2);
        String rest = words.length > 1 ? words[1].strip() : "";
        switch (words[0]) {
            case "", "?" -> help();
            case "list" -> list(designs.shelf());
            case "history" -> history(designs.shelf().history(), rest.equals("all"));
            case "undo" -> done(designs.undo());
            case "redo" -> done(designs.redo());
            case "back" -> done(designs.backTo(number(rest)));
            case "differs" -> differs(rest);
            case "up" -> done(designs.takeUp(key(rest)));
            case "new" -> begin();
            case "name" -> done(designs.rename(key(rest), ask("What to call it: ")));
            case "copy" -> done(designs.copy(key(rest), ask("What to call the copy: ")));
            case "save" -> save(rest);
            case "open" -> open(rest);
            case "remove" -> done(designs.remove(key(rest)));
            case "bring" ->
                done(designs.bringBack(
                        card(designs.shelf().removed(), number(rest)).key()));
            default -> {
                say("“" + typed + "” means nothing here. What you can type:");
                help();
            }
        }
    }

    private void help() {
        console.say(Wrap.hangingEach(HELP, HELP_TEXT_AT, console.width()));
    }

    private void say(String text) {
        Wrap.lines(text, console.width()).forEach(console::say);
    }

    private void warn(String text) {
        Wrap.lines(text, console.width()).forEach(console::warn);
    }

    private String ask(String prompt) {
        return console.ask(prompt).orElse("").strip();
    }

    private void done(DesignsView.Shelf shelf) {
        say(shelf.words());
    }

    private void list(DesignsView.Shelf shelf) {
        say("  0  " + line(shelf.own()) + " (taken up)");
        for (int i = 0; i < shelf.others().size(); i++) {
            say("%3d  %s".formatted(i + 1, line(shelf.others().get(i))));
        }
        if (!shelf.removed().isEmpty()) {
            say("Removed:");
            for (int i = 0; i < shelf.removed().size(); i++) {
                say("%3d  %s".formatted(i + 1, line(shelf.removed().get(i))));
            }
        }
    }

    private static String line(DesignsView.Card card) {
        return card.name() + ": " + (card.trouble().isEmpty() ? card.words() : "cannot be taken up: " + card.trouble())
                + "; " + card.file();
    }

    private void history(DesignsView.History history, boolean all) {
        List<DesignsView.Moment> moments = all
                ? history.moments()
                : history.moments()
                        .subList(0, Math.min(MOMENTS, history.moments().size()));
        for (DesignsView.Moment moment : moments) {
            say("%3d  %s  %s%s"
                    .formatted(moment.number(), moment.at(), moment.how(), moment.now() ? " (as it is now)" : ""));
            moment.changes().forEach(change -> say("       " + words(change)));
        }
        if (!history.folded().isEmpty()) {
            say(history.folded());
        }
        say("Undo: " + (history.undo().isEmpty() ? "nothing" : history.undo()));
        say("Redo: " + (history.redo().isEmpty() ? "nothing" : history.redo()));
    }

    private void differs(String typed) {
        List<RebuildView.Difference> differences = designs.differences(key(typed));
        if (differences.isEmpty()) {
            say("They are the same.");
        }
        differences.forEach(one -> say("  " + words(one)));
    }

    private static String words(RebuildView.Difference change) {
        String label = change.label().isEmpty() || change.label().equals(change.part()) ? "" : ": " + change.label();
        return change.part() + label + ", " + change.before() + " → " + change.after();
    }

    private void begin() {
        designs.shelf().dwellings().forEach(dwelling -> say("  " + dwelling.code() + ": " + dwelling.label()));
        String dwelling = ask("Which of these: ");
        done(designs.start(dwelling, ask("What to call it, or Enter: ")));
    }

    private void save(String rest) {
        String[] words = rest.split("\\s+", 2);
        String path = words.length > 1 ? words[1].strip() : "";
        DesignsView.Saved saved = designs.saved(key(words[0]));
        try {
            Path file = Path.of(path.isEmpty() ? saved.name() : path);
            Path target = Files.isDirectory(file) ? file.resolve(saved.name()) : file;
            Files.writeString(target, saved.json(), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            say("Written to " + target.toAbsolutePath() + ".");
        } catch (FileAlreadyExistsException there) {
            warn(there.getFile() + " is there already; nothing is written over. Name another file.");
        } catch (IOException | InvalidPathException cannot) {
            warn("It cannot be written to “" + path + "” (" + cannot.getClass().getSimpleName() + ").");
        }
    }

    private void open(String path) {
        try {
            done(designs.open(TextFile.read(Path.of(path), LONGEST_BYTES), path));
        } catch (IOException | InvalidPathException cannot) {
            warn("“" + path + "” cannot be read: " + TextFile.why(cannot) + ".");
        }
    }

    /** The key of the design of a number in the list; 0, or none, is the one that is taken up. */
    private String key(String typed) {
        int number = typed.isEmpty() ? 0 : number(typed);
        return number == 0 ? "" : card(designs.shelf().others(), number).key();
    }

    private static DesignsView.Card card(List<DesignsView.Card> cards, int number) {
        if (number < 1 || number > cards.size()) {
            throw new UnknownNameException("There is no number " + number + " in the list.");
        }
        return cards.get(number - 1);
    }

    private static int number(String typed) {
        if (!typed.matches("\\d{1,8}")) {
            throw new UnknownNameException("A number of the list is wanted, not “" + typed + "”.");
        }
        return Integer.parseInt(typed);
    }
}

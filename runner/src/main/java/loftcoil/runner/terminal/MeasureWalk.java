package loftcoil.runner.terminal;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.progress.FolderException;
import loftcoil.runner.progress.TextFile;
import loftcoil.runner.show.SurveyApp;
import loftcoil.runner.show.SurveyView;

/** The survey of a house in the terminal: station by station, one question after the other. */
final class MeasureWalk {

    private static final int HELP_TEXT_AT = 11;

    /** A year of hours has some 1.6 million. */
    private static final int LONGEST_WEATHER_BYTES = 5_000_000;

    private static final String ALONG = "along";

    private static final String HELP =
            """
            Enter      leaves an answer as it stands
            7 ft 4     any fitting unit, or none for the one that is named
            %-9s  a guess: it may be moved to close a pipe, and counts as assumed
            =          it is so: what stands there is yours from now on
            -          leaves out what may be left out
            q          leaves the station; all is kept
            At the list of stations: its number; take makes the house your design; follow has it take up what you decided in lessons; new begins again; q leaves.""";

    private final SurveyApp survey;
    private final Console console;

    MeasureWalk(SurveyApp survey, Console console) {
        this.survey = survey;
        this.console = console;
    }

    /** Until the learner leaves. */
    void walk() {
        SurveyView.House house = survey.house();
        console.head("Your house: " + house.name());
        say("This is the survey of the design “" + house.design()
                + "”, which is taken up. Each design has one of its own.");
        help();
        while (true) {
            list();
            Optional<String> typed = console.ask("Station: ").map(String::strip);
            if (typed.isEmpty() || typed.get().equals("q")) {
                return;
            }
            caught(() -> carryOut(typed.get()));
        }
    }

    private void carryOut(String typed) {
        List<SurveyView.Station> stations = survey.house().stations();
        switch (typed) {
            case "", "?" -> help();
            case "follow" -> survey.follow();
            case "take" -> take();
            case "new" -> {
                survey.house().dwellings().forEach(dwelling -> say("  " + dwelling.code() + ": " + dwelling.label()));
                survey.afresh(ask("Which of these; Enter for your design as it stands", ""));
                say(
                        "The survey begins again. What was measured until now is kept in your folder, as survey-before- and the date.");
            }
            default -> {
                for (int i = 0; i < stations.size(); i++) {
                    if (typed.equals(Integer.toString(i + 1))) {
                        station(stations.get(i));
                        return;
                    }
                }
                say("“" + typed + "” means nothing here.");
                help();
            }
        }
    }

    private void take() {
        List<String> open = survey.house().standing().open();
        if (open.isEmpty()) {
            say(survey.take().words());
        } else {
            warn("Not taken: it is a sketch still.");
            open.forEach(line -> warn("  - " + line));
        }
    }

    private void help() {
        console.say(Wrap.hangingEach(HELP.formatted(such().guess()), HELP_TEXT_AT, console.width()));
    }

    private SurveyView.Such such() {
        return survey.house().such();
    }

    private void list() {
        SurveyView.House house = survey.house();
        for (int i = 0; i < house.stations().size(); i++) {
            SurveyView.Station station = house.stations().get(i);
            say("%3d  %s: %s".formatted(i + 1, station.label(), station.standing()));
        }
        say(house.standing().words());
        if (!house.standing().plan().isEmpty()) {
            say(house.standing().plan());
        }
        say(house.standing().next());
        if (!house.standing().ahead().isEmpty()) {
            say(house.standing().ahead());
        }
        house.standing().open().forEach(this::warn);
        if (!house.standing().otherwise().isEmpty()) {
            say("Yours in the design, and otherwise here; take puts the second in the place of the first:");
            house.standing().otherwise().forEach(line -> say("  - " + line));
        }
        if (house.standing().follows()) {
            say("Type follow to have what the design says wherever you have told nothing here.");
        }
        house.standing().doubts().forEach(doubt -> say("Is this so? " + doubt));
    }

    private void station(SurveyView.Station station) {
        console.head(station.label());
        say(station.help());
        counts(station.counts());
        switch (station.code()) {
            case "hot-run", "cold-run" -> run(station.run());
            case "taps" -> taps(station);
            case "climate" -> {
                String table = ask("Is there a table to type from? yes, no, or the path of a weather file", "no");
                switch (table) {
                    case "yes" -> questions(station);
                    case "no" -> estimate();
                    default -> caught(() -> climateFile(table));
                }
            }
            case "people" -> {
                habits();
                questions(station);
            }
            case "panes" -> {
                if (!ask("Is there glass before the tank? yes, no", "yes").equals("no")) {
                    questions(station);
                } else {
                    survey.noPanes();
                }
            }
            default -> questions(station);
        }
    }

    /** What each fitting counts, its rows in one sentence between those before and behind them. */
    private void counts(List<String> lines) {
        List<String> rows = lines.stream().filter(line -> !line.endsWith(".")).toList();
        boolean listed = false;
        for (String line : lines) {
            if (line.endsWith(".")) {
                say((listed || rows.isEmpty() ? "" : "What each fitting counts. ") + line);
            } else if (!listed) {
                say(String.join("; ", rows) + ".");
                listed = true;
            }
        }
    }

    /** Questions of one part of a design are taken together, since of some parts nothing may be assumed. */
    private void questions(SurveyView.Station station) {
        Map<String, String> measured = new LinkedHashMap<>();
        Map<String, String> guessed = new LinkedHashMap<>();
        for (SurveyView.Question question : station.questions()) {
            Optional<String> typed = answer(question);
            if (typed.isEmpty()) {
                break;
            }
            String text = typed.get();
            if (text.startsWith("~")) {
                guessed.put(question.path(), text.substring(1).strip());
            } else if (text.equals("=")) {
                measured.put(question.path(), question.now());
            } else if (text.equals("-") && question.optional()) {
                measured.put(question.path(), "not said");
            } else if (!text.isEmpty()) {
                measured.put(question.path(), text);
            }
        }
        told(measured, false);
        told(guessed, true);
    }

    private void told(Map<String, String> answers, boolean guess) {
        Map<String, String> left = new LinkedHashMap<>(answers);
        // What was refused holds nobody else back; what lacks its other half is told alone, so that only its own part
        // waits.
        while (!left.isEmpty()) {
            Set<String> refused = refused(left, guess);
            if (refused.isEmpty()) {
                return;
            }
            if (!left.keySet().removeAll(refused)) {
                if (left.size() > 1) {
                    left.forEach((path, text) -> refused(Map.of(path, text), guess));
                }
                return;
            }
        }
    }

    /** Tells answers; the paths that were refused, of which nothing is kept then. */
    private Set<String> refused(Map<String, String> answers, boolean guess) {
        return refusedOf(() -> survey.tell(answers, guess));
    }

    /** Does something, and says what was refused; the paths of that, none where all is kept. */
    private Set<String> refusedOf(Runnable work) {
        Set<String> paths = new HashSet<>();
        caught(() -> {
            try {
                work.run();
            } catch (RefusedException refused) {
                refused.faults().forEach(fault -> paths.add(fault.path()));
                throw refused;
            }
        });
        return paths;
    }

    private Optional<String> answer(SurveyView.Question question) {
        say("");
        say(question.label() + ". " + question.help());
        String choice = question.options().isEmpty() ? question.allowed() : String.join(", ", question.options());
        say("(" + choice + ")");
        if (!question.otherwise().isEmpty()) {
            say(question.otherwise());
        }
        // Feet and inches, and centimetres, have their units within.
        boolean bare = question.now().matches(".*\\d");
        String unit = bare && !question.unit().isEmpty() ? " " + question.unit() : "";
        return console.ask("[" + question.now() + unit + ", " + question.origin() + "] ")
                .map(String::strip)
                .filter(typed -> !typed.equals("q"));
    }

    private void run(SurveyView.Run run) {
        say(run.words());
        run.pieces()
                .forEach(piece -> say("  " + piece.name() + ": " + piece.way() + " " + piece.length() + ", "
                        + piece.tube() + ", " + piece.measured()));
        if (!ask("Walk it now? yes, no", "yes").equals("yes")) {
            return;
        }
        List<Map<String, String>> pieces = new ArrayList<>();
        for (Map<String, String> piece = piece(1); !piece.isEmpty(); piece = piece(pieces.size() + 1)) {
            pieces.add(piece);
            // Kept piece by piece; one that is refused is asked again, and no other with it.
            if (!refusedOf(() -> survey.walk(run.code(), pieces)).isEmpty()) {
                pieces.remove(pieces.size() - 1);
            }
        }
        if (pieces.isEmpty()) {
            return;
        }
        SurveyView.Run walked = survey.house().stations().stream()
                .map(SurveyView.Station::run)
                .filter(other -> other.code().equals(run.code()))
                .findFirst()
                .orElse(run);
        if (walked.closes()) {
            say(walked.words());
            walked.moved().forEach(moved -> say("  - " + moved));
        } else {
            warn(walked.words());
            say("What may be wrong:");
            walked.mends().forEach(mend -> say("  - " + mend));
        }
    }

    /** One piece; nothing where the run is at its end. */
    private Map<String, String> piece(int number) {
        Map<String, String> piece = new HashMap<>();
        String way = ask("Piece " + number + " leads up, down, along; Enter where the run has ended", "");
        if (way.isEmpty()) {
            return piece;
        }
        piece.put("way", way);
        piece.put("name", ask("What you call it", ""));
        String length = ask("Length from fitting to fitting, ~ before a guess", "");
        piece.put("measured", length.startsWith("~") ? "guessed" : "measured");
        piece.put("length", length.replaceFirst("^~\\s*", ""));
        if (way.equals(ALONG)) {
            piece.put("slope", ask("How much higher its far end is, such as " + such().slopes(), "0"));
            piece.put(
                    "heading",
                    ask("Which way it turns: left, right, straight, or a compass direction such as 90 or SE", ""));
        }
        piece.put("elbows90", ask("Elbows of 90° where it begins", "0"));
        piece.put("elbows45", ask("Elbows of 45° where it begins", "0"));
        piece.put("tube", ask("Tube, such as " + such().tube() + "; Enter for the same as before", ""));
        piece.put("lagging", ask("Lagging, or none; Enter for the same as before", ""));
        if (!piece.getOrDefault("lagging", "").isEmpty()
                && !piece.getOrDefault("lagging", "").equals("none")) {
            piece.put("laggingThickness", ask("How thick", ""));
        }
        piece.put("around", ask("Where it runs: room, loft, flue, outdoors, or a temperature", ""));
        return piece;
    }

    private void taps(SurveyView.Station station) {
        if (!station.trunk().length().isEmpty()) {
            say("  shared pipe: " + station.trunk().length() + " of "
                    + station.trunk().tube());
        }
        station.taps()
                .forEach(tap -> say("  " + tap.name() + ": mouth at " + tap.level() + ", " + tap.length() + " of "
                        + tap.tube() + " from the " + tap.from() + ", mixing valve: " + tap.mixer()));
        if (!ask("Tell the taps anew? yes, no", "no").equals("yes")) {
            return;
        }
        Map<String, String> trunk = trunk();
        List<Map<String, String>> taps = new ArrayList<>();
        while (true) {
            String name = ask("Name of tap " + (taps.size() + 1) + "; Enter where there are no more", "");
            if (name.isEmpty()) {
                return;
            }
            taps.add(tap(name, !trunk.getOrDefault("length", "").isEmpty()));
            Map<String, String> shared = trunk;
            Set<String> refused = refusedOf(() -> survey.taps(shared, taps));
            if (refused.stream().anyMatch(path -> path.startsWith("trunk"))) {
                trunk = trunk();
            }
            if (!refused.isEmpty()) {
                taps.remove(taps.size() - 1);
            }
        }
    }

    /** The pipe that several taps share, as typed; no length where there is none. */
    private Map<String, String> trunk() {
        Map<String, String> trunk = new HashMap<>();
        trunk.put(
                "length", ask("Length of a pipe from the tank that several taps share; Enter where there is none", ""));
        if (!trunk.getOrDefault("length", "").isEmpty()) {
            trunk.put("tube", ask("Tube of that pipe, such as " + such().wideTube(), ""));
            trunk.put("elbows90", ask("Elbows of 90° on it", "0"));
        }
        return trunk;
    }

    private Map<String, String> tap(String name, boolean shared) {
        Map<String, String> tap = new HashMap<>();
        tap.put("name", name);
        tap.put(
                "from",
                shared ? ask("From the shared pipe or from the tank? shared pipe, tank", "shared pipe") : "tank");
        tap.put("level", ask("Its mouth above the floor", ""));
        tap.put("tube", ask("Tube that leads to it, such as " + such().tube(), ""));
        tap.put("length", ask("Length of that pipe", ""));
        tap.put("elbows90", ask("Elbows of 90° on the way", "0"));
        tap.put("mixer", ask("Hottest water past its mixing valve, or none", "none"));
        return tap;
    }

    private void estimate() {
        if (!ask("Estimate sun and air from what you remember? yes, no", "yes").equals("yes")) {
            return;
        }
        Map<String, String> typed = new HashMap<>();
        for (String season : List.of("winter", "spring", "summer", "autumn")) {
            typed.put(season, ask("Sky in " + season + ": clear, mixed, cloudy, dull", "mixed"));
        }
        typed.put("warmest", ask("Mean of the warmest month, day and night, such as " + such().warm(), ""));
        typed.put("coldest", ask("Mean of the coldest month, day and night", ""));
        caught(() -> {
            survey.climateEstimate(typed);
            say("Estimated; sun may be a quarter off either way. It counts as assumed.");
        });
    }

    private void climateFile(String path) {
        try {
            survey.climateFile(TextFile.read(Path.of(path), LONGEST_WEATHER_BYTES));
            say("Sun and air are those of " + path + " now.");
        } catch (IOException | InvalidPathException cannot) {
            warn("“" + path + "” cannot be read: " + TextFile.why(cannot) + ".");
        }
    }

    private void habits() {
        List<SurveyView.Habit> asked = survey.house().habits();
        if (asked.isEmpty()
                || !ask("Tell what is drawn by your habits? yes, no", "yes").equals("yes")) {
            return;
        }
        Map<String, String> habits = new HashMap<>();
        for (SurveyView.Habit habit : asked) {
            String named = habit.taps().isEmpty() ? "" : " (" + String.join(", ", habit.taps()) + ")";
            habits.put(habit.name(), ask(habit.label() + named, habit.now()));
        }
        caught(() -> survey.habits(habits));
    }

    private String ask(String prompt, String otherwise) {
        String now = otherwise.isEmpty() ? ": " : " [" + otherwise + "]: ";
        return console.ask(prompt + now)
                .map(String::strip)
                .filter(typed -> !typed.isEmpty())
                .orElse(otherwise);
    }

    private void caught(Runnable work) {
        try {
            work.run();
        } catch (RefusedException refused) {
            survey.told(refused).forEach(this::warn);
        } catch (FolderException unsaved) {
            warn("NOT SAVED: " + unsaved.getMessage());
        }
    }

    private void say(String text) {
        Wrap.lines(text, console.width()).forEach(console::say);
    }

    private void warn(String text) {
        Wrap.lines(text, console.width()).forEach(console::warn);
    }
}

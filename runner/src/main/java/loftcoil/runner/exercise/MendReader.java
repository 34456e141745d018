package loftcoil.runner.exercise;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import loftcoil.engine.design.Change;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.json.JsonFields;

/** Reads a faulty system to mend. */
final class MendReader {

    private static final String FAULTY = "{\"patch\": {…}, \"changes\": {…}}, at least one of the two";
    private static final String LEVERS = "{\"change\": name, \"from\": …, \"to\": …, \"by\": …}, or with options";
    private static final String VALUES = "the value of each change, as text";
    private static final int READINGS = 2;
    private static final int FEWEST_CAUSES = 3;
    private static final Allowed DECIMALS = new Allowed(0, 6, "");

    private final JsonFields fields;

    private MendReader(JsonFields fields) {
        this.fields = fields;
    }

    /** A faulty system is the same for all and is always judged: nothing varies in it. */
    static Mend read(String path, JsonFields fields) {
        return new MendReader(fields).mend(path);
    }

    private Mend mend(String path) {
        JsonFields solution = fields.object("solution", "{\"text\": …, \"changes\": {…}}");
        About about = new About(
                path,
                fields.words("text", "what the owner tells, in CommonMark"),
                false,
                new TreeMap<>(),
                fields.words(
                        "source", "where the cure is from; \"common practice\" or \"from memory\" where that is so"),
                new About.Solution(solution.words("text", "cause, how to tell, and cure, in CommonMark"), ""));
        SortedMap<String, String> mended =
                solution.has("changes") ? values(solution.object("changes", VALUES)) : new TreeMap<>();
        solution.done();
        FaultySystem faulty = faulty();
        List<Lever> levers = fields.each("levers", MendReader::lever);
        List<Mend.Wanted> wanted = fields.each("wanted", MendReader::wanted);
        if (levers.size() < 2 || wanted.isEmpty()) {
            fields.fault(
                    "levers",
                    levers.size() + " levers, " + wanted.size() + " wanted",
                    "at least two levers, one of them no cure, and at least one thing wanted");
        }
        Mend mend = new Mend(
                about,
                faulty,
                levers,
                readings(),
                causes(),
                wanted,
                fields.each("mistakes", MendReader::mistake),
                mended);
        if (fields.faults().isEmpty()) {
            fits(mend);
        }
        return mend;
    }

    private FaultySystem faulty() {
        JsonFields inner = fields.object("faulty", FAULTY);
        Map<String, String> changes = inner.has("changes") ? ordered(inner.object("changes", VALUES)) : Map.of();
        String patch = inner.ask("patch")
                .map(node -> inner.section("patch", node).json())
                .orElse("{}");
        if (changes.isEmpty() && patch.equals("{}")) {
            inner.fault("patch", "no fault at all", FAULTY);
        }
        inner.done();
        return new FaultySystem(patch, changes);
    }

    private static Map<String, String> ordered(JsonFields inner) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String name : inner.names()) {
            values.put(name, inner.words(name, VALUES));
        }
        return values;
    }

    private static SortedMap<String, String> values(JsonFields inner) {
        return new TreeMap<>(ordered(inner));
    }

    private static Lever lever(JsonFields lever) {
        String name = lever.words("change", LEVERS);
        Optional<Change> known = known(lever, name);
        List<String> options = lever.texts("options", "some of the change's own options");
        boolean number = known.flatMap(Change::range).isPresent();
        Optional<About.Span> span = number ? PartsReader.span(lever) : Optional.empty();
        lever.done();
        List<String> all = known.map(Change::options).orElse(List.of());
        options.stream()
                .filter(option -> !all.contains(option))
                .forEach(option -> lever.fault("options", "“" + option + "”", "some of " + all));
        return new Lever(name, span, options.isEmpty() ? all : options);
    }

    private static Optional<Change> known(JsonFields lever, String name) {
        try {
            return Optional.of(Changes.describe(name));
        } catch (RefusedException refused) {
            refused.faults().forEach(fault -> lever.fault("change", fault.given(), fault.allowed()));
            return Optional.empty();
        }
    }

    private static Mend.Wanted wanted(JsonFields wanted) {
        Mend.Wanted read = new Mend.Wanted(
                wanted.words("java", "an expression on design that is true or false"),
                wanted.words("say", "what the system must do, in words"));
        wanted.done();
        return read;
    }

    private List<Mend.Reading> readings() {
        List<Mend.Reading> read = new ArrayList<>();
        fields.each("readings", MendReader::reading)
                .forEach(each -> read.add(new Mend.Reading(
                        each.label(), each.java(), each.unit(), each.decimals(), each.tells(), read.size() + 1)));
        return read;
    }

    private List<Choice.Option> causes() {
        List<Choice.Option> read = new ArrayList<>();
        fields.each("causes", cause -> {
                    Choice.Option option = new Choice.Option(
                            cause.words("text", "what may be the cause, with its reason"),
                            cause.has("right") && cause.flag("right"),
                            cause.words("say", "what to say to who named it"));
                    cause.done();
                    return option;
                })
                .forEach(each -> read.add(new Choice.Option(each.text(), each.right(), each.say(), read.size() + 1)));
        return read;
    }

    private static Mend.Reading reading(JsonFields reading) {
        Mend.Reading read = new Mend.Reading(
                reading.words("label", "what is read"),
                reading.words("java", "an expression on design that gives a number"),
                PartsReader.unit(reading),
                reading.whole("decimals", DECIMALS),
                reading.has("tells") && reading.flag("tells"),
                0);
        reading.done();
        return read;
    }

    private static Mend.Misrepair mistake(JsonFields mistake) {
        Mend.Misrepair read = new Mend.Misrepair(
                values(mistake.object("changes", VALUES)),
                mistake.words("because", "what the wrong idea is, in words"),
                mistake.words("hint", "what to say to the learner"));
        mistake.done();
        return read;
    }

    /** What can be said only once all parts are there. */
    private void fits(Mend mend) {
        Set<String> names = mend.levers().stream().map(Lever::change).collect(Collectors.toSet());
        if (names.size() < mend.levers().size()) {
            fields.fault("levers", "a change twice", "each change once");
        }
        if (!mend.mended().isEmpty() || !mend.diagnosed()) {
            within("solution.changes", mend.mended(), names);
        }
        diagnosis(mend);
        for (int i = 0; i < mend.mistakes().size(); i++) {
            within("mistakes[" + i + "].changes", mend.mistakes().get(i).changes(), names);
        }
        if (mend.mended().keySet().containsAll(names)) {
            fields.fault("levers", "every lever is a cure", "at least one that is none");
        }
        try {
            asFound(mend, mend.faulty().design());
        } catch (RefusedException refused) {
            refused.faults().stream()
                    .map(Fault::line)
                    .forEach(line -> fields.fault("faulty", line, "a system that can be computed"));
        }
    }

    /** Two readings tell the cause, and others are there to be taken in vain; so are other causes. */
    private void diagnosis(Mend mend) {
        if (!mend.diagnosed()) {
            return;
        }
        long telling = mend.readings().stream().filter(Mend.Reading::tells).count();
        if (telling != READINGS || mend.readings().size() <= READINGS) {
            fields.fault(
                    "readings",
                    mend.readings().size() + " readings, " + telling + " of them tell",
                    "more than two, just two of which tell");
        }
        long right = mend.causes().stream().filter(Choice.Option::right).count();
        if (right != 1 || mend.causes().size() < FEWEST_CAUSES) {
            fields.fault(
                    "causes",
                    mend.causes().size() + " causes, " + right + " of them right",
                    "at least " + FEWEST_CAUSES + ", just one of them right");
        }
    }

    private void within(String field, Map<String, String> values, Set<String> names) {
        Set<String> others = new HashSet<>(values.keySet());
        others.removeAll(names);
        if (!others.isEmpty() || values.isEmpty()) {
            fields.fault(field, others.isEmpty() ? "nothing" : others.toString(), "changes of the levers");
        }
    }

    /** A slider must be able to stand where the system was found. */
    private void asFound(Mend mend, Design found) {
        List<Lever> levers = mend.levers();
        for (int i = 0; i < levers.size(); i++) {
            String now = Changes.current(found, levers.get(i).change());
            boolean there = levers.get(i)
                    .span()
                    .map(span -> stops(span, now))
                    .orElse(levers.get(i).options().contains(now));
            if (!there) {
                fields.fault("levers[" + i + "]", "as found it is " + now, "stops or options with that among them");
            }
        }
        moves("solution.changes", mend.mended(), found);
        for (int i = 0; i < mend.mistakes().size(); i++) {
            moves("mistakes[" + i + "].changes", mend.mistakes().get(i).changes(), found);
        }
    }

    private void moves(String field, Map<String, String> values, Design found) {
        values.forEach((change, value) -> {
            if (value.equals(Changes.current(found, change))) {
                fields.fault(field, change + " as found", "another value than it was found with");
            }
        });
    }

    private static boolean stops(About.Span span, String now) {
        double value = Double.parseDouble(now);
        double steps = (value - span.from()) / span.by();
        return value >= span.from() - 1e-9 && value <= span.to() + 1e-9 && Math.abs(steps - Math.rint(steps)) < 1e-6;
    }
}

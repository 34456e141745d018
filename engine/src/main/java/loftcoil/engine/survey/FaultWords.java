package loftcoil.engine.survey;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Coded;
import loftcoil.engine.design.DesignField;
import loftcoil.engine.design.DesignFields;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;

/** Faults by what their fields are called and where in a house they stand, for who has no file of the design before them. */
public final class FaultWords {

    /** What is told in a survey and is no field of a design. */
    private static final Map<String, String> TOLD = Map.ofEntries(
            Map.entry("way", "Which way it leads"),
            Map.entry("slopeMmPerM", "How much higher its far end is"),
            Map.entry("headingDeg", "Which way it turns"),
            Map.entry("heading", "Which way it turns"),
            Map.entry("elbows90", "Elbows of 90°"),
            Map.entry("elbows45", "Elbows of 45°"),
            Map.entry("laggingMaterial", "Lagging"),
            Map.entry("laggingMm", "How thick the lagging is"),
            Map.entry("winter", "Sky in winter"),
            Map.entry("spring", "Sky in spring"),
            Map.entry("summer", "Sky in summer"),
            Map.entry("autumn", "Sky in autumn"),
            Map.entry("warmest", "Mean of the warmest month"),
            Map.entry("coldest", "Mean of the coldest month"));

    private FaultWords() {}

    /** A fault on one line, its place first, in words; by its path where nothing is known of that. */
    public static String line(Fault fault) {
        return fault.line(place(fault.path()));
    }

    /** Such a line for each fault of a refusal. */
    public static List<String> lines(RefusedException refused) {
        return refused.faults().stream().map(FaultWords::line).toList();
    }

    /**
     * Where something stands, in words, such as {@code The hot pipe, from coil to tank, line 2, Length of the leg}.
     *
     * @param path of a field, or the name of a change or of what is asked in a survey
     * @return the path itself where nothing is known of it
     */
    public static String place(String path) {
        String item = path.replaceFirst("^\\w+\\[(\\d+)].*", "$1");
        boolean inList = !item.equals(path);
        String station = Station.of(path).map(Station::label).orElse("")
                + (inList ? ", line " + (Integer.parseInt(item) + 1) : "");
        List<String> named = Stream.of(station, label(path))
                .filter(any -> !any.isEmpty())
                .distinct()
                .toList();
        return named.isEmpty() ? Fault.placed(path) : String.join(", ", named);
    }

    private static String label(String path) {
        Optional<DesignField> field = DesignFields.at(path);
        if (field.isPresent()) {
            return field.get().label();
        }
        if (Changes.names().contains(path)) {
            return Changes.describe(path).label();
        }
        return Coded.find(HabitAsked.class, path)
                .map(HabitAsked::label)
                .orElse(TOLD.getOrDefault(path.replaceFirst(".*\\.", ""), ""));
    }
}

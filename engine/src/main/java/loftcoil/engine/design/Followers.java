package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Numeral;

/** Changes of one field after which others have to follow, so that the design still fits together. */
final class Followers {

    private static final Pattern ITEM = Pattern.compile("(coldLegs|hotLegs|taps)\\[(\\d{1,6})]\\.(riseM|name|tube)");

    private Followers() {}

    /** The design with the text in the place of a path, and what has to follow; checked. */
    static Design set(Design design, String path, String text) {
        Design set = DesignTable.unchecked(design, path, text);
        if (path.equals("coil.outletM")) {
            return Stretch.toCoil(design, set.coil());
        }
        Matcher item = ITEM.matcher(path);
        return (item.matches() ? followed(design, set, item) : set).checked();
    }

    private static Design followed(Design before, Design set, Matcher item) {
        int index = Integer.parseInt(item.group(2));
        return switch (item.group(1) + "." + item.group(3)) {
            case "coldLegs.riseM" ->
                DesignTable.with(
                        set, DesignTable.COLD_LEGS, risen(before.coldLegs(), set.coldLegs(), index, item.group()));
            case "hotLegs.riseM" ->
                DesignTable.with(
                        set, DesignTable.HOT_LEGS, risen(before.hotLegs(), set.hotLegs(), index, item.group()));
            case "taps.name" ->
                renamed(set, before.taps().get(index), set.taps().get(index));
            case "taps.tube" -> onTube(set, before.taps().get(index), index);
            default -> set;
        };
    }

    /** Of the other legs of a side, the one of the largest rise makes up for the one that was changed. */
    private static List<Leg> risen(List<Leg> before, List<Leg> set, int index, String path) {
        Leg old = before.get(index);
        double riseM = set.get(index).riseM();
        if (before.size() == 1) {
            String why = "the only leg of its side has to lead from end to end";
            throw new RefusedException(
                    List.of(new Fault(path, Numeral.typed(riseM), Numeral.typed(old.riseM()) + " m", why)));
        }
        List<Leg> others = new ArrayList<>(before);
        others.remove(index);
        List<Leg> changed = new ArrayList<>(Stretch.longestRise(others, old.riseM() - riseM));
        changed.add(index, old.withRiseM(riseM));
        return changed;
    }

    /** Draws go with the tap they are from. */
    private static Design renamed(Design set, Tap before, Tap after) {
        List<Use> use = set.use().stream()
                .map(draw -> draw.tap().equals(before.name())
                        ? TapFields.USE_TABLE.with(draw, TapFields.TAP, after.name())
                        : draw)
                .toList();
        return DesignTable.with(set, DesignTable.USE, use);
    }

    /** The tap keeps its own narrow ways. */
    private static Design onTube(Design set, Tap before, int index) {
        List<Tap> taps = new ArrayList<>(set.taps());
        taps.set(index, before.onTube(taps.get(index).tube()));
        return DesignTable.with(set, DesignTable.TAPS, taps);
    }
}

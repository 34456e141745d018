package loftcoil.runner.handout;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import loftcoil.engine.design.Change;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.words.Units;
import loftcoil.runner.exercise.Choice;
import loftcoil.runner.exercise.Lever;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.show.Html;
import loftcoil.runner.show.Shown;

/** A faulty system on paper: its drawing, what may be changed, what it must do; and for the teacher how it is mended. */
final class MendPart {

    private MendPart() {}

    /** The system as its owner has it. */
    static String system(Mend mend, Units units) {
        if (mend.diagnosed()) {
            return Html.element("p", "Which two readings would tell?")
                    + ticks(mend.readings().stream()
                            .map(reading -> units.said(reading.label()))
                            .toList())
                    + Html.element("p", "And what is the cause?")
                    + ticks(mend.causes().stream().map(Choice.Option::text).toList());
        }
        Design faulty = mend.faulty().design();
        List<List<String>> levers = mend.levers().stream()
                .map(lever -> List.of(
                        Html.text(lever.label()),
                        Html.text(now(faulty, lever, units)),
                        Html.text(units.said(lever.allowed())),
                        ""))
                .toList();
        String wanted = mend.wanted().stream()
                .map(want -> Html.element("li", Html.TICK + " " + Html.text(want.say())))
                .collect(Collectors.joining());
        return LoopPicture.of(faulty, "The system as it is.", units)
                + Html.table("levers", List.of("what may be changed", "now", "allowed", "changed to"), levers)
                + Html.element("p", "It is mended when:")
                + Html.element("ul", "steps", wanted);
    }

    private static String ticks(List<String> texts) {
        return Html.element(
                "ul",
                "steps",
                texts.stream()
                        .map(text -> Html.element("li", Html.TICK + " " + Html.text(text)))
                        .collect(Collectors.joining()));
    }

    /** One way to mend it, and before that what tells the cause. */
    static String mended(Mend mend, Units units) {
        String tells = !mend.diagnosed()
                ? ""
                : Html.element(
                        "p",
                        Html.element("strong", "Cause:").strip() + " "
                                + Html.text(mend.causes().stream()
                                        .filter(Choice.Option::right)
                                        .map(Choice.Option::text)
                                        .collect(Collectors.joining()))
                                + ". Told by: "
                                + Html.text(mend.readings().stream()
                                        .filter(Mend.Reading::tells)
                                        .map(reading -> units.said(reading.label()))
                                        .collect(Collectors.joining("; "))));
        if (mend.mended().isEmpty()) {
            return tells;
        }
        return tells
                + Html.element(
                        "p",
                        Html.element("strong", "Mended by:").strip() + " " + Html.text(words(mend.mended(), units)));
    }

    private static String now(Design design, Lever lever, Units units) {
        return new Shown(units).value(lever.change(), Changes.current(design, lever.change()), lever.unit());
    }

    /** Changes in words. */
    static String words(Map<String, String> changes, Units units) {
        return changes.entrySet().stream()
                .map(change -> {
                    Change described = Changes.describe(change.getKey());
                    return described.label() + " to "
                            + new Shown(units).value(change.getKey(), change.getValue(), described.unit());
                })
                .collect(Collectors.joining("; "));
    }
}

package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import loftcoil.runner.course.Course;
import loftcoil.runner.course.CourseReader;
import loftcoil.runner.exercise.Decision;
import loftcoil.runner.lesson.Lesson;
import loftcoil.runner.lesson.Step;
import loftcoil.runner.progress.AnswerState;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.session.SharedSession;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever the lesson: a value that can hurt somebody is told as such when it is decided. */
class DangerousDecisionsTest {

    private static final Course COURSE = CourseReader.builtIn();

    @TempDir
    private Path folder;

    private static final Map<String, String> BAD = Map.ofEntries(
            Map.entry("site.altitudeM", "4500"),
            Map.entry("tank.baseM", "0"),
            Map.entry("legs.tube", "EN1057 15x1.0"),
            Map.entry("coil.heatKW", "12"),
            Map.entry("tank.volumeL", "20"),
            Map.entry("tank.drawPortM", "0.1"),
            Map.entry("tank.returnPortM", "0.1"),
            Map.entry("loop.slopeMmPerM", "2"),
            Map.entry("coil.lengthM", "20"),
            Map.entry("coil.heat", "worked out from the fire"),
            Map.entry("coil.tube", "EN1057 22x1.0"),
            Map.entry("coil.turns", "with elbows"),
            Map.entry("hotLegs.laggingMm", "0"),
            Map.entry("hotLegs.aroundC", "120"),
            Map.entry("loop.laggingMm", "0"),
            Map.entry("tank.laggingMm", "0"),
            Map.entry("window.shutter", "none"),
            Map.entry("tank.shape", "lying cylinder"),
            Map.entry("tank.coat", "hand-wrapped"),
            Map.entry("window.reflectorShare", "0.9"),
            Map.entry("window.unit", "a soft coat"),
            Map.entry("window.toughened", "0"),
            Map.entry("window.panes", "12"),
            Map.entry("window.tiltDeg", "20"),
            Map.entry("fire.litFromH", "3"),
            Map.entry("fire.litForH", "24"),
            Map.entry("taps.kind", "mains tap class B"),
            Map.entry("taps.tube", "EN1057 12x1.0"),
            Map.entry("taps.mixer", "none"),
            Map.entry("vent.aboveWaterlineM", "0.02"),
            Map.entry("vent.tube", "EN1057 22x0.9"),
            Map.entry("coldFeed.airGapMm", "0"),
            Map.entry("coldFeed.kind", "float valve"),
            Map.entry("coldFeed.supply", "water that somebody drinks"),
            Map.entry("site.hardnessMgPerL", "500"),
            Map.entry("safety.coldFeed.overflowBoreMm", "6"),
            Map.entry("absence.drained", "left full"),
            Map.entry("loop.valves", "1"),
            Map.entry("fire.moisturePct", "50"));

    /** Values that hurt nobody by themselves in this house: a poor choice, which the figures show, or no worse than any other. */
    private static final Set<String> HARMLESS = Set.of(
            "site.altitudeM",
            "vent.tube",
            "tank.returnPortM",
            "hotLegs.aroundC",
            "hotLegs.laggingMm",
            "loop.laggingMm",
            "tank.laggingMm",
            "tank.coat",
            "window.reflectorShare",
            "window.unit",
            "window.shutter",
            "window.tiltDeg",
            "fire.litFromH",
            "taps.kind",
            "taps.tube",
            "coldFeed.kind");

    /** What stands in the house already when it is decided: two things are harmless by themselves and not together. */
    private static final Map<String, Map<String, String>> BESIDE = Map.of(
            "coldFeed.airGapMm",
            Map.of("coldFeed.supply", "water that somebody drinks"),
            "coldFeed.supply",
            Map.of("coldFeed.airGapMm", "0"));

    private CourseApp open(String dwelling) {
        CourseApp bench = CourseApp.open(COURSE, ProgressFile.open(folder.resolve(dwelling)), SharedSession::lent, 7);
        bench.designs().start(dwelling, "");
        return bench;
    }

    private static void eachDecision(BiConsumer<Lesson, Step> what) {
        for (Lesson lesson : COURSE.lessons()) {
            for (Step step : lesson.steps()) {
                if (step instanceof Step.Question question
                        && COURSE.exercise(question.exercise()) instanceof Decision) {
                    what.accept(lesson, step);
                }
            }
        }
    }

    private static String change(Step step) {
        return ((Decision) COURSE.exercise(((Step.Question) step).exercise())).change();
    }

    /** In a house that has no danger. */
    @Test
    void eachIsRefusedOrToldAsWhatItIs() {
        List<String> calm = new ArrayList<>();
        try (CourseApp bench = open("upland-barn")) {
            String barn = bench.rebuild().own().json();
            eachDecision((lesson, step) -> {
                String change = change(step);
                bench.rebuild().takeOver(barn, BESIDE.getOrDefault(change, Map.of()));
                View.Reply reply = bench.answer(lesson.id(), step.id(), BAD.get(change));
                boolean told = reply.state() == AnswerState.UNREAD
                        ? !reply.hintMarkdown().isEmpty()
                        : !bench.effect().danger().isEmpty();
                if (told == HARMLESS.contains(change)) {
                    calm.add(lesson.id() + " " + change + " = " + BAD.get(change) + (told ? " is told" : " is calm"));
                }
                if (HARMLESS.contains(change)) {
                    assertFalse(bench.safety().level().equals("danger"), change + " is not harmless");
                }
            });
        }
        assertEquals(List.of(), calm);
    }

    /** The bothy has dangers from the start: no decision reads as calm over them, even one that changes nothing. */
    @Test
    @Tag("thorough")
    void noDecisionReadsAsCalmOverADangerThatStays() {
        try (CourseApp bench = open("orchard-bothy")) {
            String bothy = bench.rebuild().own().json();
            eachDecision((lesson, step) -> {
                bench.rebuild().takeOver(bothy, Map.of());
                View.Reply reply = bench.answer(lesson.id(), step.id(), BAD.get(change(step)));
                if (reply.state() != AnswerState.UNREAD) {
                    assertTrue(reply.words().contains("danger"), change(step) + ": " + reply.words());
                    assertTrue(bench.effect().danger().contains("danger"), change(step));
                }
            });
        }
    }
}

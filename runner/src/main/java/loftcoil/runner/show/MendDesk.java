package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.Numeral;
import loftcoil.engine.words.Units;
import loftcoil.runner.check.Diagnosis;
import loftcoil.runner.check.MendCheck;
import loftcoil.runner.check.MendTrial;
import loftcoil.runner.course.Course;
import loftcoil.runner.exercise.About;
import loftcoil.runner.exercise.Exercise;
import loftcoil.runner.exercise.Lever;
import loftcoil.runner.exercise.Mend;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.exercise.ReckoningException;
import loftcoil.runner.exercise.Variation;
import loftcoil.runner.lesson.Drag;
import loftcoil.runner.lesson.Step;

/** Shows a faulty system with its levers as they stand. Nothing of it is kept: only an answer is. */
final class MendDesk {

    private final Course course;
    private final Reckoning reckoning;
    private final Supplier<Units> chosen;

    MendDesk(Course course, Reckoning reckoning, Supplier<Units> chosen) {
        this.course = course;
        this.reckoning = reckoning;
        this.chosen = chosen;
    }

    /**
     * The system with its levers as the text says. Where a cause is asked for, nothing but the readings taken is shown until it
     * was found.
     *
     * @param question a step whose exercise is a faulty system
     * @param seed the learner's, for the order of what is shown
     * @param found whether the cause was found before
     * @param text what was moved, as {@link MendTrial#moved} reads it, with a {@link Diagnosis}; empty for the system as found
     * @throws UnknownNameException where the exercise is of another kind
     */
    MendView view(Step.Question question, long seed, boolean found, String text) {
        Exercise exercise = Variation.own(course.exercise(question.exercise()), seed);
        if (!(exercise instanceof Mend mend)) {
            throw new UnknownNameException("There is nothing to mend in '" + question.id() + "'.");
        }
        Units units = chosen.get();
        Diagnosis diagnosis = Diagnosis.of(mend, text);
        List<MendView.Reading> readings = mend.diagnosed() ? readings(mend, diagnosis, units) : List.of();
        List<MendView.Cause> causes = causes(mend, diagnosis);
        if (mend.diagnosed() && !found) {
            return new MendView(List.of(), Optional.empty(), "", List.of(), List.of(), readings, causes);
        }
        Map<String, String> moved = Map.of();
        try {
            moved = MendTrial.moved(mend, diagnosis.changes());
            Design design = MendTrial.design(mend, moved);
            Sheet sheet = Sheet.of(design);
            return new MendView(
                    levers(mend, moved, units),
                    Optional.of(LoopPanel.picture("The loop: " + design.name(), design, units)),
                    sheet.loop().words(units),
                    figures(mend, sheet, units),
                    List.of(),
                    readings,
                    causes);
        } catch (RefusedException refused) {
            return new MendView(
                    levers(mend, moved, units),
                    Optional.empty(),
                    "",
                    List.of(),
                    new Shown(units).said(refused).lines(),
                    readings,
                    causes);
        }
    }

    private List<MendView.Reading> readings(Mend mend, Diagnosis diagnosis, Units units) {
        MendCheck check = new MendCheck(mend, reckoning);
        Design found = mend.faulty().design();
        return mend.readings().stream()
                .map(reading -> {
                    boolean taken = diagnosis.read().contains(reading.number());
                    String value = taken ? reading(check, reading, found, units) : "";
                    return new MendView.Reading(reading.number(), units.said(reading.label()), taken, value);
                })
                .toList();
    }

    private static List<MendView.Cause> causes(Mend mend, Diagnosis diagnosis) {
        return !diagnosis.hasRead()
                ? List.of()
                : mend.causes().stream()
                        .map(cause -> new MendView.Cause(
                                cause.number(),
                                cause.text(),
                                diagnosis
                                        .cause()
                                        .filter(named -> named == cause.number())
                                        .isPresent()))
                        .toList();
    }

    private List<View.Figure> figures(Mend mend, Sheet sheet, Units units) {
        List<View.Figure> figures = new ArrayList<>();
        MendCheck check = new MendCheck(mend, reckoning);
        mend.readings()
                .forEach(reading -> figures.add(
                        new View.Figure(units.said(reading.label()), reading(check, reading, sheet.design(), units))));
        figures.addAll(LoopPanel.figures(sheet, units));
        return figures;
    }

    private static String reading(MendCheck check, Mend.Reading reading, Design design, Units units) {
        try {
            double value = check.readings(List.of(reading), design).get(0);
            return MeasureKind.ofUnit(reading.unit())
                    .map(kind -> units.of(Measure.rounded(value, kind, reading.decimals())))
                    .orElseGet(() -> Numeral.withUnit(Numeral.fixed(value, reading.decimals()), reading.unit()));
        } catch (ReckoningException none) {
            return "none";
        }
    }

    private static List<MendView.Lever> levers(Mend mend, Map<String, String> moved, Units units) {
        Design found = mend.faulty().design();
        return mend.levers().stream()
                .map(lever -> lever(lever, found, moved, units))
                .toList();
    }

    private static MendView.Lever lever(Lever lever, Design found, Map<String, String> moved, Units units) {
        String asFound = Changes.current(found, lever.change());
        Shown shown = new Shown(units);
        String now = moved.getOrDefault(lever.change(), asFound);
        return new MendView.Lever(
                lever.change(),
                lever.label(),
                lever.span().map(span -> Slider.of(drag(lever, span, asFound), units)),
                lever.span().isPresent() ? List.of() : lever.options(),
                shown.options(lever.span().isPresent() ? List.of() : lever.options()),
                asFound,
                now,
                shown.value(lever.change(), asFound, lever.unit()),
                shown.value(lever.change(), now, lever.unit()));
    }

    private static Drag drag(Lever lever, About.Span span, String asFound) {
        return new Drag(
                lever.change(),
                span.from(),
                span.to(),
                span.by(),
                Double.parseDouble(asFound),
                "",
                "",
                lever.unit(),
                lever.label());
    }
}
